// Near misses, and further plans, with direct current in them: what is right, or wrong in another way.
import { bank, supply } from "./beginnings.ts";
import type { MoreCases } from "./variation.ts";

export const nearDirect: readonly MoreCases[] = [
	{
		code: "batteries-unequal",
		fires: [],
		silent: [
			`battery engine flooded 12 V 80 Ah
battery house lithium 12.8 V 280 Ah
feed one from engine.+, engine.- by pair 12 AWG
  within 7 in to F1: fuse 15 A
  6 ft to l1: light 6 W
feed two from house.+, house.- by pair 12 AWG
  within 7 in to F2: fuse 15 A
  6 ft to l2: light 6 W
`,
		],
	},
	{
		code: "bond-used-as-return",
		fires: [
			`battery start flooded 12 V 60 Ah
battery house lithium 12.8 V 200 Ah
dc-dc step 20 A 12 V / 12 V
chassis body
feed up from start.+, start.- by pair 8 AWG
  within 12 in to F1: fuse 40 A
  9 ft to step.in
feed filled from house.+ by single 10 AWG red
  within 12 in to F2: fuse 30 A
  2 ft to step.out.+
feed small from house.+, house.- by pair 12 AWG
  within 12 in to F3: fuse 20 A
  6 ft to l1: light 6 W
bond earth from house.- by single 6 AWG black
  2 ft to body
bond starter-earth from start.- by single 6 AWG black
  1 ft to body
`,
			`battery house agm 12 V 100 Ah
chassis body
light l1 6 W
feed small from house.+ by single 12 AWG red
  within 12 in to F1: fuse 15 A
  6 ft to l1.+
bond lamp from l1.- by single 12 AWG black
  1 ft to body
bond earth from house.- by single 6 AWG black
  2 ft to body
`,
		],
		silent: [
			`battery house agm 12 V 100 Ah
chassis body
light l1 6 W
feed small from house.+ by single 12 AWG red
  within 12 in to F1: fuse 15 A
  6 ft to l1.+
feed back from l1.- by single 12 AWG black
  6 ft to house.-
bond earth from house.- by single 6 AWG black
  2 ft to body
`,
			`battery start flooded 12 V 60 Ah
battery house agm 12 V 100 Ah
dc-dc step 20 A 12 V / 12 V
chassis body
feed up from start.+, start.- by pair 8 AWG
  within 12 in to F1: fuse 40 A
  9 ft to step.in
feed filled from house.+ by single 10 AWG red
  within 12 in to F2: fuse 30 A
  2 ft to step.out.+
feed back from step.out.- by single 10 AWG black
  2 ft to house.-
feed small from house.+, house.- by pair 12 AWG
  within 12 in to F3: fuse 20 A
  6 ft to l1: light 6 W
bond earth from house.- by single 6 AWG black
  2 ft to body
bond starter-earth from start.- by single 6 AWG black
  1 ft to body
`,
		],
	},
	{
		code: "cable-unsuited",
		fires: [
			`${supply}battery house lithium 12.8 V 100 Ah
circuit bunks from LC breaker 20 A by 12-2
  14 ft to j1: box metal
  6 ft to b1: receptacle
feed small from house.+, house.- by pair 14 AWG
  within 6 in to F1: fuse 10 A
  9 ft to j1
  3 ft to o1: light 6 W
`,
		],
		silent: [],
	},
	{
		code: "charging-in-circle",
		fires: [
			`inlet shore 30 A 120 V
inverter-charger inv 1000 W 12 V / 120 V, pass-through 30 A, bonds neutral when inverting
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A from inv.out by 10-2, 4 ft
battery house lithium 12.8 V 100 Ah, fault 3 kA
feed power from house.+, house.- by pair 2 AWG
  within 7 in to F1: fuse class-T 125 A interrupting 20 kA
  2 ft to inv.+
circuit charge from LC breaker 15 A by 14-2
  3 ft to ch: charger 20 A 12 V
feed filled from house.+, house.- by pair 10 AWG
  within 7 in to F2: fuse 30 A interrupting 10 kA
  3 ft to ch.+
`,
			`inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
battery house lithium 12.8 V 100 Ah, fault 3 kA
feed power from house.+, house.- by pair 2 AWG
  within 7 in to F1: fuse class-T 125 A interrupting 20 kA
  2 ft to inv.+
circuit desk from inv.out by 12-2
  3 ft to ch: charger 20 A 12 V
feed filled from house.+, house.- by pair 10 AWG
  within 7 in to F2: fuse 30 A interrupting 10 kA
  3 ft to ch.+
`,
		],
		silent: [
			`inlet shore 30 A 120 V
panel SB main 30 A from shore by 10-2, 12 ft
inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
battery house lithium 12.8 V 100 Ah, fault 3 kA
feed power from house.+, house.- by pair 2 AWG
  within 7 in to F1: fuse class-T 125 A interrupting 20 kA
  2 ft to inv.+
circuit desk from inv.out by 12-2
  3 ft to r1: receptacle
circuit charge from SB breaker 15 A by 14-2
  3 ft to ch: charger 20 A 12 V
feed filled from house.+, house.- by pair 10 AWG
  within 7 in to F2: fuse 30 A interrupting 10 kA
  3 ft to ch.+
`,
			`inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
battery house lithium 12.8 V 100 Ah, fault 3 kA
feed power from house.+, house.- by pair 2 AWG
  within 7 in to F1: fuse class-T 125 A interrupting 20 kA
  2 ft to inv.+
circuit desk from inv.out by 12-2
  3 ft to ch: charger 20 A 12 V
battery engine flooded 12 V 80 Ah, fault 2 kA
feed filled from engine.+, engine.- by pair 10 AWG
  within 7 in to F2: fuse 30 A interrupting 10 kA
  3 ft to ch.+
`,
		],
	},
	{
		code: "charging-reversed",
		fires: [
			`battery bank lithium 25.6 V 100 Ah
converter step 20 A 24 V / 12 V
feed up from bank.+, bank.- by pair 10 AWG
  bolted to F1: fuse 30 A
  3 ft to step.out
feed down from step.in by pair 10 AWG
  2 ft to l1: light 20 W 12 V
`,
		],
		silent: [],
	},
	{
		code: "colour-misleading",
		fires: [],
		silent: [
			`battery house lithium 12.8 V 100 Ah
chassis frame
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
bond board from LC.ground by single 8 AWG green
  6 ft to frame
feed small from house.+, house.- by pair 14 AWG
  within 6 in to F1: fuse 15 A
  6 ft to p1: pump 60 W
bond low from house.- by single 10 AWG black
  1 ft to frame
`,
		],
	},
	{
		code: "conductor-undersized",
		fires: [],
		silent: [
			`battery house agm 12 V 100 Ah
feed small from house.+, house.- by pair 16 AWG
  within 6 in to F1: fuse 60 A
  6 ft to l1: light 60 W
`,
		],
	},
	{
		code: "negative-fused",
		fires: [
			`battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 12 AWG red
  within 6 in to F1: fuse 20 A
  6 ft to l1: light 6 W
feed minus from house.- by single 12 AWG black
  within 6 in to F2: fuse 20 A
  6 ft to l1.-
chassis frame
bond low from house.- by single 8 AWG black
  1 ft to frame
`,
		],
		silent: [],
	},
	{
		code: "polarity-dc-reversed",
		fires: [
			`${bank}circuit lights from FB.1 by pair 16 AWG
  3 ft to l1..l9: light 2 W each
at l3
  join lights-3.red, lights-4.black, l3.-
  join lights-3.black, lights-4.red, l3.+
`,
		],
		silent: [],
	},
	{
		code: "series-tapped",
		fires: [
			`battery B1 lithium 12.8 V 100 Ah
battery B2 lithium 12.8 V 100 Ah
feed middle from B1.- by single 2/0 black
  1 ft to B2.+
feed bank from B1.+, B2.- by pair 12 AWG
  bolted to F1: fuse 30 A
  3 ft to l1: light 6 W 24 V
feed tap from B2.+, B2.- by pair 12 AWG
  bolted to F2: fuse 15 A
  3 ft to l2: light 6 W 12 V
`,
		],
		silent: [],
	},
	{
		code: "shunt-bypassed",
		fires: [],
		silent: [
			`inverter inv 500 W 12 V / 120 V, bonds neutral when inverting
battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse class-T 60 A
  1 ft to plus: bus 100 A
feed back from house.- by single 6 AWG black
  1 ft to SH: shunt 100 A
  1 ft to minus: bus 100 A
feed power from plus, minus by pair 6 AWG
  bolted to F2: fuse class-T 60 A
  2 ft to inv.+
`,
			`battery house lithium 12.8 V 100 Ah
feed small from house.+, house.- by pair 12 AWG
  within 7 in to F2: fuse 15 A
  6 ft to l1: light 6 W
`,
		],
	},
	{
		code: "supply-missing",
		fires: [],
		silent: [
			`battery house lithium 12.8 V 100 Ah
chassis frame
inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
bond board from LC.ground by single 8 AWG green
  6 ft to frame
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 15 A
  6 ft to p1: pump 60 W
`,
		],
	},
	{
		code: "systems-unseparated",
		fires: [],
		silent: [
			`${supply}battery house lithium 12.8 V 100 Ah
circuit one from LC breaker 20 A by 12-2
  14 ft to j1: box metal
  6 ft to b1: receptacle
feed small from house.+, house.- by pair 14 AWG
  within 6 in to F1: fuse 10 A
  9 ft to j2: box plastic
  3 ft to o1: outlet-12v 60 W
`,
		],
	},
	{
		code: "voltages-mixed",
		fires: [
			`battery house agm 12 V 100 Ah
battery engine agm 24 V 100 Ah
feed house-plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse class-T 60 A
  1 ft to plus: bus 250 A
feed engine-plus from engine.+ by single 6 AWG red
  within 7 in to F2: fuse class-T 60 A
  1 ft to plus
feed house-minus from house.- by single 6 AWG black
  1 ft to minus: bus 250 A
feed engine-minus from engine.- by single 6 AWG black
  1 ft to minus
feed small from plus, minus by pair 12 AWG
  bolted to F3: fuse 15 A
  3 ft to l1: light 6 W
`,
		],
		silent: [],
	},
];
