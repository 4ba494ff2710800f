// Near misses, and further plans, for the rules on poles, neutrals, grounds and ground faults: what is right, or wrong in
// another way.
import { supply } from "./beginnings.ts";
import type { MoreCases } from "./variation.ts";

export const nearPolarity: readonly MoreCases[] = [
	{
		code: "bond-doubled",
		fires: [],
		silent: [
			`inlet shore 30 A 120 V
generator gen 3600 W 120 V, bonds neutral to frame
transfer-switch TS 30 A two-pole
feed line from shore by 10-2
  12 ft to TS.1
feed backup from gen by 10-2
  8 ft to TS.2
panel LC main 30 A from TS by 10-2, 6 ft
circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`,
		],
	},
	{
		code: "bond-missing",
		fires: [],
		silent: [
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`,
		],
	},
	{
		code: "circuit-mislabelled",
		fires: [],
		silent: [
			`${supply}circuit one from LC breaker 15 A by 14-2
  3 ft to l1: light 9 W
at LC
  one-1.black on LC.bus.A
`,
		],
	},
	{
		code: "circuits-joined",
		fires: [],
		silent: [
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to j1: box
  6 ft to b1: receptacle
circuit two from LC breaker 20 A by 12-2
  9 ft to j1
  6 ft to b2: receptacle
at j1
  join one-1.white, one-2.white, two-1.white, two-2.white
`,
		],
	},
	{
		code: "conductors-too-few",
		fires: [],
		silent: [
			`${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to j1: box
  from j1
    9 ft loop by 14-3, white marked black at both ends to s1: switch three-way
  from j1
    6 ft loop by 14-3, white marked black at both ends to s2: switch three-way
  from j1.switched
    4 ft to l1: light 9 W
`,
		],
	},
	{
		code: "enclosure-unbonded",
		fires: [
			`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at shore
  LC-1.bare loose
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to j1: box metal
  6 ft to b1: receptacle
at j1
  join one-1.bare, one-2.bare
`,
		],
		silent: [
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle, box plastic
  6 ft to b2: receptacle
at b1
  join one-1.bare, one-2.bare, b1.ground
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to j1: box metal
  6 ft to b2: receptacle
`,
		],
	},
	{
		code: "ground-broken",
		fires: [],
		silent: [
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  6 ft to b2: receptacle
at b1
  one-1.white capped
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  6 ft to b2: receptacle
at b1
  join one-1.bare, one-2.bare, b1.ground
`,
		],
	},
	{
		code: "ground-fault-missing",
		fires: [],
		silent: [
			`place galley basin 7 ft
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit one from LC breaker 20 A by 12-2
  11 ft to b1: receptacle in galley
`,
			`plan "Sloop"
  rules boat
place eng engine-space
inlet dock 50 A 120 V
panel DB main 50 A from dock by triplex 6 AWG, 12 ft
circuit bilge from DB ground-fault-breaker 35 A trip 30 mA by triplex 14 AWG
  14 ft to p1: pump 900 W in eng
`,
		],
	},
	{
		code: "ground-undersized",
		fires: [
			`generator g 200 A 120 V, bonds neutral to frame
panel P main 200 A from g by 2-2, 3 m
circuit pump from P breaker 15 A by single 2/0 black
  8 ft to p1: pump
feed back from P.neutral by single 2/0 white
  8 ft to p1
bond shell from P.ground by single 16 AWG green
  8 ft to p1
`,
		],
		silent: [
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 14-2, 6 ft
circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`,
			`generator g 200 A 120 V, bonds neutral to frame
panel P main 200 A from g by 2-2, 3 m
circuit pump from P breaker 15 A by single 2/0 black
  8 ft to p1: pump
feed back from P.neutral by single 2/0 white
  8 ft to p1
bond shell from P.ground by single 14 AWG green
  8 ft to p1
`,
		],
	},
	{
		code: "leg-left-live",
		fires: [
			`inlet pole 50 A 120/240 V
panel LC main 50 A 120/240 V from pole by 6-3, 12 ft
circuit heat from LC breaker two-pole 20 A by 12-2
  9 ft, white marked red at both ends to s1: switch
  9 ft, white marked red at both ends to h1: heater 3000 W 240 V
`,
		],
		silent: [
			`inlet pole 50 A 120/240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
circuit heat from LC breaker two-pole 20 A by 12-2
  9 ft, white marked red at both ends to s1: switch two-pole
  9 ft, white marked red at both ends to h1: heater 3000 W 240 V
`,
		],
	},
	{
		code: "line-load-reversed",
		fires: [],
		silent: [
			`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to g1: gfci
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to g1: gfci
  6 ft to b1: receptacle
at g1
  one-1.black on g1.line.hot
  one-1.white on g1.line.neutral
  one-2.black on g1.load.hot
  one-2.white on g1.load.neutral
`,
		],
	},
	{
		code: "neutral-borrowed",
		fires: [],
		silent: [
			`${supply}circuit desk from LC breaker 20 A two-pole by 12-3
  9 ft to d1: receptacle split
`,
		],
	},
	{
		code: "neutral-ground-exchanged",
		fires: [],
		silent: [
			`${supply}circuit bunks from LC breaker 20 A by cord 12-2
  14 ft to b1: receptacle
at b1
  link b1.neutral, b1.ground by 12 AWG bare
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  6 ft to b2: receptacle
at b2
  one-2.black on b2.neutral
  one-2.white on b2.hot
`,
		],
	},
	{
		code: "neutral-not-isolated",
		fires: [],
		silent: [
			`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  9 ft to b2: receptacle
at b1
  join a-1.black, a-2.black, a-1.white, a-2.white, b1.hot, b1.neutral
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  6 ft to b2: receptacle
at b1
  link b1.hot, b1.ground by 12 AWG black
`,
		],
	},
	{
		code: "polarity-reversed",
		fires: [],
		silent: [
			`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  bunks-1.bare on LC.neutral
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  6 ft to b2: receptacle
at b2
  one-2.white on b2.ground
  one-2.bare on b2.neutral
`,
		],
	},
	{
		code: "poles-joined",
		fires: [],
		silent: [
			`inlet shore 30 A 120 V
inlet dock 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
feed second from dock by 10-2
  5 ft to LC
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
mode both: shore, dock
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  6 ft to b2: receptacle
at b1
  join one-1.white, one-2.white, one-1.bare, one-2.bare
`,
		],
	},
	{
		code: "switch-in-neutral",
		fires: [],
		silent: [
			`plan "Van"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A rcbo 30 mA from shore by 3G2.5, 4 m
circuit a from DB breaker 10 A two-pole by 3G1.5
  3 m to a1: socket
at DB
  DB-1.brown on DB.main.line.neutral
  DB-1.blue on DB.main.line.hot
`,
			`inlet shore 30 A 120 V
panel LC main 30 A
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
		],
	},
	{
		code: "switch-without-effect",
		fires: [],
		silent: [
			`${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to s1: switch
  9 ft to l1: light 9 W
  from s1.line
    5 ft to b1: receptacle
`,
			`${supply}circuit stairs from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch three-way
  5 ft by 14-2 to l1: light 9 W
`,
		],
	},
];
