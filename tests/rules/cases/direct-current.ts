// More plans for the rules on batteries, solar modules, fuses for direct current and what parts both systems.
import { type MoreCases, varied, variedSecond } from "./variation.ts";

export const directCurrent: readonly MoreCases[] = [
	{
		code: "protection-too-far",
		fires: [
			varied("protection-too-far", ["5 ft to F1", "19 in to F1"]),
			variedSecond("protection-too-far", ["8 ft to F1", "73 in to F1"]),
		],
		silent: [
			varied("protection-too-far", ["5 ft to F1", "18 in to F1"]),
			variedSecond("protection-too-far", ["8 ft to F1", "7 in to F1"]),
		],
	},
	{
		code: "interrupting-rating-low",
		fires: [varied("interrupting-rating-low", ["interrupting 5 kA", "interrupting 11.9 kA"])],
		silent: [varied("interrupting-rating-low", ["interrupting 5 kA", "interrupting 12 kA"])],
	},
	{
		code: "voltage-rating-low",
		fires: [varied("voltage-rating-low", ["32 V", "40 V"])],
		silent: [varied("voltage-rating-low", ["32 V", "125 V"])],
	},
	{
		code: "string-voltage-high",
		fires: [
			varied("string-voltage-high", ["limit 50 V", "limit 44 V"]),
			varied("string-voltage-high", ["open 22 V", "open 30 V"]),
		],
		silent: [
			varied("string-voltage-high", ["limit 50 V", "limit 100 V"]),
			varied("string-voltage-high", ["open 22 V", "open 12 V"], ["open 22 V", "open 12 V"]),
		],
	},
	{
		code: "strings-unfused",
		fires: [varied("strings-unfused", ["short 11 A", "short 9 A"])],
		silent: [
			varied("string-voltage-high", ["limit 50 V", "limit 100 V"]),
			varied("disconnection-missing", ["14 ft ", "12 ft to D1: disconnect 30 A\n  2 ft "]),
		],
	},
	{
		code: "polarity-dc-reversed",
		fires: [],
		silent: [
			varied("polarity-dc-reversed", ["at l1\n  lights-1.red on l1.-\n  lights-1.black on l1.+\n", ""]),
			varied(
				"polarity-dc-reversed",
				["lights-1.red on l1.-", "lights-1.red on l1.+"],
				["lights-1.black on l1.+", "lights-1.black on l1.-"],
			),
		],
	},
	{
		code: "negative-fused",
		fires: [varied("negative-fused", ["F2: fuse 60 A", "F2: breaker 60 A"])],
		silent: [
			varied("negative-fused", ["F2: fuse 60 A", "D2: disconnect 60 A"]),
			varied("negative-fused", ["  1 ft to F2: fuse 60 A\n", ""]),
		],
	},
	{
		code: "voltages-mixed",
		fires: [varied("voltages-mixed", ["25.6 V", "51.2 V"])],
		silent: [
			varied("voltages-mixed", ["25.6 V", "12.8 V"]),
			varied("voltages-mixed", ["  1 ft to plus\n", "  1 ft to other: bus 250 A\n"]),
		],
	},
	{
		code: "charging-reversed",
		fires: [],
		silent: [
			variedSecond("charging-reversed", ["step.out", "step.in"]),
			variedSecond("charging-reversed", ["converter step 20 A 24 V / 12 V", "converter step 20 A 12 V / 24 V"]),
		],
	},
	{
		code: "series-tapped",
		fires: [varied("series-tapped", ["light 6 W 12 V", "load 20 W 12 V"])],
		silent: [
			varied("series-tapped", [
				"feed tap from B2.+, B2.- by pair 12 AWG\n  bolted to F1: fuse 15 A\n  3 ft to l1: light 6 W 12 V\n",
				"",
			]),
			varied("series-tapped", ["feed tap from B2.+, B2.-", "feed tap from B1.+, B2.-"], ["6 W 12 V", "6 W 24 V"]),
		],
	},
	{
		code: "source-unjoined",
		fires: [],
		silent: [variedSecond("source-unjoined", ["battery spare agm 12 V 100 Ah\n", ""])],
	},
	{
		code: "disconnection-missing",
		fires: [varied("disconnection-missing", ["14 ft ", "2 ft "])],
		silent: [varied("disconnection-missing", ["14 ft ", "12 ft to D1: disconnect 40 A\n  2 ft "])],
	},
	{
		code: "systems-unseparated",
		fires: [
			varied("systems-unseparated", ["outlet-12v 60 W", "light 6 W"]),
			varied("systems-unseparated", ["metal", "40 cuin metal"]),
		],
		silent: [varied("systems-unseparated", ["metal", "metal partition"])],
	},
	{
		code: "shunt-bypassed",
		fires: [variedSecond("shunt-bypassed", ["6 AWG black\n  2 ft to minus", "8 AWG black\n  2 ft to minus"])],
		silent: [
			variedSecond("shunt-bypassed", ["feed past from house.- by single 6 AWG black\n  2 ft to minus\n", ""]),
			varied("shunt-bypassed", ["plus, house.-", "plus, minus"]),
		],
	},
	{
		code: "batteries-unequal",
		fires: [],
		silent: [varied("batteries-unequal", ["lithium 12.8 V 100 Ah", "agm 12 V 100 Ah"])],
	},
	{
		code: "isolator-bypassed",
		fires: [
			varied("isolator-bypassed", ["dock.ground by single 8 AWG", "dock.ground by single 6 AWG"]),
			varied("isolator-bypassed", ["4 ft to plate\n", "4 ft to AC.ground\n"]),
		],
		silent: [
			varied("isolator-bypassed", ["bond dock-ground from dock.ground", "bond dock-ground from AC.ground"]),
			varied("isolator-bypassed", ["  2 ft to GI: galvanic-isolator 30 A\n", ""]),
		],
	},
];
