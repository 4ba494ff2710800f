// Plans of the mains side with a slip or two in the wiring, told in full: what one slip does to how another is told.
import { supply } from "./beginnings.ts";
import type { MoreCases } from "./variation.ts";

export const slipsMains: readonly MoreCases[] = [
	{
		code: "box-overfilled",
		fires: [
			`${supply}circuit den from LC breaker 15 A by 14-2
  9 ft to b1: receptacle, box 12 cuin
  9 ft to b2: receptacle
  9 ft to b3: receptacle, box 9 cuin
`,
		],
		silent: [],
	},
	{
		code: "colour-misleading",
		fires: [
			`plan "x"
  rules building
generator g 100 A, bonds neutral to frame
panel P lugs only from g by 2-2, 3 m
at P
  link P.ground.5, P.ground.8 by 12 AWG red
`,
			`${supply}circuit bunks from LC breaker 15 A by cord 14-3
  14 ft to b1: receptacle
at LC
  link LC.ground.13, LC.ground.4 by 12 AWG white
`,
		],
		silent: [],
	},
	{
		code: "conductors-too-few",
		fires: [
			`${supply}circuit bunks from LC breaker 20 A by 12-2
  7 ft to s1: switch
  6 ft to r1: receptacle split
  1 ft to minus: bus 250 A
`,
		],
		silent: [
			`${supply}circuit lights from LC breaker 15 A by single 14 AWG black
  8 ft to l1: light 9 W
feed back from LC.neutral by single 14 AWG white
  8 ft to l1
bond shell from LC.ground by single 14 AWG green
  8 ft to l1
at l1
  join back-1.white, shell-1.green
`,
			`generator g 200 A 120 V, bonds neutral to frame
panel P main 200 A from g by 2-2, 3 m
circuit pump from P breaker 30 A by single 2/0 black
  8 ft to p1: pump
feed back from P.neutral by single 2/0 white
  8 ft to p1
bond shell from P.ground by single 12 AWG green
  8 ft to p1
at p1
  back-1.white on p1.hot
  pump-1.black on p1.hot
`,
		],
	},
	{
		code: "gangs-too-few",
		fires: [
			`${supply}circuit den from LC breaker 15 A by 14-2
  9 ft to j1: box gangs 1
    s1: switch
    r1: receptacle
  6 ft to l1: light 9 W
  6 ft to j2: box gangs 1
    r2: receptacle
`,
		],
		silent: [],
	},
	{
		code: "ground-fault-missing",
		fires: [
			`plan "p"
  region iec
  rules camper
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA selective from shore by 3G2.5, 4 m
circuit a from DB breaker 10 A two-pole by 3G1.5
  3 m to a1: socket
at DB
  link DB.ground.4, DB.main.line.neutral by 12 AWG red
at a1
  link a1.hot, a1.neutral by 12 AWG bare
`,
		],
		silent: [],
	},
	{
		code: "ground-undersized",
		fires: [
			`inlet shore 30 A 120 V
panel LC main 30 A two-pole from shore by 10-2, 12 ft
circuit heat from LC breaker 15 A by 14-2
  8 ft to h1: heater 1500 W continuous
at LC
  link LC.neutral.8, LC.ground.2 by 12 AWG bare
  LC-1.bare on LC.neutral.6
`,
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
at inv
  link inv.lug, inv.out.ground by 12 AWG green
  supply-1.black on inv.in.neutral
  supply-1.white on inv.in.hot
at LC
  one-1.white on LC.ground.1
`,
		],
		silent: [
			`${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
  6 ft loop, white marked black at both ends to s1: switch
at shore
  LC-1.bare on shore.ground
  LC-1.white on shore.hot
at l1
  link l1.ground, l1.hot by 12 AWG bare
`,
		],
	},
	{
		code: "isolator-bypassed",
		fires: [
			`plan "Sloop"
  rules boat
inlet shore 30 A 120 V
panel DB main 30 A from shore by triplex 10 AWG, 12 ft
galvanic-isolator GI 30 A
bond a from shore.ground by single 10 AWG green
  1 ft to GI.line
bond b from GI.load by single 10 AWG green
  1 ft to DB.ground
`,
		],
		silent: [],
	},
	{
		code: "load-voltage-wrong",
		fires: [],
		silent: [
			`inlet shore 30 A 120 V
panel LC main 30 A bonded from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: fan 30 W
at shore
  LC-1.white on shore.hot
  LC-1.black on shore.hot
`,
		],
	},
	{
		code: "main-too-large",
		fires: [],
		silent: [
			`${supply}feed a from LC breaker 20 A by 10-2
  9 ft to P2: panel main 30 A
circuit one from P2 breaker 15 A by 14-2
  9 ft to l1: light 9 W
`,
		],
	},
	{
		code: "protection-missing",
		fires: [
			`generator g 200 A 120 V, bonds neutral to frame
panel P main 200 A from g by 2-2, 3 m
circuit pump from P breaker 60 A by single 2/0 black
  8 ft to p1: pump
feed back from P.neutral by single 2/0 white
  14 ft to b1: receptacle
  8 ft to p1
bond shell from P.ground by single 10 AWG green
  8 ft to p1
at g
  P-1.white on g.hot
  P-1.black on g.hot
`,
			`${supply}circuit heat from LC ground-fault-breaker 20 A by 12-2
  9 ft to wh: heater 1200 W
at shore
  LC-1.black on shore.neutral
  LC-1.white on shore.hot
`,
			`plan "p"
  rules building
inlet dock 30 A 120 V
panel AC main 30 A from dock by triplex 10 AWG, 4 m
circuit port from AC ground-fault-breaker 15 A by triplex 14 AWG
  2 m to p1: receptacle
at dock
  AC-1.white on dock.hot
  AC-1.green on dock.neutral
at AC
  link AC.1.load.neutral, AC.ground.13 by 12 AWG red
`,
		],
		silent: [],
	},
	{
		code: "protection-out-of-order",
		fires: [
			`inlet shore 30 A 120 V
panel LC main 35 A two-pole from shore by 10-2, 12 ft
circuit bunks from LC breaker 30 A by 14-2
  8 ft to b1: receptacle
`,
			`${supply}feed a from LC breaker 20 A by 12-2
  9 ft to P2: panel main 30 A
feed b from P2 breaker 20 A by 12-2
  9 ft to P3: panel main 30 A
circuit one from P3 breaker 15 A by 14-2
  9 ft to l1: light 9 W
`,
		],
		silent: [],
	},
	{
		code: "protection-too-large",
		fires: [
			`inlet pole 50 A 120/240 V
generator gen 50 A 120/240 V, bonds neutral to frame
transfer-switch TS 50 A 120/240 V two-pole
feed line from pole by 6-3
  12 ft to TS.1
feed backup from gen by 6-3
  8 ft to TS.2
panel LC legs 2, main 50 A from TS by 6-3, 6 ft
circuit heat from LC breaker two-pole 20 A by 12-3
  14 ft to k1: receptacle split
at gen
  backup-1.red on gen.neutral
  backup-1.white on gen.hot
at TS
  link TS.2.neutral, TS.out.hot2 by 12 AWG green
`,
			`plan "p"
  region iec
  rules building
inlet pole 63 A 240 V
panel P main 63 A rcd 30 mA from pole by 3G16, 4 m
circuit one from P breaker 32 A by 3G4
  16 m to h1: load 6000 W 240 V
`,
			`plan "x"
  rules building
generator g 80 A, bonds neutral to frame
panel P lugs only from g by 6-2 75 C, 3 m
at P
  P-1.black capped
`,
		],
		silent: [],
	},
	{
		code: "receptacle-dimmed",
		fires: [
			`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to d1: dimmer
  4 ft to d2: dimmer
  9 ft to r1: receptacle
`,
		],
		silent: [],
	},
	{
		code: "receptacle-rating-wrong",
		fires: [
			`plan "p"
  rules building
inlet dock 30 A 120 V
panel AC main 30 A from dock by triplex 10 AWG, 4 m
circuit port from AC ground-fault-breaker 15 A by triplex 14 AWG
  2 m to p1: receptacle
at dock
  AC-1.white on dock.hot
  AC-1.green on dock.neutral
at AC
  link AC.1.load.neutral, AC.ground.13 by 12 AWG red
`,
		],
		silent: [],
	},
	{
		code: "strands-unterminated",
		fires: [],
		silent: [
			`generator g 200 A 120 V, bonds neutral to frame
panel P main 200 A from g by 2-2, 3 m
circuit pump from P breaker 100 A by single 2/0 black
  8 ft to p1: pump
feed back from P.neutral by single 2/0 white
  8 ft to p1
bond shell from P.ground by single 10 AWG green
  8 ft to p1
at P
  P-1.black capped
  pump-1.black on P.1.stab
  P-1.white on P.main.stab
at g
  join P-1.white, P-1.bare
`,
		],
	},
	{
		code: "terminal-metal-wrong",
		fires: [],
		silent: [
			`plan
inlet pole 60 A 120/240 V
panel LC lugs only, legs 2 largest 2/0 from pole by 2-3 aluminium 75 C, 12 ft
at LC
  LC-1.red loose
`,
		],
	},
	{
		code: "terminal-overfilled",
		fires: [
			`inlet shore 30 A 120 V
panel LC main 30 A two-pole from shore by 10-2, 12 ft
circuit bunks from LC breaker 30 A by 10-2
  8 ft to b1: receptacle
at b1
  link b1.ground, b1.neutral by 12 AWG white
`,
		],
		silent: [],
	},
];
