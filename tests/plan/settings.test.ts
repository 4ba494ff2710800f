// What holds for a whole plan, where its things are, which sources are live when, and which deviations are accepted.
import { describe, expect, test } from "vitest";
import { readPlan, supply } from "./read-plan.ts";

describe("settings", () => {
	const settingsOf = (lines: string) => readPlan(`plan "x"\n${lines}`).plan.settings;

	test("a plan that says nothing takes the trade's defaults", () => {
		expect(readPlan("").plan.settings).toEqual({
			region: "us",
			rules: "camper",
			ambient: 30,
			joints: { connector: "lever" },
			splicesAlways: false,
			paper: "",
			notes: [],
		});
	});

	test("every one is taken", () => {
		const { plan, told } = readPlan(`plan "Fern" notation 1
  region iec
  rules boat
  ambient 95 F
  ends ferrule
  joints push-in 5
  splices always
  paper A2
  note "One"
  note "Two"
`);
		expect(told).toEqual([]);
		expect(plan.title).toBe("Fern");
		expect(plan.settings).toEqual({
			region: "iec",
			rules: "boat",
			ambient: 35,
			ends: "ferrule",
			joints: { connector: "push-in", ports: 5 },
			splicesAlways: true,
			paper: "A2",
			notes: ["One", "Two"],
		});
	});

	test.each([
		["  region fr\n", "2:fr setting-wrong"],
		["  rules campr\n", "2:campr setting-wrong"],
		["  ambient 30\n", "2:30 setting-wrong"],
		["  ambient 30 A\n", "2:30 A setting-wrong"],
		["  ambient 900 C\n", "2:900 C setting-wrong"],
		["  ends knotted\n", "2:knotted setting-wrong"],
		["  joints glue\n", "2:glue attribute-unknown"],
		["  splices never\n", "2:never setting-wrong"],
		["  paper A9\n", "2:A9 setting-wrong"],
		["  note here\n", "2:here setting-wrong"],
		["  region us iec\n", "2:iec setting-wrong"],
		["  ambient 20 C 25 C\n", "2:25 C setting-wrong"],
		["  joints lever 3 5\n", "2:5 attribute-twice"],
		["  splices always never\n", "2:never setting-wrong"],
		['  note "One" "Two"\n', '2:"Two" setting-wrong'],
		["  regoin us\n", "2:regoin setting-unknown"],
		["  region us\n  region iec\n", "3:region attribute-twice"],
	])("%j is one finding", (lines, told) => {
		expect(readPlan(`plan "x"\n${lines}`).told).toEqual([told]);
	});

	test("a wrong one leaves the default, a misspelt one offers the nearest", () => {
		expect(settingsOf("  region fr\n").region).toBe("us");
		expect(readPlan('plan "x"\n  regoin us\n').findings[0]?.help).toContain("Did you mean `region`?");
		expect(readPlan('plan "x"\n  rules campr\n').findings[0]?.help).toContain("Did you mean `camper`?");
	});
});

describe("places", () => {
	const placeOf = (line: string) => readPlan(`${line}\n`).plan.places.get("p");

	test("have a label, traits, a basin near, a temperature", () => {
		const place = placeOf('place p "Bath" bath wet damp outdoor engine-space dry basin 2 ft 45 C');
		expect(place?.label).toBe("Bath");
		expect([...(place?.traits ?? [])]).toEqual(["bath", "wet", "damp", "outdoor", "engine-space", "dry"]);
		expect(place?.basin).toBeCloseTo(0.6096, 6);
		expect(place?.temperature).toBe(45);
	});

	test("a basin or sink without a distance is right there", () => {
		expect(placeOf("place p sink")?.basin).toBe(0);
		expect(placeOf("place p")?.basin).toBeUndefined();
	});

	test.each([
		["place p wett", "1:wett place-word-unknown"],
		["place p 3 A", "1:3 A place-word-unknown"],
		["place p basin -1 ft", "1:-1 ft quantity-out-of-range"],
		["place p 300 C", "1:300 C quantity-out-of-range"],
	])("%s is one finding", (line, told) => {
		expect(readPlan(`${line}\n`).told).toEqual([told]);
	});

	test("may be declared behind what is in them", () => {
		const { plan, told } = readPlan("inlet shore 30 A in porch\nplace porch outdoor\n");
		expect(told).toEqual([]);
		expect(plan.thingByName.get("shore")?.place?.name).toBe("porch");
	});
});

describe("modes", () => {
	const sources = `${supply}inverter inv 1000 W\n`;

	test("name the sources that are live", () => {
		const { plan, told } = readPlan(`${sources}mode camp: inv\nmode both: shore, inv\n`);
		expect(told).toEqual([]);
		expect(plan.modes.map(({ name, live }) => [name, live])).toEqual([
			["camp", ["inv"]],
			["both", ["shore", "inv"]],
		]);
	});

	test("`without` takes one away", () => {
		expect(readPlan(`${sources}mode camp: shore, inv without shore\n`).plan.modes[0]?.live).toEqual(["inv"]);
	});

	test.each([
		["mode camp: LC\n", "4:LC mode-source-unknown"],
		["mode camp: nothing\n", "4:nothing mode-source-unknown"],
		["mode camp: inv with LC\n", "4:LC mode-load-unknown"],
		["mode camp: inv with nothing\n", "4:nothing mode-load-unknown"],
		["mode camp: inv\nmode Camp: shore\n", "5:Camp name-twice"],
	])("%j is one finding", (line, told) => {
		expect(readPlan(sources + line).told).toEqual([told]);
	});
});

describe("accepted deviations", () => {
	test("have a rule, a place, a reason", () => {
		const { plan, told } = readPlan(
			`${supply}accept ground-broken at LC because "Bench only"\naccept end-loose because "Later"\n`,
		);
		expect(told).toEqual([]);
		expect(plan.acceptances.map(({ rule, at, reason }) => [rule, at, reason])).toEqual([
			["ground-broken", "LC", "Bench only"],
			["end-loose", undefined, "Later"],
		]);
	});

	test.each([
		["accept ground-broken at LC\n", "reason-missing"],
		['accept ground-broken at LC because ""\n', "reason-empty"],
		['accept ground-broken because "  "\n', "reason-empty"],
	])("%j lacks its reason, and accepts nothing", (line, code) => {
		const { plan, told } = readPlan(supply + line);
		expect(told.map((entry) => entry.split(" ").at(-1))).toEqual([code]);
		expect(plan.acceptances).toEqual([]);
	});
});

describe("statements without meaning yet", () => {
	test("a reading says so once", () => {
		expect(readPlan("reading r1 b1.hot 118 V\n").told).toEqual(["1:reading r1 b1.hot 118 V not-understood-yet"]);
	});
});

test("words behind the title of a plan are not ignored", () => {
	expect(readPlan('plan "x" hello\n').told).toEqual(["1:hello setting-wrong"]);
	expect(readPlan('plan "x" notation 1\n').told).toEqual([]);
});

test.each([
	["place g sink 2 ft basin 9 ft\n", ["1:basin attribute-twice"]],
	["place g 20 C 25 C\n", ["1:25 C attribute-twice"]],
])("%j is told", (text, told) => {
	expect(readPlan(text).told).toEqual(told);
});

test("of two basins the nearer decides", () => {
	expect(readPlan("place g sink 2 ft basin 9 ft\n").plan.places.get("g")?.basin).toBeCloseTo(0.6096, 4);
});
