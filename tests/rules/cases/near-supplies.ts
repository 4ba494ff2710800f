// Near misses, and further plans, for the rules on supplies and protection: what is right, or wrong in another way.
import { supply } from "./beginnings.ts";
import type { MoreCases } from "./variation.ts";

export const nearSupplies: readonly MoreCases[] = [
	{
		code: "back-feed-unfastened",
		fires: [
			`inlet pole 50 A 120/240 V
panel LC lugs only, legs 2
  slot 1: breaker two-pole 50 A
feed supply from pole by 6-3
  12 ft to LC.1
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
		],
		silent: [
			`${supply}  slot 2: breaker 30 A
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  LC-1.black on LC.2.load
`,
		],
	},
	{
		code: "conductor-undersized",
		fires: [
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
		],
		silent: [
			`${supply}circuit lights from LC breaker 10 A by 14-2
  9 ft to d1: disconnect 20 A
  3 ft by cord 16-3 to l1: light 9 W
`,
		],
	},
	{
		code: "inlet-live",
		fires: [
			`inlet shore 30 A 120 V
inverter inv 2000 W 12 V / 120 V, bonds neutral never
panel LC main 30 A from shore by 10-2, 12 ft
feed backup from inv by 10-2
  5 ft to LC
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
			`inlet shore 30 A 120 V
generator gen 3600 W 120 V, bonds neutral to frame
transfer-switch TS 30 A two-pole
feed line from shore by 10-2
  12 ft to TS.1
feed backup from gen by 10-2
  8 ft to TS.2
panel LC main 30 A from TS by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
feed past from gen by 10-2
  9 ft to LC
`,
		],
		silent: [
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`,
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
		code: "leg-missing",
		fires: [
			`inlet shore 30 A 120 V
panel LC main 30 A, legs 2 from shore by 10-2, 12 ft
circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`,
			`generator gen 3600 W 120 V, bonds neutral to frame
panel LC main 30 A, legs 2 from gen by 10-2, 12 ft
circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`,
		],
		silent: [
			`inlet pole 50 A 120/240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`,
		],
	},
	{
		code: "main-bypassed",
		fires: [
			`inlet pole 50 A, 120 V / 240 V
panel LC main 50 A, legs 2 from pole by 6-3, 20 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  LC-1.red on LC.bus.B
`,
			`${supply}  slot 2: breaker 30 A
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
at LC
  LC-1.black on LC.2.load
`,
		],
		silent: [
			`inlet shore 30 A 120 V
panel LC lugs only from shore by 10-2, 12 ft
circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`,
			`inlet shore 30 A 120 V
panel LC lugs only
  slot 1: breaker 30 A held down
feed supply from shore by 10-2
  12 ft to LC.1
circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`,
		],
	},
	{
		code: "main-too-large",
		fires: [
			`${supply}feed second from LC breaker 20 A by 12-2
  12 ft to P2: panel main 30 A
circuit bunks from P2 breaker 15 A by 14-2
  14 ft to b1: receptacle
`,
			`inlet shore 50 A 120 V
panel LC main 50 A from shore by 6-2, 12 ft
  slot 1: breaker 30 A
feed annex from LC.1 by 8-2
  20 ft to SP: panel main 45 A
circuit shed from SP breaker 15 A by 14-2
  9 ft to l1: light 9 W
`,
		],
		silent: [],
	},
	{
		code: "protection-missing",
		fires: [],
		silent: [
			`plan
  rules building
inlet pole 40 A 120/240 V
panel LC main 40 A 120/240 V from pole by 8-3 aluminium, 12 ft
`,
			`inverter inv 300 W 12 V / 120 V, bonds neutral when inverting
circuit desk from inv by 14-2
  3 ft to d1: receptacle
`,
		],
	},
	{
		code: "protection-out-of-order",
		fires: [],
		silent: [
			`${supply}feed annex from LC breaker 20 A by 12-2
  12 ft to P2: panel main 20 A
circuit one from P2 breaker 20 A by 12-2
  9 ft to b1: receptacle
`,
		],
	},
	{
		code: "protection-too-large",
		fires: [],
		silent: [
			`inlet shore 30 A 120 V
feed bunks from shore by 12-2
  14 ft to p1: pump 500 W
`,
			`${supply}circuit one from LC breaker 30 A by 10-2
  9 ft to r1: receptacle 30 A
circuit two from LC breaker 15 A by 14-2
  9 ft to b1: receptacle
`,
		],
	},
	{
		code: "sources-paralleled",
		fires: [
			`inlet shore 30 A 120 V
inverter inv 2000 W 12 V / 120 V, bonds neutral never
panel LC main 30 A from shore by 10-2, 12 ft
feed backup from inv by 10-2
  5 ft to LC
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`,
			`inlet shore 30 A 120 V
inlet dock 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
feed second from dock by 10-2
  5 ft to LC
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
mode both: shore, dock
`,
		],
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
			`inlet shore 30 A 120 V
inlet dock 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
panel DB main 30 A from dock by 10-2, 12 ft
circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
circuit two from DB breaker 20 A by 12-2
  9 ft to b2: receptacle
mode both: shore, dock
`,
		],
	},
];
