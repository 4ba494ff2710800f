// Further plans of the mains side, each with one cause in it, told in full: several modes, several devices, figures at a
// limit.
import { supply } from "./beginnings.ts";
import type { MoreCases } from "./variation.ts";

export const causesMains: readonly MoreCases[] = [
	{
		code: "bond-missing",
		fires: [],
		silent: [
			`plan "x"
  rules building
utility grid 60 A 120/240 V
panel LC main 60 A, legs 2 from grid by 4-3, 12 ft
circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`,
		],
	},
	{
		code: "circuit-overloaded",
		fires: [
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit one from LC breaker 15 A by 14-2
  9 ft to h1: heater 1900 W
`,
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit one from LC breaker 15 A by 14-2
  9 ft to h1: heater 1500 W continuous
`,
		],
		silent: [],
	},
	{
		code: "circuits-joined",
		fires: [
			`${supply}circuit one from LC breaker 15 A by 10-2
  9 ft to j1: box
  6 ft to b1: receptacle
circuit two from LC breaker 15 A by 10-2
  9 ft to j1
  6 ft to b2: receptacle
at j1
  join one-1.black, one-2.black, two-1.black, two-2.black
`,
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit one from LC breaker 15 A by 14-2
  9 ft to j1: box
  6 ft to b1: receptacle
circuit two from LC breaker 15 A by 10-2
  9 ft to j1
  6 ft to b2: receptacle
at j1
  join one-1.black, one-2.black, two-1.black, two-2.black
`,
		],
		silent: [],
	},
	{
		code: "conductors-too-few",
		fires: [
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit fan from LC breaker 15 A by cord 14-2
  8 ft to f1: fan 60 W
`,
			`${supply}circuit work from LC breaker 20 A by 12-2
  9 ft to j1: box metal
  3 ft by cord 12-2 to j2: box metal
    r1: receptacle
bond one from LC.ground by single 8 AWG green
  12 ft to j2
`,
			`inlet pole 50 A 120/240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
circuit work from LC breaker 20 A two-pole by 12-2
  15 ft to h1: heater 3000 W 240 V
  6 ft to h2: heater 500 W 240 V
`,
		],
		silent: [
			`${supply}circuit work from LC breaker 20 A by 12-2
  9 ft to j1: box metal
  3 ft by cord 12-2 to j2: box metal
    r1: receptacle
bond one from j1 by single 12 AWG green
  3 ft to j2
`,
		],
	},
	{
		code: "cord-as-wiring",
		fires: [
			`${supply}circuit one from LC breaker 20 A by cord 12-3
  9 ft to j1: box
    d1: receptacle
    l1: light 9 W
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  6 ft by cord 12-3 to l1: light 9 W
  6 ft to l2: light 9 W
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
  6 ft by cord 12-3 to f1: fan 60 W
`,
			`${supply}circuit one from LC breaker 20 A by cord 12-3
  9 ft to d1: dimmer
  6 ft to l1: light 9 W
`,
		],
		silent: [],
	},
	{
		code: "cover-wrong",
		fires: [
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to j1: box plastic, cover metal
  6 ft to b1: receptacle
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to j1: box 34 cuin, cover blank
    d1: receptacle
`,
		],
		silent: [
			`${supply}circuit one from LC breaker 20 A by 12-2
  9 ft to s1: box plastic, cover metal
    d1: switch
    d2: receptacle
  6 ft to b1: receptacle
`,
			`${supply}circuit later roughed in from LC breaker 20 A by 12-2
  9 ft to j1: box plastic, no cover
    d1: switch
  6 ft to b1: receptacle
`,
		],
	},
	{
		code: "dedicated-circuit-shared",
		fires: [
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit cold from LC breaker 20 A by 12-2
  8 ft to c1: receptacle 20 A dedicated
  4 ft to l1: light 9 W
`,
		],
		silent: [],
	},
	{
		code: "drop-excessive",
		fires: [
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit shed from LC breaker 15 A by 14-2
  90 ft to h1: heater 1400 W
  10 ft to l1: light 200 W
`,
		],
		silent: [],
	},
	{
		code: "ground-undersized",
		fires: [
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit pump from LC breaker 20 A by single 12 AWG black
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
		fires: [],
		silent: [
			`inlet pole 50 A 120/240 V
panel LC main 50 A, legs 2 from pole by 6-3, 12 ft
circuit desk from LC breaker 20 A by 12-3
  9 ft to d1: receptacle split
at LC
  desk-1.red on LC.bus.B
`,
		],
	},
	{
		code: "protection-out-of-order",
		fires: [
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 40 A from inv.out by 8-2, 6 ft
circuit one from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
`,
			`${supply}feed a from LC breaker 40 A by 8-2
  9 ft to P2: panel main 60 A
circuit one from P2 breaker 50 A by 6-2
  9 ft to b1: receptacle 50 A
`,
		],
		silent: [],
	},
	{
		code: "receptacle-dimmed",
		fires: [],
		silent: [
			`${supply}circuit a from LC breaker 15 A by 14-2
  9 ft to d1: dimmer
  9 ft to l1: light 9 W
circuit b from LC breaker 15 A by 14-2
  9 ft to s1: switch
  9 ft to r2: receptacle
`,
		],
	},
	{
		code: "receptacle-rating-wrong",
		fires: [
			`inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 6 ft
circuit one from LC breaker 20 A by 12-2
  8 ft to c1: receptacle 15 A single
`,
		],
		silent: [],
	},
	{
		code: "terminal-overfilled",
		fires: [
			`${supply}circuit one from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
  8 ft to b2: receptacle
at b1
  one-1.bare, one-2.bare on b1.ground
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
  8 ft to b2: receptacle
  8 ft to b3: receptacle
at b2
  join one-2.black, one-3.black, b2.hot by lever 2
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
circuit two from LC breaker 20 A by 12-2
  8 ft to b2: receptacle
at LC
  one-1.white, two-1.white on LC.neutral.3
`,
			`${supply}circuit one from LC breaker 20 A by 12-2
  8 ft to b1: receptacle
at LC
  LC-1.white, one-1.white, one-1.bare on LC.neutral.3
`,
		],
		silent: [],
	},
];
