// Plans with a slip or two on poles, neutrals and grounds, told in full: what one slip does to how another is told.
import { supply } from "./beginnings.ts";
import type { MoreCases } from "./variation.ts";

export const slipsPolarity: readonly MoreCases[] = [
	{
		code: "bond-doubled",
		fires: [
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
feed output from inv.out by 10-2
  6 ft to LC
panel LC main 30 A
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at inv
  join supply-1.white, output-1.white, inv.in.neutral, inv.out.neutral
`,
		],
		silent: [],
	},
	{
		code: "earth-fault-unopened",
		fires: [
			`plan "Hut"
  region iec
  rules building
inlet supply 16 A 230 V TT
panel DB main 16 A two-pole from supply by 3G2.5, 8 m
circuit lights from DB breaker 6 A by 3G1.5
  20 m to l1: light 9 W
at l1
  lights-1.blue capped
`,
		],
		silent: [],
	},
	{
		code: "end-loose",
		fires: [
			`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to g1: gfci
  3 ft to b1: receptacle
at g1
  a-2.white loose
at LC
  LC-1.black loose
`,
			`${supply}circuit lights from LC breaker 15 A by 14-2
  9 ft to b1: receptacle
  9 ft to s1: splice lever, ports 3
  9 ft to l1: light 9 W
  from s1
   6 ft to l2: light 9 W
at s1
  lights-3.black loose
`,
		],
		silent: [],
	},
	{
		code: "ground-broken",
		fires: [
			`${supply}circuit bunks from LC breaker 20 A by 12-2
  30 ft to b1: receptacle
  9 ft to b2: receptacle
at b1
  join bunks-1.black, bunks-2.black
at LC
  bunks-1.bare on LC.neutral.5
  LC-1.bare on LC.neutral.8
`,
		],
		silent: [],
	},
	{
		code: "ground-fault-missing",
		fires: [
			`place galley sink 3 ft
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit galley from LC breaker 20 A by 12-2
  5 ft to g1: receptacle in galley
at LC
  galley-1.white on LC.ground.1
`,
		],
		silent: [
			`plan "p"
  region iec
  rules camper
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 4 m
circuit a from DB breaker 10 A two-pole by 3G1.5
  3 m to a1: socket
at DB
  link DB.ground.10, DB.neutral.14 by 12 AWG white
at a1
  a-1.green-yellow on a1.neutral
  a-1.brown on a1.neutral
`,
		],
	},
	{
		code: "ground-through-device",
		fires: [
			`${supply}circuit one from LC breaker 30 A by 12-2
  9 ft to b1: receptacle
  6 ft to b2: receptacle
  6 ft to b3: receptacle
at b1
  one-1.bare on b1.ground
  one-2.black on b1.neutral
at b2
  link b2.ground, b2.neutral by 12 AWG black
`,
		],
		silent: [],
	},
	{
		code: "inlet-live",
		fires: [
			`inlet shore 30 A 120 V
generator gen 30 A 120 V, bonds neutral to frame
panel LC main 30 A from shore by 10-2, 12 ft
circuit back from LC breaker 30 A held down by 10-2
  6 ft to gen
circuit one from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at gen
  back-1.bare on gen.hot
  back-1.white on gen.hot
`,
		],
		silent: [],
	},
	{
		code: "main-bypassed",
		fires: [
			`${supply}  slot 2: breaker 30 A
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  link LC.main.stab, LC.neutral.3 by 12 AWG green
  LC-1.black on LC.2.load
`,
		],
		silent: [],
	},
	{
		code: "neutral-borrowed",
		fires: [
			`${supply}circuit one from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  link b1.neutral, b1.ground by 12 AWG bare
at LC
  join one-1.white, LC-1.white
`,
			`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to j1: switch
  3 ft to b1: receptacle
circuit c from LC breaker 20 A by 12-2
  9 ft to j1
  from j1
   3 ft to c1: receptacle
at j1
  a-2.white loose
`,
			`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to j1: switch
  3 ft to b1: receptacle
circuit c from LC breaker 20 A by 12-2
  9 ft to j1
  from j1
    3 ft to c1: receptacle
at j1
  a-2.white loose
`,
		],
		silent: [],
	},
	{
		code: "neutral-ground-exchanged",
		fires: [
			`${supply}circuit one from LC breaker 15 A by 14-2
  20 ft to h1: heater 900 W
at LC
  one-1.white on LC.ground.13
  one-1.bare on LC.main.line
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at b1
  join one-1.white, one-1.bare
at LC
  LC-1.white on LC.ground.5
`,
		],
		silent: [],
	},
	{
		code: "neutral-not-isolated",
		fires: [
			`inlet shore 30 A 120 V
inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting
panel LC main 30 A from shore by 10-2, 12 ft
feed backup from inv by 10-2
  5 ft to LC
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
mode both: shore, inv
at shore
  link shore.neutral, shore.ground by 12 AWG black
`,
		],
		silent: [],
	},
	{
		code: "polarity-reversed",
		fires: [
			`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at pole
  LC-1.black on pole.neutral
  LC-1.red on pole.ground
`,
		],
		silent: [],
	},
	{
		code: "poles-joined",
		fires: [
			`${supply}circuit bunks from LC breaker 20 A by 12-2
  15 ft to b1: receptacle
at b1
  link b1.neutral, b1.ground by 12 AWG bare
at LC
  join LC-1.bare, LC-1.black
`,
			`${supply}circuit bunks from LC fuse 20 A by 12-2
  14 ft to b1: receptacle
at LC
  LC-1.bare capped
  bunks-1.black on LC.1.load
at shore
  link shore.hot, shore.neutral by 12 AWG bare
`,
			`${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
  6 ft loop, white marked black at both ends to s1: switch
at l1
  one-2.black on l1.ground
  one-1.black on l1.ground
  one-2.white loose
`,
			`generator g 200 A 120 V, bonds neutral to frame
panel P main 200 A from g by 2-2, 3 m
circuit pump from P breaker 200 A by single 2/0 black
  8 ft to p1: pump
feed back from P.neutral by single 2/0 white
  8 ft to p1
bond shell from P.ground by single 8 AWG green
  8 ft to p1
at p1
  shell-1.green on p1.hot
  back-1.white on p1.hot
`,
			`${supply}circuit warm from LC breaker 20 A two-pole by 12-3
  9 ft to h1: heater 1500 W 240 V
at LC
  warm-1.white on LC.neutral.14
  LC-1.black on LC.neutral.2
`,
		],
		silent: [],
	},
	{
		code: "switch-in-neutral",
		fires: [
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 12-2
  12 ft to inv.in
panel LC main 20 A from inv.out by 10-2, 6 ft
circuit bunks from LC fuse 20 A by 12-2
  14 ft to b1: receptacle
at inv
  LC-1.black on inv.out.neutral
  LC-1.white on inv.out.hot
`,
		],
		silent: [
			`plan "p"
inlet dock 30 A 120 V
panel AC main 30 A from dock by triplex 10 AWG, 4 m
circuit port from AC ground-fault-breaker 15 A by triplex 14 AWG
  2 m to p1: receptacle
at dock
  AC-1.black capped
`,
		],
	},
	{
		code: "switch-without-effect",
		fires: [
			`${supply}circuit lights from LC breaker 15 A by 14-2
  7 ft to s1: switch
  9 ft to l1: light 9 W
at s1
  lights-1.black on s1.load
  lights-1.white on s1.ground
`,
			`${supply}circuit one from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch three-way
  7 ft by 14-2 to l1: light 9 W
at s1
  one-2.black loose
`,
			`${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to s1: switch
  9 ft to l1: light 9 W
at s1
  join one-1.black, one-2.black, s1.line, s1.load
`,
		],
		silent: [],
	},
];
