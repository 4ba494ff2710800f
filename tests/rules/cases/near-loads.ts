// Near misses, and further plans, for the rules on loads and workmanship: what is right, or wrong in another way.
import { supply } from "./beginnings.ts";
import type { MoreCases } from "./variation.ts";

export const nearLoads: readonly MoreCases[] = [
	{
		code: "box-overfilled",
		fires: [],
		silent: [
			`${supply}circuit den from LC breaker 15 A by 14-2
  9 ft to j1: box 34 cuin
    r1: receptacle
    r2: receptacle
`,
			`${supply}circuit attic roughed in from LC breaker 15 A by 14-2
  20 ft as attic-feed to a1: receptacle
`,
		],
	},
	{
		code: "colour-misleading",
		fires: [],
		silent: [
			`inlet m 20 A 120 V
panel LC main 20 A from m by 12-2, 6 ft
circuit one from LC breaker 15 A by 14-2
  6 ft to b1: receptacle
at m
  link m.neutral, m.ground by 12 AWG bare
`,
		],
	},
	{
		code: "cord-as-wiring",
		fires: [
			`${supply}circuit bunks from LC breaker 15 A by 14-2
  8 ft by cord 14-2 to b1: receptacle
  6 ft by 14-2 to b2: receptacle
`,
		],
		silent: [],
	},
	{
		code: "dedicated-circuit-shared",
		fires: [
			`${supply}circuit cold from LC breaker 20 A by 12-2
  4 ft to l1: light 9 W
  8 ft to c1: receptacle 20 A dedicated
`,
			`${supply}circuit cold from LC breaker 20 A by 12-2
  8 ft to c1: receptacle 20 A dedicated
  4 ft to c2: receptacle
`,
		],
		silent: [
			`${supply}circuit galley from LC breaker 20 A by 12-2
  11 ft to g1: gfci
  5 ft to g2: gfci
`,
			`${supply}circuit cold from LC breaker 20 A by 12-2
  8 ft to c1: receptacle 20 A single dedicated
`,
		],
	},
	{
		code: "drop-excessive",
		fires: [],
		silent: [
			`plan "Hut"
  region iec
  rules building
inlet supply 16 A 230 V
panel DB main 16 A rcbo 30 mA from supply by 3G2.5, 1 m
circuit a from DB breaker 10 A by 3G1.5
  60 m to h1: heater 1000 W
`,
			`${supply}circuit one from LC breaker 15 A by 14-2
  200 ft to l1: light 9 W
`,
		],
	},
	{
		code: "end-contradicted",
		fires: [
			`${supply}circuit a from LC breaker 20 A by 12-2 stranded
  9 ft to b1: receptacle
at b1
  a-1.black solid on b1.hot
`,
			`${supply}circuit a from LC breaker 20 A by 12-2 stranded
  9 ft to b1: receptacle
at LC
  a-1.white solid on LC.neutral.2
`,
		],
		silent: [
			`${supply}circuit later from LC breaker 40 A by 8-2
  14 ft to e1: end
`,
		],
	},
	{
		code: "end-loose",
		fires: [],
		silent: [
			`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to j1: box
  3 ft to b1: receptacle
at j1
  a-2.bare loose
`,
			`${supply}circuit one from LC breaker 20 A by 12-3
  9 ft to b1: receptacle
`,
		],
	},
	{
		code: "load-voltage-wrong",
		fires: [],
		silent: [
			`inlet shore 30 A 120 V
feed bunks from shore by 12-2
  14 ft to p1: pump 500 W
`,
		],
	},
	{
		code: "receptacle-dimmed",
		fires: [
			`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to d1: dimmer
  9 ft to l1: light 5 W
  from d1
    4 ft to r1: receptacle
`,
		],
		silent: [
			`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to r1: receptacle
  4 ft to d1: dimmer
  9 ft to l1: light 5 W
`,
		],
	},
	{
		code: "strands-unterminated",
		fires: [
			`inlet shore 30 A 120 V
panel LC main 30 A two-pole from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2 stranded
  14 ft to b1: receptacle
at b1
  bunks-1.black bare on b1.hot
`,
		],
		silent: [],
	},
	{
		code: "supply-missing",
		fires: [
			`inlet shore 30 A 120 V
inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting
panel LC main 30 A from shore by 10-2, 12 ft
panel LI lugs only from inv by 12-2, 5 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
circuit desk from LI breaker 15 A by 14-2
  5 ft to d1: receptacle
mode camp: shore
`,
			`${supply}panel P2 main 20 A
circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
circuit two from P2 breaker 15 A by 14-2
  9 ft to l1: light 9 W
  6 ft to l2: light 9 W
`,
		],
		silent: [
			`panel LC main 30 A
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
		],
	},
	{
		code: "terminal-metal-wrong",
		fires: [
			`${supply}circuit bunks from LC breaker 15 A by 12-2 aluminium
  9 ft to b1: receptacle
  6 ft to b2: receptacle
`,
			`inlet pole 40 A 120/240 V
panel LC lugs only, legs 2, copper only from pole by 6-3 aluminium, 12 ft
`,
		],
		silent: [
			`plan
  joints crimp
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 15 A by 12-2 aluminium
  9 ft to j1: box
  9 ft by 14-2 to b1: receptacle
`,
			`plan
  rules building
inlet pole 40 A 120/240 V
panel LC lugs only, legs 2 from pole by 6-3 aluminium, 12 ft
`,
		],
	},
	{
		code: "terminal-overfilled",
		fires: [],
		silent: [
			`inlet shore 30 A 120 V
panel LC main 30 A two-pole from shore by 10-2, 12 ft
circuit bunks from LC breaker 15 A by 14-2
  14 ft to b1: box
    r1: receptacle
    r2: receptacle
at b1
  bunks-1.black on r2.hot
  link r2.hot, r1.hot by single 22 AWG black
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  6 ft to b2: receptacle
  from b1
    6 ft to b3: receptacle
`,
		],
	},
];
