// Plans of the mains side that are told in full: what other tests ask for by its place alone, and near misses that are
// easily taken for the fault.
import { supply } from "./beginnings.ts";
import type { MoreCases } from "./variation.ts";

export const toldMains: readonly MoreCases[] = [
	{
		code: "bond-doubled",
		fires: [
			`inlet shore 30 A 120 V
generator gen 3000 W 120 V, bonds neutral to frame
panel LC main 25 A from shore by 10-2, 12 ft
feed x from gen by 10-2
  10 ft to LC
circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
mode s: shore without gen
at LC
  x-1.black capped
`,
		],
		silent: [],
	},
	{
		code: "bond-missing",
		fires: [
			`inverter inv 300 W 12 V / 120 V, bonds neutral never
circuit desk from inv by 14-2
  3 ft to d1: receptacle
`,
		],
		silent: [],
	},
	{
		code: "circuits-joined",
		fires: [
			`${supply}  slot 1: breaker 20 A
  slot 2: breaker 20 A
circuit a from LC.1 by 12-3
  9 ft to j1: box
  9 ft to k1: receptacle
at LC
  a-1.red on LC.2.load
at j1
  join a-1.black, a-1.red, a-2.black, a-2.red
`,
		],
		silent: [],
	},
	{
		code: "end-loose",
		fires: [
			`${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to s1: switch
  9 ft to l1: light 9 W
at s1
  one-1.white on s1.load
`,
		],
		silent: [],
	},
	{
		code: "ground-broken",
		fires: [
			`${supply}circuit fan from LC breaker 15 A by cord 14-2
  8 ft to f1: fan 60 W
`,
			`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  bunks-1.bare on LC.neutral
`,
		],
		silent: [],
	},
	{
		code: "ground-fault-missing",
		fires: [
			`plan "p"
  region iec
inlet shore 16 A 230 V
panel DB main 16 A two-pole from shore by 3G2.5, 4 m
circuit a from DB ground-fault-breaker 10 A trip 31 mA by 3G1.5
  3 m to a1: socket
`,
			`plan "Hut"
  region iec
  rules building
inlet supply 40 A 230 V
panel DB main 40 A two-pole from supply by 3G10, 8 m
  R1: rcd 40 A 30 mA type A
    slot 1: breaker 16 A
    slot 2: breaker 10 A
  R2: rcd 40 A 30 mA
circuit sockets from DB.1 by 3G2.5
  6 m to a1: socket
circuit lights from DB.2 by 3G1.5
  4 m to l1: light 9 W
circuit shed from R2 breaker 16 A two-pole by 3G2.5
  6 m to s1: socket
at DB
  sockets-1.blue on DB.neutral.9
`,
			`place porch outdoor
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit porch from LC ground-fault-breaker 20 A trip 30 mA by 12-2
  14 ft to p1: receptacle in porch
`,
		],
		silent: [],
	},
	{
		code: "ground-undersized",
		fires: [
			`${supply}circuit pump from LC breaker 20 A by single 12 AWG black
  8 ft to p1: pump 60 W
feed back from LC.neutral by single 12 AWG white
  8 ft to p1
bond shell from LC.ground by single 14 AWG green
  8 ft to p1
`,
		],
		silent: [],
	},
	{
		code: "neutral-borrowed",
		fires: [
			`${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to b1: receptacle split
circuit two from LC breaker 15 A by 14-2
  9 ft to b1.upper
at b1
  link b1.hot.lower, b1.hot.upper by 14 AWG black
`,
		],
		silent: [],
	},
	{
		code: "neutral-ground-exchanged",
		fires: [
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  6 ft to b2: receptacle
  6 ft to b3: receptacle
at b2
  join one-2.white, one-3.white, one-2.bare, one-3.bare
`,
		],
		silent: [],
	},
	{
		code: "neutral-not-isolated",
		fires: [
			`${supply}circuit bunks from LC breaker 20 A by cord 12-2
  14 ft to b1: receptacle
at b1
  link b1.neutral, b1.ground by 12 AWG bare
`,
		],
		silent: [],
	},
	{
		code: "protection-out-of-order",
		fires: [
			`${supply}circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  LC-1.black on LC.1.load
  bunks-1.black on LC.main.line
`,
			`generator gen 3000 W 120 V, bonds neutral to frame
panel LC main 30 A from gen by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
		],
		silent: [
			`inverter inv 1500 W 12 V / 120 V, bonds neutral when inverting
panel LC main 20 A from inv by 12-2, 6 ft
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`,
		],
	},
	{
		code: "protection-too-large",
		fires: [
			`generator g 200 A 120 V, bonds neutral to frame
panel P main 200 A from g by 2-2, 3 m
circuit pump from P breaker 60 A by single 12 AWG black
  8 ft to p1: pump
feed back from P.neutral by single 12 AWG white
  8 ft to p1
bond shell from P.ground by single 12 AWG green
  8 ft to p1
`,
			`inlet shore 20 A 120 V
inverter-charger inv 1800 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 12-2
  12 ft to inv.in
panel LC lugs only from inv.out by 14-2, 6 ft
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: receptacle
`,
			`plan "x"
  region iec
  rules building
generator g 32 A, bonds neutral to frame
panel P lugs only from g by 3G4, 3 m
`,
		],
		silent: [],
	},
	{
		code: "switch-in-neutral",
		fires: [
			`inlet shore 30 A 120 V
panel LC main 30 A two-pole from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit lights from LC breaker 15 A by 14-2
  14 ft to l1: light 9 W
at shore
  LC-1.black on shore.neutral
  LC-1.white on shore.hot
`,
			`${supply}circuit stairs from LC breaker 15 A by 14-2
  7 ft to s1: switch three-way
  9 ft by 14-3 to s2: switch three-way
  5 ft by 14-2 to l1: light 9 W
at s1
  stairs-1.white on s1.common
  join stairs-1.black, stairs-2.white
at s2
  stairs-3.white on s2.common
  join stairs-2.white, stairs-3.black
`,
		],
		silent: [],
	},
	{
		code: "switch-without-effect",
		fires: [
			`${supply}circuit one from LC breaker 15 A by 14-2
  9 ft to s1: switch
  9 ft to l1: light 9 W
at s1
  one-2.black loose
`,
			`${supply}circuit stairs from LC breaker 15 A by 14-2
  7 ft to s0: switch
  7 ft to s1: switch three-way
  5 ft by 14-2 to l1: light 9 W
at s1
  join s1.traveller.1, s1.traveller.2, stairs-3.black
`,
			`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to l1: light 9 W
  6 ft white marked black at both ends to s1: switch
at s1
  a-2.white on s1.line
  a-2.black on s1.load
at l1
  join a-1.black, a-2.white, a-2.black, l1.hot
`,
		],
		silent: [],
	},
];
