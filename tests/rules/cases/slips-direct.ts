// Plans with direct current and a slip or two in the wiring, told in full: what one slip does to how another is told.
import { supply } from "./beginnings.ts";
import type { MoreCases } from "./variation.ts";

export const slipsDirect: readonly MoreCases[] = [
	{
		code: "chassis-bond-missing",
		fires: [
			`battery A1 lithium 12.8 V 100 Ah
battery A2 lithium 12.8 V 100 Ah
chassis body
feed middle from A1.- by single 2/0 white
  1 ft to A2.+
feed bank from A1.+, A2.- by pair 12 AWG
  within 7 in to F1: fuse 30 A
  3 ft to l1: light 6 W 24 V
bond minus-body from A2.- by single 2/0 orange
  15 ft to body
at A2
  join minus-body-1.orange, bank-1.black
`,
		],
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
		code: "circuit-mislabelled",
		fires: [],
		silent: [
			`battery house lithium 12.8 V 280 Ah
fuse-block FB 40 A
  slot 1: fuse 10 A
  slot 2: fuse 10 A
  slot 3: fuse 10 A
  slot 4: fuse 10 A
  slot 5: fuse 10 A
  slot 6: fuse 10 A
  slot 7: fuse 10 A
  slot 8: fuse 10 A
feed small from house.+, house.- by pair 8 AWG
  within 6 in to F1: fuse 40 A
  2 ft to FB
circuit c1 from FB.1 by pair 14 AWG
  6 ft to l1: light 70 W
circuit c2 from FB.2 by pair 14 AWG
  6 ft to l2: light 70 W
circuit c3 from FB.3 by pair 14 AWG
  6 ft to l3: light 70 W
circuit c4 from FB.4 by pair 14 AWG
  6 ft to l4: light 70 W
circuit c5 from FB.5 by pair 14 AWG
  6 ft to l5: light 70 W
circuit c6 from FB.6 by pair 14 AWG
  6 ft to l6: light 70 W
circuit c7 from FB.7 by pair 14 AWG
  6 ft to l7: light 70 W
circuit c8 from FB.8 by pair 14 AWG
  6 ft to l8: light 70 W
at FB
  link FB.negative.7, FB.8.stab by 12 AWG white
  c2-1.black on FB.8.load
  c6-1.red on FB.negative.6
`,
		],
	},
	{
		code: "colour-misleading",
		fires: [
			`battery A1 lithium 12.8 V 100 Ah
battery A2 lithium 12.8 V 100 Ah
chassis body
feed middle from A1.- by single 2/0 green
  1 ft to A2.+
feed bank from A1.+, A2.- by pair 12 AWG
  within 7 in to F1: fuse 30 A
  3 ft to l1: light 6 W 24 V
bond minus-body from A2.- by single 2/0 black
  2 ft to body
at F1
  bank-2.black on F1.load
  bank-1.red on F1.load
at A2
  link A2.-, A2.+ by 12 AWG black
`,
			`battery house lithium 12.8 V 280 Ah
feed main from house.+ by single 2 AWG black
  within 7 in to F1: fuse class-T 150 A
  1 ft by single 2 AWG red to plus: bus 250 A
`,
			`battery A1 lithium 12.8 V 100 Ah
battery A2 lithium 12.8 V 100 Ah
chassis body
feed middle from A1.- by single 2/0 white
  1 ft to A2.+
feed bank from A1.+, A2.- by pair 12 AWG
  within 7 in to F1: fuse 30 A
  3 ft to l1: light 6 W 24 V
bond minus-body from A2.- by single 2/0 orange
  15 ft to body
at A2
  join minus-body-1.orange, bank-1.black
`,
		],
		silent: [],
	},
	{
		code: "interrupting-rating-low",
		fires: [
			`battery house lithium 12.8 V 280 Ah, fault 12 kA
feed plus from house.+ by single 6 AWG red
  within 7 in to Q1: breaker 60 A
  2 ft to plus: bus 250 A
`,
			`battery A1 lithium 12.8 V 280 Ah, fault 8 kA
battery A2 lithium 12.8 V 280 Ah, fault 8 kA
feed a1 from A1.+ by single 2 AWG red
  within 7 in to F1: fuse 100 A interrupting 6 kA
  2 ft to plus: bus 250 A
feed a2 from A2.+ by single 2 AWG red
  within 7 in to F2: fuse 100 A interrupting 10 kA
  2 ft to plus
feed b1 from A1.- by single 2 AWG black
  2 ft to minus: bus 250 A
feed b2 from A2.- by single 2 AWG black
  2 ft to minus
feed small from plus, minus by pair 12 AWG
  bolted to F3: fuse 15 A interrupting 10 kA
  3 ft to l1: light 6 W
`,
		],
		silent: [],
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
			`battery house lithium 12.8 V 280 Ah
feed plus from house.+ by single 12 AWG red
  within 6 in to F1: fuse 20 A
  6 ft to l1: light 6 W
  6 ft to l2: light 6 W
feed minus from house.- by single 12 AWG black
  within 6 in to F2: fuse 15 A
  6 ft to l1.-
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
		code: "protection-too-large",
		fires: [
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
  link K1.line, K1.A1 by 12 AWG yellow
at FB
  join small-1.red, call-1.red
`,
			`battery house lithium 12.8 V 100 Ah
fuse-block FB
  slot 1: fuse 3 A
  slot 2: fuse 15 A
feed small from house.+, house.- by pair 20 AWG
  bolted to F1: fuse 60 A
  3 ft to FB
circuit pump from FB.2 by pair 14 AWG
  6 ft to K1: contactor 30 A coil 12 V
  4 ft to p1: pump 60 W
circuit call from FB.1 by pair 16 AWG
  5 ft to s1: switch
  2 ft to K1.coil
`,
		],
		silent: [
			`battery engine flooded 12 V 80 Ah
battery house lithium 25.6 V 100 Ah
dc-dc dc 20 A 12 V / 24 V
feed up from engine.+, engine.- by pair 8 AWG
  within 7 in to F1: fuse 60 A
  6 ft to dc.in
feed over from house.+, house.- by pair 8 AWG
  within 7 in to F2: fuse 60 A
  6 ft to dc.out
at dc
  link dc.out.-, dc.out.+ by 12 AWG green
`,
		],
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
		code: "voltage-rating-low",
		fires: [
			`battery bank lithium 51.2 V 100 Ah, fault 2 kA
feed plus from bank.+ by single 2 AWG red
  within 7 in to F1: fuse 100 A interrupting 20 kA
  1 ft to D1: disconnect 200 A
  1 ft to plus: bus 250 A
feed minus from bank.- by single 2 AWG black
  1 ft to minus: bus 250 A
`,
		],
		silent: [],
	},
];
