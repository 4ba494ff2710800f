// Plans of the direct-current side that are told in full, and near misses that are easily taken for the fault.
import { bank, supply } from "./beginnings.ts";
import type { MoreCases } from "./variation.ts";

export const toldDirect: readonly MoreCases[] = [
	{
		code: "circuit-overloaded",
		fires: [
			`battery house lithium 12.8 V 280 Ah
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 10 A
  3 ft to l1: light 104 W continuous
`,
			`battery house lithium 12.8 V 280 Ah
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 10 A
  3 ft to l1: light
`,
		],
		silent: [
			`solar roof 200 W, open 22 V, short 11 A
solar-controller mppt 20 A 12 V, limit 75 V
battery house lithium 12.8 V 100 Ah
feed sun from roof.+, roof.- by pair 10 AWG
  1 ft to F2: fuse 20 A
  12 ft to mppt.in
feed charge from house.+, house.- by pair 10 AWG
  within 7 in to F1: fuse 30 A
  4 ft to mppt.out
`,
		],
	},
	{
		code: "colour-misleading",
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
		code: "device-undersized",
		fires: [
			`battery house lithium 12.8 V 280 Ah
feed small from house.+, house.- by pair 12 AWG
  within 6 in to F1: fuse 15 A
  3 ft to s1: switch 9 A
  3 ft to l1: light 128 W
`,
		],
		silent: [],
	},
	{
		code: "disconnection-missing",
		fires: [
			`battery bank lithium 25.6 V 100 Ah
converter step 20 A 24 V / 12 V
feed up from bank.+, bank.- by pair 10 AWG
  bolted to F1: fuse 30 A
  3 ft to step.in
`,
		],
		silent: [
			`${supply}battery house lithium 12.8 V 100 Ah
circuit bunks from LC breaker 20 A by 12-2
  14 ft to j1: box metal
  6 ft to b1: receptacle
feed small from house.+, house.- by pair 14 AWG
  within 6 in to F1: fuse 10 A
  9 ft to o1: outlet-12v 60 W
`,
			`battery house agm 12 V 100 Ah
feed plus from house.+ by single 6 AWG red
  6 in to F1: fuse class-T 60 A
  1 ft to plus: bus 250 A
`,
			`battery engine flooded 12 V 80 Ah
battery house lithium 25.6 V 100 Ah
dc-dc dc 20 A 12 V / 24 V
feed up from engine.+, engine.- by pair 8 AWG
  within 7 in to F1: fuse 60 A
  6 ft to dc.out
feed over from house.+, house.- by pair 8 AWG
  within 7 in to F2: fuse 60 A
  6 ft to dc.in
`,
		],
	},
	{
		code: "end-loose",
		fires: [
			`${bank}circuit lights from FB.1 by pair 16 AWG
  3 ft to l1..l9: light 2 W each
circuit pumps from FB.2 by pair 14 AWG
  3 ft to p1..p3: pump 20 W each
at l3
  lights-3.red loose
`,
		],
		silent: [],
	},
	{
		code: "interrupting-rating-low",
		fires: [
			`battery bank lithium 25.6 V 100 Ah
converter step 20 A 24 V / 12 V
feed up from bank.+, bank.- by pair 10 AWG
  bolted to F1: fuse 30 A
  3 ft to step.out
`,
			`battery B1 agm 12 V 100 Ah
battery B2 agm 12 V 100 Ah
feed middle from B1.- by single 8 AWG black
  1 ft to B2.+
feed small from B1.+, B2.- by pair 8 AWG
  within 7 in to F1: fuse class-T 60 A interrupting 20 kA
  3 ft to FB: fuse-block
    slot 1: fuse 5 A
circuit later roughed in from FB.1 by pair 16 AWG
  4 ft to l1: light 6 W 24 V
`,
		],
		silent: [],
	},
	{
		code: "load-voltage-wrong",
		fires: [
			`battery bank lithium 25.6 V 100 Ah
converter step 20 A 24 V / 12 V
feed up from bank.+, bank.- by pair 10 AWG
  bolted to F1: fuse 30 A
  3 ft to step.in
feed down from step.in by pair 10 AWG
  2 ft to l1: light 20 W 12 V
`,
			`battery house agm 12 V 100 Ah
light l1 60 W
feed up from house.+ by single 12 AWG red
  within 6 in to F1: fuse 15 A
  6 ft to l1.+
`,
			`battery house agm 12 V 100 Ah
battery engine agm 12 V 100 Ah
feed one from house.+ by single 12 AWG red
  within 6 in to F1: fuse 15 A
  3 ft to l1: light 6 W
feed back from engine.- by single 12 AWG black
  3 ft to l1.-
feed two from house.+, house.- by pair 12 AWG
  within 6 in to F2: fuse 15 A
  3 ft to l2: light 6 W
feed three from engine.+, engine.- by pair 12 AWG
  within 6 in to F3: fuse 15 A
  3 ft to l3: light 6 W
`,
			`${bank}circuit lights from FB.1 by pair 16 AWG
  9 ft to l1: light 6 W 24 V
`,
		],
		silent: [],
	},
	{
		code: "poles-joined",
		fires: [
			`${bank}feed wrong from plus by single 2 AWG red
  1 ft to minus
`,
		],
		silent: [],
	},
	{
		code: "protection-missing",
		fires: [
			`battery A1 lithium 12.8 V 100 Ah
battery A2 lithium 12.8 V 100 Ah
feed a1 from A1.+ by single 2/0 red
  within 7 in to F1: fuse class-T 150 A
  2 ft to plus: bus 400 A
feed a2 from A2.+ by single 2/0 red
  2 ft to plus
feed b1 from A1.- by single 2/0 black
  2 ft to minus: bus 400 A
feed b2 from A2.- by single 2/0 black
  2 ft to minus
`,
		],
		silent: [],
	},
	{
		code: "protection-too-large",
		fires: [
			`battery house agm 12 V 100 Ah
light l1 60 W
feed up from house.+ by single 16 AWG red
  bolted to F1: fuse 60 A
  6 ft to l1.+
feed down from house.- by single 16 AWG black
  6 ft to l1.-
`,
			`${supply}battery house lithium 12.8 V 100 Ah
circuit bunks from LC breaker 20 A by 12-2
  14 ft to j1: box plastic
  6 ft to b1: receptacle
feed small from house.+, house.- by pair 14 AWG
  within 6 in to F1: fuse 10 A
  9 ft to j1
  3 ft to o1: outlet-12v 60 W
at j1
  join bunks-1.black, small-2.black
`,
			`battery house agm 12 V 100 Ah
load l1 6 W
feed one from house.+ by single 8 AWG aluminium red
  within 6 in to F1: fuse 15 A
  3 ft to l1.+
feed back from house.- by single 12 AWG black
  3 ft to l1.-
`,
		],
		silent: [],
	},
	{
		code: "source-unjoined",
		fires: [
			`battery house lithium 12.8 V 100 Ah
battery bank lithium 25.6 V 100 Ah
feed house-plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse class-T 60 A
  1 ft to plus: bus 250 A
feed bank-plus from bank.+ by single 6 AWG red
  within 7 in to F2: fuse class-T 60 A
  1 ft to other: bus 250 A
feed house-minus from house.- by single 6 AWG black
  1 ft to minus: bus 250 A
feed bank-minus from bank.- by single 6 AWG black
  1 ft to minus
`,
		],
		silent: [],
	},
	{
		code: "string-voltage-high",
		fires: [
			`solar m1 200 W, open 40 V, short 11 A
solar-controller mppt 20 A 12 V
battery house lithium 12.8 V 100 Ah
feed sun from m1.+, m1.- by pair 10 AWG
  10 ft to D1: disconnect 30 A
  2 ft to mppt.in
feed charge from house.+, house.- by pair 10 AWG
  within 7 in to F1: fuse 30 A
  4 ft to mppt.out
`,
		],
		silent: [],
	},
	{
		code: "switch-in-neutral",
		fires: [
			`battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 6 AWG red
  within 6 in to F1: fuse 60 A
  1 ft to plus: bus 250 A
feed minus from house.- by single 6 AWG black
  1 ft to D2: disconnect 60 A
  1 ft to minus: bus 250 A
`,
		],
		silent: [],
	},
	{
		code: "switch-without-effect",
		fires: [
			`${bank}circuit heat from FB.2 by pair 14 AWG
  6 ft to th: thermostat 10 A
  4 ft to fan1: fan 60 W
feed past from FB.1 by single 14 AWG red
  6 ft to fan1.+
`,
		],
		silent: [],
	},
	{
		code: "systems-mixed",
		fires: [
			`${supply}battery house lithium 12.8 V 100 Ah
circuit bunks from LC breaker 20 A by 12-2
  14 ft to j1: box plastic
  6 ft to b1: receptacle
feed small from house.+, house.- by pair 14 AWG
  within 6 in to F1: fuse 10 A
  9 ft to j1
  3 ft to o1: outlet-12v 60 W
at j1
  join bunks-1.black, small-2.black
`,
		],
		silent: [],
	},
	{
		code: "voltage-rating-low",
		fires: [
			`battery bank lithium 51.2 V 100 Ah, fault 2 kA
feed plus from bank.+ by single 2 AWG red
  within 7 in to F1: fuse 100 A interrupting 20 kA
  1 ft to plus: bus 250 A
feed minus from bank.- by single 2 AWG black
  1 ft to minus: bus 250 A
`,
		],
		silent: [],
	},
];
