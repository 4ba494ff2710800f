// Further plans with direct current, each with one cause in it, told in full: several devices, several fuses, figures at a
// limit.
import { supply } from "./beginnings.ts";
import type { MoreCases } from "./variation.ts";

export const causesDirect: readonly MoreCases[] = [
	{
		code: "circuit-overloaded",
		fires: [
			`battery A1 agm 12 V 100 Ah
battery A2 agm 12 V 100 Ah
feed a1 from A1.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 20 A
  2 ft to plus: bus 250 A
feed a2 from A2.+ by single 2 AWG red
  within 7 in to F2: fuse class-T 20 A
  2 ft to plus
feed b1 from A1.- by single 2 AWG black
  2 ft to minus: bus 250 A
feed b2 from A2.- by single 2 AWG black
  2 ft to minus
feed small from plus, minus by pair 8 AWG
  bolted to F3: fuse 60 A
  3 ft to h1: load 600 W 12 V
`,
			`plan "x"
  region iec
battery house lithium 12.8 V 280 Ah
feed small from house.+, house.- by pair 2.5 mm2
  within 15 cm to F1: fuse 10 A
  1 m to l1: light 140 W continuous
`,
			`battery house lithium 12.8 V 280 Ah
feed small from house.+, house.- by pair 8 AWG
  within 7 in to F1: fuse 30 A
  3 ft to FB: fuse-block
    slot 1: fuse 20 A
    slot 2: fuse 20 A
    slot 3: fuse 20 A
circuit one from FB.1 by pair 12 AWG
  3 ft to l1: load 200 W 12 V
circuit two from FB.2 by pair 12 AWG
  3 ft to l2: load 100 W 12 V
  3 ft to l3: load
circuit three from FB.3 by pair 12 AWG
  3 ft to l4: load 150 W 12 V
`,
			`battery house lithium 12.8 V 280 Ah
feed small from house.+, house.- by pair 12 AWG
  within 7 in to F1: fuse 10 A
  3 ft to l1: light 20 W
  3 ft to l2: light 90 W
  3 ft to l3: light 60 W
`,
			`battery house lithium 12.8 V 280 Ah
feed small from house.+, house.- by pair 8 AWG
  within 7 in to F1: fuse 20 A
  3 ft to FB: fuse-block
    slot 1: fuse 25 A
    slot 2: fuse 5 A
circuit one from FB.1 by pair 10 AWG
  3 ft to h1: load 256 W 12.8 V continuous
circuit two from FB.2 by pair 16 AWG
  3 ft to l2: light 30 W
`,
			`${supply}battery house lithium 12.8 V 280 Ah
circuit charge from LC breaker 15 A by 14-2
  3 ft to ch: charger 20 A 12 V
feed filled from house.+, house.- by pair 8 AWG
  within 7 in to F2: fuse 10 A
  2 ft to F3: fuse 10 A
  3 ft to ch.+
`,
			`${supply}battery house lithium 12.8 V 280 Ah
inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
circuit charge from LC breaker 15 A by 14-2
  3 ft to ch: charger 20 A 12 V
feed filled from house.+, house.- by pair 8 AWG
  within 7 in to F2: fuse 15 A
  3 ft to ch.+
feed power from house.+, house.- by pair 2 AWG
  within 7 in to F1: fuse class-T 125 A
  2 ft to inv.+
`,
		],
		silent: [],
	},
	{
		code: "circuits-joined",
		fires: [
			`battery house agm 12 V 100 Ah
feed main from house.+ by single 4 AWG red
  within 7 in to F1: fuse 100 A
  1 ft to plus: bus 150 A
feed back from house.- by single 4 AWG black
  1 ft to minus: bus 150 A
feed small from plus, minus by pair 8 AWG
  bolted to F2: fuse 50 A
  3 ft to FB: fuse-block 60 A, ways 4
circuit box from FB fuse 15 A by pair 12 AWG
  4 ft to k1: load 120 W 12 V
feed more from plus by single 12 AWG red
  bolted to F3: fuse 20 A
  4 ft to k1.+
`,
		],
		silent: [],
	},
	{
		code: "colour-misleading",
		fires: [
			`battery A1 agm 12 V 100 Ah
battery A2 agm 12 V 100 Ah
chassis body
feed middle from A1.- by single 2/0 white
  1 ft to A2.+
feed small from A1.+, A2.- by pair 12 AWG
  bolted to F1: fuse 15 A
  3 ft to l1: light 6 W 24 V
bond minus-body from A2.- by single 2/0 orange
  2 ft to body
`,
			`battery A1 agm 12 V 100 Ah
battery A2 agm 12 V 100 Ah
chassis body
feed middle from A1.- by single 2/0 green
  1 ft to A2.+
feed small from A1.+, A2.- by pair 12 AWG
  bolted to F1: fuse 15 A
  3 ft to l1: light 6 W 24 V
bond minus-body from A2.- by single 2/0 black
  2 ft to body
`,
			`battery A1 agm 12 V 100 Ah
battery A2 agm 12 V 100 Ah
chassis body
feed middle from A1.- by single 2/0 black
  1 ft to A2.+
feed small from A1.+, A2.- by pair 12 AWG
  bolted to F1: fuse 15 A
  3 ft to l1: light 6 W 24 V
bond minus-body from A2.- by single 2/0 red
  2 ft to body
`,
			`battery A1 agm 12 V 100 Ah
battery A2 agm 12 V 100 Ah
chassis body
feed middle from A1.- by single 2/0 green
  1 ft to A2.+
feed small from A1.+, A2.- by pair 12 AWG
  bolted to F1: fuse 15 A
  3 ft to l1: light 6 W 24 V
bond minus-body from A2.- by single 2/0 black
  2 ft to body
feed down from A1.+, A2.- by pair 12 AWG
  bolted to F2: fuse 15 A
  3 ft to l2: light 6 W 24 V
at l2
  down-1.red on l2.-
  down-1.black on l2.+
`,
			`battery A1 agm 12 V 100 Ah
battery A2 agm 12 V 100 Ah
chassis body
feed middle from A1.- by single 2/0 black
  1 ft to A2.+
feed small from A1.+, A2.- by pair 12 AWG
  bolted to F1: fuse 15 A
  3 ft to l1: light 6 W 24 V
bond minus-body from A2.- by single 2/0 red
  2 ft to body
feed down from A1.+, A2.- by pair 12 AWG
  bolted to F2: fuse 15 A
  3 ft to l2: light 6 W 24 V
at l2
  down-1.red on l2.-
  down-1.black on l2.+
`,
			`battery house lithium 12.8 V 280 Ah
feed small from house.+ by single 12 AWG blue
  within 7 in to F1: fuse 15 A
  3 ft to l1: light 6 W
feed back from house.- by single 12 AWG red
  3 ft to l1.-
`,
			`battery house lithium 12.8 V 280 Ah
feed small from house.+, house.- by pair 12 AWG
  within 7 in to F1: fuse 15 A
  3 ft to l1: light 6 W
  3 ft to l2: light 6 W
at l1
  small-2.red on l1.-
  small-2.black on l1.+
`,
		],
		silent: [],
	},
	{
		code: "device-undersized",
		fires: [
			`battery A1 agm 12 V 100 Ah
battery A2 agm 12 V 100 Ah
feed a1 from A1.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 100 A
  2 ft to plus: bus 250 A
feed a2 from A2.+ by single 2 AWG red
  within 7 in to F2: fuse class-T 150 A
  2 ft to plus
feed b1 from A1.- by single 2 AWG black
  2 ft to minus: bus 250 A
feed b2 from A2.- by single 2 AWG black
  2 ft to minus
feed over from plus by single 2 AWG red
  1 ft to D1: disconnect 120 A
  1 ft to plus2: bus 300 A
feed small from plus2, minus by pair 12 AWG
  bolted to F3: fuse 15 A
  3 ft to l1: light 6 W
`,
			`battery A1 agm 12 V 100 Ah
battery A2 agm 12 V 100 Ah
feed a1 from A1.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 100 A
  2 ft to plus: bus 250 A
feed a2 from A2.+ by single 2 AWG red
  within 7 in to F2: fuse class-T 100 A
  2 ft to plus
feed b1 from A1.- by single 2 AWG black
  2 ft to minus: bus 250 A
feed b2 from A2.- by single 2 AWG black
  2 ft to minus
feed small from plus, minus by pair 12 AWG
  bolted to F3: fuse 15 A
  3 ft to s1: switch 5 A
  3 ft to l1: light 60 W
  3 ft to l2: light 20 W
  3 ft to l3: light 30 W
`,
			`battery house lithium 12.8 V 280 Ah
feed plus from house.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 150 A
  1 ft to plus: bus 250 A
feed back from house.- by single 2 AWG black
  1 ft to SH: shunt 100 A
  1 ft to minus: bus 250 A
feed small from plus, minus by pair 12 AWG
  bolted to F2: fuse 15 A
  3 ft to l1: light 6 W
`,
			`battery house lithium 12.8 V 280 Ah
feed plus from house.+ by single 4/0 red
  within 7 in to F1: fuse class-T 200 A
  1 ft to plus: bus 250 A
feed back from house.- by single 4/0 black
  bolted to SH: shunt 100 A
  1 ft to minus: bus 250 A
feed small from plus, minus by pair 12 AWG
  bolted to F2: fuse 15 A
  3 ft to l1: light 6 W
at minus
  back-1.black on minus.3
`,
		],
		silent: [],
	},
	{
		code: "receptacle-dimmed",
		fires: [
			`${supply}battery house lithium 12.8 V 280 Ah
circuit a from LC breaker 15 A by 14-2
  9 ft to d1: dimmer
  9 ft to r1: receptacle split
  6 ft to r2: receptacle
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 15 A
  6 ft to d2: dimmer
  3 ft to l1: light 6 W
`,
		],
		silent: [],
	},
	{
		code: "series-tapped",
		fires: [
			`battery house lithium 12.8 V 100 Ah
battery bank lithium 25.6 V 100 Ah
relay K1 30 A coil 12 V changeover
feed a from house.+ by single 10 AWG red
  within 7 in to F1: fuse 30 A
  2 ft to K1.normally-closed
feed b from bank.+ by single 10 AWG red
  within 7 in to F2: fuse 30 A
  2 ft to K1.normally-open
feed am from house.- by single 10 AWG black
  1 ft to minus: bus 100 A
feed bm from bank.- by single 10 AWG black
  1 ft to minus
feed out from K1.common by single 10 AWG red
  2 ft to l1.+
feed outm from minus by single 10 AWG black
  2 ft to l1.-
light l1 20 W
at bank
  b-1.red on bank.+
  bm-1.black on bank.+
`,
			`battery engine flooded 12 V 80 Ah
battery house lithium 12.8 V 100 Ah
dc-dc dc 20 A 12 V / 12 V
feed up from engine.+, engine.- by pair 8 AWG
  within 7 in to F1: fuse 60 A
  6 ft to dc.in
feed over from house.+, house.- by pair 10 AWG
  within 7 in to F2: fuse 30 A
  6 ft to dc.out
at F1
  join up-1.red, up-2.black
`,
			`battery A1 agm 12 V 100 Ah
battery A2 agm 12 V 100 Ah
battery A3 agm 12 V 100 Ah
feed m1 from A1.- by single 2/0 black
  1 ft to A2.+
feed m2 from A2.- by single 2/0 black
  1 ft to A3.+
feed small from A1.+, A3.- by pair 12 AWG
  bolted to F1: fuse 15 A
  3 ft to l1: light 6 W 36 V
feed tap from A2.+, A3.- by pair 12 AWG
  bolted to F2: fuse 15 A
  3 ft to l2: light 6 W 24 V
feed low from A3.+, A3.- by pair 12 AWG
  bolted to F3: fuse 15 A
  3 ft to l3: light 6 W 12 V
`,
		],
		silent: [
			`battery engine flooded 12 V 80 Ah
battery house lithium 12.8 V 100 Ah
dc-dc dc 20 A 12 V / 12 V
feed up from engine.+, engine.- by pair 8 AWG
  6 ft to dc.in
feed over from house.+, house.- by pair 10 AWG
  within 7 in to F2: fuse 30 A
  6 ft to dc.out
at house
  over-1.black on house.+
at F2
  over-2.black on F2.load
`,
		],
	},
	{
		code: "source-unjoined",
		fires: [
			`solar m1 200 W, open 22 V, short 11 A
solar m2 200 W, open 22 V, short 11 A
solar-controller mppt 20 A 12 V, limit 75 V
feed middle from m1.- by single 10 AWG black
  1 ft to m2.+
feed sun from m1.+, m2.- by pair 10 AWG
  10 ft to D1: disconnect 30 A
`,
		],
		silent: [
			`battery house agm 12 V 100 Ah
feed plus from house.+ by single 6 AWG red
  6 in to F1: fuse class-T 60 A
  1 ft to plus: bus 250 A
at house
  plus-1.red loose
at F1
  plus-1.red loose
`,
		],
	},
];
