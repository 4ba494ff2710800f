// Colour words, letter codes and roles; terminals and the ends that suit them.
import { describe, expect, test } from "vitest";
import { type ColourRole, colourSuits, coloursOf } from "../../src/handbook/colour-roles.ts";
import { colourCode, colourNames, colourParts, colourWords, findColour } from "../../src/handbook/colours.ts";
import type { Region, RuleSet } from "../../src/handbook/scope.ts";
import { conductorsPerTerminal, screwRole, terminationFit } from "../../src/handbook/terminals.ts";

describe("words and codes", () => {
	test("IEC 60757, read: the two-letter codes, and GNYE", () => {
		const codes = ["black", "brown", "red", "orange", "yellow", "green", "blue", "violet", "grey", "white", "pink"];
		expect(codes.map((name) => colourCode(name)).join(" ")).toBe("BK BN RD OG YE GN BU VT GY WH PK");
		expect(colourCode("turquoise")).toBe("TQ");
		expect(colourCode("green-yellow")).toBe("GNYE");
	});
	test("bare copper has a mark of our own", () => {
		expect(colourCode("bare")).toBe("CU");
		expect(colourNames.rows.find(({ name }) => name === "bare")?.provenance.known).toBe("common practice");
	});
	test("spellings are read as their colour, whatever their case", () => {
		expect(findColour("gray")).toBe("grey");
		expect(findColour("Purple")).toBe("violet");
		expect(findColour("light-blue")).toBe("blue");
		expect(findColour("yellow-green")).toBe("green-yellow");
		expect(findColour("copper")).toBe("bare");
	});
	test("every word offered is read, and has a code", () => {
		for (const word of colourWords) expect(colourCode(word), word).toMatch(/^[A-Z]{2,4}$/);
	});
	test("codes differ", () => {
		const codes = colourNames.rows.map(({ code }) => code);
		expect(new Set(codes).size).toBe(codes.length);
	});
	test("IEC 60757, read: two colours are joined in the order of the table, red and blue as RDBU", () => {
		expect(colourCode("red-blue")).toBe("RDBU");
		expect(colourCode("blue-red")).toBe("RDBU");
		expect(colourCode("yellow-red")).toBe("RDYE");
	});
	test("a stripe keeps its place", () => {
		expect(findColour("yellow-red")).toBe("yellow-red");
		expect(colourParts("yellow-red")).toEqual({ base: "yellow", stripe: "red" });
		expect(colourParts("green-yellow")).toEqual({ base: "green", stripe: "yellow" });
		expect(colourParts("black")).toEqual({ base: "black" });
		expect(colourParts("bare")).toEqual({ base: "bare" });
		expect(findColour("light-blue-red")).toBe("blue-red");
	});
	test("other words are no colour", () => {
		for (const word of ["", "-", "blak", "red-", "-red", "red-red", "bare-red", "red-bare", "constructor", "__proto__"])
			expect(findColour(word), word).toBeUndefined();
		expect(colourCode("blak")).toBeUndefined();
	});
});

