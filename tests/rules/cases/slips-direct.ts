// Plans with direct current and a slip or two in the wiring, told in full: what one slip does to how another is told.
import { supply } from "./beginnings.ts";
import type { MoreCases } from "./variation.ts";

export const slipsDirect: readonly MoreCases[] = [
	{
		code: "chassis-bond-missing",
		fires: [],
		silent: [
			`battery house lithium 12.8 V 100 Ah
chassis frame
feed plus from house.+ by single 6 AWG red
  7 in to F1: fuse class-T 60 A
  2 ft to plus: bus 250 A
`,
		],
	},
	{
		code: "load-voltage-wrong",
		fires: [
			`battery house agm 12 V 100 Ah
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 15 A
  6 ft to l1: light 60 W
at l1
  small-2.red on l1.-
  small-2.black on l1.+
at house
  small-1.black loose
`,
			`battery house agm 12 V 100 Ah
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 20 A
  6 ft to d1: dimmer
  3 ft to l1: light 6 W
  3 ft to x1: pump 30 W
at F1
  small-2.black on F1.load
  small-2.red on F1.line
`,
		],
		silent: [],
	},
	{
		code: "negative-fused",
		fires: [
			`battery house lithium 12.8 V 100 Ah
inverter inv 1000 W 12 V / 120 V, bonds neutral when inverting
feed plus from house.+ by single 2 AWG red
  within 6 in to F1: fuse class-T 125 A
  2 ft to inv.+
feed minus from house.- by single 2 AWG black
  2 ft to inv.-
circuit desk from inv.out by 14-2
  3 ft to d1: receptacle
at inv
  desk-1.bare capped
  plus-2.red on inv.hot
at house
  plus-1.red on house.-
  minus-1.black on house.-
`,
		],
		silent: [],
	},
	{
		code: "poles-joined",
		fires: [
			`battery house agm 12 V 100 Ah
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 20 A
  6 ft to d1: dimmer
  3 ft to l1: light 6 W
  3 ft to x1: pump 30 W
at F1
  small-2.black on F1.load
  small-2.red on F1.line
`,
			`battery house lithium 12.8 V 100 Ah
light l1 6 W
feed plus from house.+ by single 10 AWG red
  3 ft to l1.-
  3 ft to l1.+
feed minus from house.- by single 10 AWG black
  3 ft to l1.-
`,
		],
		silent: [],
	},
	{
		code: "protection-missing",
		fires: [
			`battery house agm 12 V 100 Ah
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 20 A
  6 ft to l1: light 6 W
battery second agm 12 V 100 Ah
feed over from house.+ by single 4 AWG red
  within 7 in to F2: fuse 80 A
  2 ft to F3: fuse 80 A
  7 in to second.+
at l1
  small-2.black on l1.-
at F2
  link F2.load, F2.line by 12 AWG white
`,
		],
		silent: [],
	},
	{
		code: "receptacle-rating-wrong",
		fires: [],
		silent: [
			`${supply}battery house lithium 12.8 V 280 Ah, fault 5 kA
fuse-block FB
  slot 1: fuse 10 A
  slot 2: fuse 15 A
feed main from house.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 150 A interrupting 20 kA
  1 ft to D1: disconnect 300 A
  1 ft to plus: bus 250 A
feed back from house.- by single 2 AWG black
  1 ft to SH: shunt 500 A
  1 ft to minus: bus 250 A
feed small from plus, minus by pair 8 AWG
  bolted to F2: fuse 60 A
  3 ft to FB
circuit heat from LC breaker 15 A by 14-2
  6 ft to K1: contactor 20 A coil 12 V
  6 ft to h1: heater 1000 W
circuit call from FB.1 by pair 16 AWG
  5 ft to s1: switch
  2 ft to K1.coil
at K1
  link K1.A2, K1.A1 by 12 AWG red
  link K1.line, K1.A1 by 12 AWG black
`,
		],
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
