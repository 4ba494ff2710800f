// Plans on loads, limits and workmanship that are told in full, and near misses that are easily taken for the fault.
import { supply } from "./beginnings.ts";
import type { MoreCases } from "./variation.ts";

export const toldLoads: readonly MoreCases[] = [
	{
		code: "box-overfilled",
		fires: [
			`inlet shore 30 A 120 V
feed bunks from shore by 12-2
  14 ft to p1: pump 500 W
`,
			`${supply}circuit heat from LC breaker 20 A by 12-2
  7 ft to hd: disconnect
  3 ft to s1: switch
  9 ft to wh: heater 1200 W
`,
			`${supply}circuit den from LC breaker 20 A by 12-2
  9 ft to j1: box 15.5 cuin
  6 ft to l1: light 9 W, box 18 cuin
  from j1
    6 ft to l2: light 9 W, box 18 cuin
`,
		],
		silent: [],
	},
	{
		code: "capped-end-live",
		fires: [],
		silent: [
			`${supply}circuit one from LC breaker 15 A by 12-2
  3 ft to j1: box
`,
			`${supply}circuit bunks from LC breaker 15 A by 14-2
  9 ft to s1: splice lever, ports 2
  9 ft to b1: receptacle
`,
		],
	},
	{
		code: "circuit-overloaded",
		fires: [
			`${supply}circuit one from LC breaker 15 A by 14-2
  14 ft to p1: pump
`,
			`inlet shore 30 A 120 V
panel LC main 30 A switch from shore by 10-2, 12 ft
circuit a from LC breaker 20 A by 12-2
  9 ft to h1: heater 1800 W
circuit b from LC breaker 20 A by 12-2
  9 ft to h2: heater 2000 W
`,
			`inlet shore 30 A 120 V
panel LC main 30 A two-pole from shore by 10-2, 12 ft
circuit warm from LC breaker 15 A by 14-2
  8 ft to h1: heater 1200 W
  8 ft to h2: heater 1200 W
mode winter: shore with h1
mode both: shore with h1 h2
`,
		],
		silent: [],
	},
	{
		code: "colour-misleading",
		fires: [
			`${supply}circuit one from LC breaker 15 A by 3G2.5
  3 ft to j1: box
`,
			`${supply}cable dark
  black neutral 12 AWG
  green hot 12 AWG
  bare ground 12 AWG
circuit one from LC breaker 20 A by dark
  14 ft to b1: receptacle
`,
			`inlet pole 50 A 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
circuit a from LC breaker 20 A two-pole by 12-2
  9 ft white marked red at LC to h1: heater 3000 W 240 V, no neutral
`,
		],
		silent: [],
	},
	{
		code: "device-undersized",
		fires: [
			`inlet shore 30 A 120 V
panel LC main 25 A switch from shore by 10-2, 12 ft
circuit a from LC breaker 20 A by 12-2
  9 ft to h1: heater 1800 W
circuit b from LC breaker 20 A by 12-2
  9 ft to h2: heater 2000 W
`,
		],
		silent: [],
	},
	{
		code: "drop-excessive",
		fires: [
			`plan "p"
  rules building
inlet pole 100 A, 120/240 V
panel P main 100 A, legs 2 from pole by 2-3, 10 ft
circuit a from P breaker 15 A by 14-2
  12 ft to a1..a5: light 450 W each
circuit b from P breaker 15 A by 14-2
  12 ft to b1..b5: light 450 W each
`,
			`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 150 ft
circuit shed from LC breaker 20 A by 12-2
  60 ft to h1: heater 1200 W
`,
		],
		silent: [],
	},
	{
		code: "load-voltage-wrong",
		fires: [
			`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
circuit a from LC breaker 20 A by 12-3
  9 ft to h1: heater 1500 W 240 V
at LC
  join a-1.black, a-1.red, LC.1.load
`,
		],
		silent: [],
	},
	{
		code: "receptacle-rating-wrong",
		fires: [
			`${supply}circuit one from LC breaker 30 A by 12-2
  9 ft to b1: receptacle
  6 ft to b2: receptacle
  6 ft to b3: receptacle
`,
			`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle 30 A
`,
			`inlet pole 100 A, 120 V / 240 V
panel LC main 100 A, legs 2 from pole by 2-3, 20 ft
circuit one from LC breaker 40 A by 8-2
  8 ft to b1: receptacle 15 A duplex
`,
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  LC-1.black on LC.neutral
  LC-1.white on LC.main.line
`,
		],
		silent: [
			`inlet shore 30 A 120 V
panel LC main 30 A two-pole from shore by 10-2, 12 ft
circuit work from LC breaker 15 A by 14-2
  8 ft to g1: gfci
`,
		],
	},
	{
		code: "strands-unterminated",
		fires: [],
		silent: [
			`inlet shore 30 A 120 V
panel LC main 30 A two-pole from shore by 10-2, 12 ft
circuit work from LC breaker 15 A by 14-2
  8 ft to g1: gfci
`,
		],
	},
	{
		code: "supply-missing",
		fires: [
			`inlet shore 30 A 120 V
panel LC main 30 A
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
		],
		silent: [],
	},
	{
		code: "terminal-overfilled",
		fires: [
			`plan
  rules building
inlet pole 60 A 120/240 V
panel LC lugs only, legs 2  from pole by 2-3 aluminium 75 C, 12 ft
`,
			`inverter m 2000 W 12 V / 120 V, bonds neutral to frame
panel LC main 20 A from m by 12-2, 6 ft
circuit one from LC breaker 15 A by 14-2
  6 ft to b1: receptacle
at m
  link m.neutral, m.ground by 12 AWG bare
`,
			`${supply}  NB: neutral-bar ports 2
circuit one from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
circuit two from LC breaker 20 A by 12-2
  8 ft to b2: receptacle
`,
		],
		silent: [],
	},
];