describe("roles", () => {
	const roles: readonly ColourRole[] = ["hot", "hot2", "neutral", "ground", "positive", "negative"];
	const regions: readonly Region[] = ["us", "iec"];
	const ruleSets: readonly RuleSet[] = ["camper", "boat", "building"];
	const suits = (region: Region, role: ColourRole, word: string, rules: RuleSet = "camper") => {
		const colours = coloursOf(region, role, rules);
		const colour = findColour(word);
		return colour !== undefined && colourSuits(colours, colour);
	};

	test("every role has colours everywhere, and the usual ones are allowed", () => {
		for (const region of regions)
			for (const rules of ruleSets)
				for (const role of roles) {
					const colours = coloursOf(region, role, rules);
					expect(colours.usual.length, `${region} ${rules} ${role}`).toBeGreaterThan(0);
					for (const colour of colours.usual) expect(colours.allowed).toContain(colour);
				}
	});
	test("no colour is a hot's and a neutral's or a ground's, save blue on boats", () => {
		for (const region of regions)
			for (const rules of ruleSets)
				for (const other of ["neutral", "ground"] as const) {
					const both = coloursOf(region, "hot", rules).allowed.filter((one) =>
						coloursOf(region, other, rules).allowed.includes(one),
					);
					expect(both).toEqual(region === "us" && rules === "boat" && other === "neutral" ? ["blue"] : []);
				}
	});
	test("NFPA 70 200.6 and 250.119, read: black hot, red second, white neutral, green or bare ground", () => {
		expect(coloursOf("us", "hot").usual[0]).toBe("black");
		expect(coloursOf("us", "hot2").usual[0]).toBe("red");
		expect(coloursOf("us", "neutral").usual[0]).toBe("white");
		expect(coloursOf("us", "ground").usual).toEqual(["bare", "green", "green-yellow"]);
	});
	test("white, grey or green as a hot, black as a neutral, red as a ground mislead", () => {
		for (const [role, word] of [
			["hot", "white"],
			["hot", "grey"],
			["hot", "green"],
			["hot", "bare"],
			["neutral", "black"],
			["ground", "red"],
			["ground", "yellow"],
		] as const)
			expect(suits("us", role, word), `${word} as ${role}`).toBe(false);
	});
	test("stripes: white on any base but green is a neutral; two hot colours are a hot; green with yellow never", () => {
		expect(suits("us", "neutral", "black-white")).toBe(true);
		expect(suits("us", "neutral", "green-white")).toBe(false);
		expect(suits("us", "hot", "black-white")).toBe(false);
		expect(suits("us", "hot", "black-red")).toBe(true);
		expect(suits("us", "hot", "green-yellow")).toBe(false);
	});
	test("IEC 60445, read: brown, black and grey lines, blue neutral, green-yellow protective conductor", () => {
		expect(coloursOf("iec", "hot").usual).toEqual(["brown", "black", "grey"]);
		expect(coloursOf("iec", "neutral").usual).toEqual(["blue"]);
		expect(coloursOf("iec", "ground").usual).toEqual(["green-yellow"]);
		for (const word of ["blue", "green", "yellow", "green-yellow"]) expect(suits("iec", "hot", word), word).toBe(false);
		expect(suits("iec", "neutral", "black")).toBe(false);
	});
	test("ABYC E-11, read: on boats negative is yellow or black, starting is yellow with red", () => {
		expect(coloursOf("us", "negative", "boat").usual).toEqual(["yellow", "black"]);
		expect(suits("us", "positive", "yellow-red", "boat")).toBe(true);
		expect(suits("us", "positive", "yellow", "boat")).toBe(false);
		expect(suits("us", "negative", "red", "boat")).toBe(false);
	});
	test("common practice: a camper's positive is red, its negative black or yellow", () => {
		expect(coloursOf("us", "positive").usual).toEqual(["red"]);
		expect(coloursOf("us", "negative")).toMatchObject({
			usual: ["black", "yellow"],
			provenance: { known: "common practice" },
		});
	});
});

describe("terminals", () => {
	test("wiring pages, read: brass is hot, silver neutral, green ground; common practice: dark is a three-way's common", () => {
		expect(screwRole("brass")).toMatchObject({ role: "hot", provenance: { known: "read" } });
		expect(screwRole("silver")).toMatchObject({ role: "neutral", provenance: { known: "read" } });
		expect(screwRole("green")).toMatchObject({ role: "ground", provenance: { known: "read" } });
		expect(screwRole("dark")).toMatchObject({ role: "common", provenance: { known: "common practice" } });
	});
	test("common practice: bare strands are unsuited under a plain screw or on a stud and well under a plate", () => {
		expect(terminationFit("screw", "bare")).toBe("unsuited");
		expect(terminationFit("stud", "bare")).toBe("unsuited");
		expect(terminationFit("plate", "bare")).toBe("well");
		expect(terminationFit("cage", "bare")).toBe("acceptable");
		expect(terminationFit("port", "bare")).toBe("acceptable");
	});
	test("common practice: fork and ring suit a screw, ring and lug a stud, a ferrule a cage", () => {
		for (const end of ["fork", "ring", "solid"] as const) expect(terminationFit("screw", end)).toBe("well");
		for (const end of ["ring", "lug"] as const) expect(terminationFit("stud", end)).toBe("well");
		expect(terminationFit("stud", "fork")).toBe("unsuited");
		expect(terminationFit("cage", "ferrule")).toBe("well");
		expect(terminationFit("stab", "solid")).toBe("unsuited");
	});
	test("one conductor under a screw (read), four on a stud (recalled)", () => {
		expect(conductorsPerTerminal("screw", "device")).toMatchObject({ most: 1, provenance: { known: "read" } });
		expect(conductorsPerTerminal("cage", "neutral bar")?.most).toBe(1);
		expect(conductorsPerTerminal("stud", "post")).toMatchObject({ most: 4, provenance: { known: "recalled" } });
		expect(conductorsPerTerminal("stab", "breaker")).toBeUndefined();
	});
});
