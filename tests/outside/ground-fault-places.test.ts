// Against the outside: where ground-fault protection is asked for, place by place, and what devices count.
import { describe, expect, test } from "vitest";
import { findingsOf, nameOf, type Published } from "./published.ts";

interface Place {
	readonly what: string;
	readonly head: string;
	/** The words of the place in which the outlet or light stands. */
	readonly place: string;
	readonly thing: string;
	/** The breaker that puts it right. */
	readonly cure: string;
}

const camper = 'plan "p"\n  rules camper\n';
const house = 'plan "p"\n  rules building\n';
const supply = "inlet shore 30 A 120 V\npanel LC main 30 A from shore by 10-2, 12 ft\n";
const cure = "ground-fault-breaker 15 A";

const places: readonly Published<Place>[] = [
	{
		what: "outside a vehicle",
		place: "outdoor",
		thing: "receptacle weatherproof",
		head: camper,
		source: "NFPA 70 551.41(C)(4)",
		known: "recalled",
	},
	{
		what: "within 6 ft of a sink of a vehicle",
		place: "sink 4 ft",
		thing: "receptacle",
		head: camper,
		source: "NFPA 70 551.41(C)(2)",
		known: "recalled",
	},
	{
		what: "in the bath of a vehicle",
		place: "bath",
		thing: "receptacle",
		head: camper,
		source: "NFPA 70 551.41(C)(3)",
		known: "recalled",
	},
	{
		what: "a light in the shower of a vehicle",
		place: "bath",
		thing: "light 9 W",
		head: camper,
		source: "NFPA 70 551.53(B)",
		known: "read",
	},
	{
		what: "outdoors at a dwelling",
		place: "outdoor",
		thing: "receptacle weatherproof",
		head: house,
		source: "NFPA 70 210.8(A)(3)",
		known: "recalled",
	},
	{
		what: "within 6 ft of a sink of a dwelling",
		place: "sink 6 ft",
		thing: "receptacle",
		head: house,
		source: "NFPA 70 210.8(A)(7)",
		known: "recalled",
	},
	{
		what: "by a bath or shower of a dwelling",
		place: "bath",
		thing: "receptacle",
		head: house,
		source: "NFPA 70 210.8(A)(9)",
		known: "recalled",
	},
	{
		what: "in a damp place of a dwelling",
		place: "damp",
		thing: "receptacle",
		head: house,
		source: "NFPA 70 210.8(A)(11)",
		known: "recalled",
	},
	{
		what: "in a wet place of a dwelling",
		place: "wet",
		thing: "receptacle weatherproof",
		head: house,
		source: "NFPA 70 210.8(A)(11)",
		known: "recalled",
	},
].map((row): Published<Place> => ({ ...row, cure, known: row.known === "read" ? "read" : "recalled" }));

const text = ({ head, place, thing }: Place, breaker: string) =>
	`${head}place here ${place}\n${supply}circuit one from LC ${breaker} by 14-2\n  9 ft to d1: ${thing} in here\n`;

describe("North America", () => {
	test.each(places.map((row) => [nameOf(row, row.what), row] as const))("%s", (_, row) => {
		const found = findingsOf(text(row, "breaker 15 A"), "ground-fault-missing");
		expect(found.map(({ marks }) => marks.includes("d1"))).toEqual([true]);
		if (row.known === "recalled") expect(`${found[0]?.why} ${found[0]?.basis}`).toContain("recalled");
		expect(findingsOf(text(row, row.cure), "ground-fault-missing")).toEqual([]);
	});

	test(nameOf({ source: "NFPA 70 551.41(C) and 210.8(A)", known: "recalled" }, "a dry place asks for none"), () => {
		for (const head of [camper, house])
			expect(
				findingsOf(
					text({ what: "", head, place: "dry", thing: "receptacle", cure }, "breaker 15 A"),
					"ground-fault-missing",
				),
			).toEqual([]);
	});

	test(nameOf({ source: "UL 943", known: "read" }, "a 30 mA device is not class A, and protects no person"), () => {
		const [porch] = places;
		if (porch === undefined) throw new Error("no place");
		expect(findingsOf(text(porch, "ground-fault-breaker 15 A trip 30 mA"), "ground-fault-missing").length).toBe(1);
		expect(findingsOf(text(porch, "ground-fault-breaker 15 A trip 6 mA"), "ground-fault-missing")).toEqual([]);
	});
});

describe("IEC countries", () => {
	const caravan = (main: string, rules = "camper") => `plan "p"
  region iec
  rules ${rules}
inlet shore 16 A 230 V
panel DB main ${main} from shore by 3G2.5, 4 m
circuit a from DB breaker 10 A two-pole by 3G1.5
  3 m to a1: socket
`;

	test(nameOf({ source: "IEC 60364-7-721, in a UK guide", known: "read" }, "30 mA ahead of all of a caravan"), () => {
		expect(findingsOf(caravan("16 A two-pole"), "ground-fault-missing").length).toBe(1);
		expect(findingsOf(caravan("16 A rcbo 30 mA"), "ground-fault-missing")).toEqual([]);
		expect(findingsOf(caravan("16 A rcbo 31 mA"), "ground-fault-missing").length).toBe(1);
	});

	test(
		nameOf({ source: "IEC 61008-1, BS 7671 415.1.1", known: "read" }, "a selective device protects no person"),
		() => {
			expect(findingsOf(caravan("16 A rcbo 30 mA selective"), "ground-fault-missing").length).toBe(1);
		},
	);

	test(nameOf({ source: "IEC 60364-4-41 411.3.3", known: "recalled" }, "sockets of a building, 30 mA"), () => {
		expect(findingsOf(caravan("16 A two-pole", "building"), "ground-fault-missing").length).toBe(1);
		expect(findingsOf(caravan("16 A rcbo 30 mA", "building"), "ground-fault-missing")).toEqual([]);
	});

	test(
		nameOf(
			{ source: "IEC 60364-7-721, in a UK guide", known: "read" },
			"double-pole: breakers of a caravan open the neutral as well",
		),
		() => {
			const single = caravan("16 A rcbo 30 mA").replace("breaker 10 A two-pole", "breaker 10 A single-pole");
			expect(findingsOf(single, "one-pole-opened", true).length).toBe(1);
			expect(findingsOf(caravan("16 A rcbo 30 mA"), "one-pole-opened", true)).toEqual([]);
		},
	);
});
