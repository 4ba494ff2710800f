// In which source modes a finding holds: named where it is not all of them.
import { describe, expect, test } from "vitest";
import { checkPlan } from "../../src/pipeline.ts";

const charger = (bonding: string, more = "") => `inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A${bonding}
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A${more} from inv.out by 10-2, 6 ft
circuit bunks from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`;
const bonding = ", bonds neutral when inverting";

function modesOf(text: string, code: string): readonly (readonly string[])[] {
	return checkPlan(text, "plan")
		.findings.filter((finding) => finding.code === code)
		.map((finding) => finding.modes);
}

describe("modes of an inverter-charger behind a shore inlet", () => {
	test("there are two, and the right plan is right in both", () => {
		const { analysis, findings } = checkPlan(charger(bonding), "plan");
		expect(analysis.states.map((state) => state.mode.name)).toEqual(["shore", "inv"]);
		expect(findings.filter((finding) => finding.level !== "note")).toEqual([]);
	});

	test.each([
		["no bond while it makes its own power", "bond-missing", charger(""), [["inv"]]],
		["two bonds while it passes shore through", "bond-doubled", charger(", bonds neutral to frame"), [["shore"]]],
		["two bonds in both, one of them the panel's", "bond-doubled", charger(bonding, " bonded"), [[]]],
		[
			"an input the wrong way round",
			"polarity-reversed",
			`${charger(bonding)}at inv\n  supply-1.black on inv.in.neutral\n  supply-1.white on inv.in.hot\n`,
			[["shore"]],
		],
		[
			"an output the wrong way round",
			"polarity-reversed",
			`${charger(bonding)}at inv\n  LC-1.black on inv.out.neutral\n  LC-1.white on inv.out.hot\n`,
			[[]],
		],
		["an input without its ground", "ground-broken", `${charger(bonding)}at inv\n  supply-1.bare loose\n`, [["shore"]]],
		[
			"an outlet the wrong way round",
			"polarity-reversed",
			`${charger(bonding)}at b1\n  bunks-1.black on b1.neutral\n  bunks-1.white on b1.hot\n`,
			[[]],
		],
	] as const)("%s", (_, code, text, modes) => {
		expect(modesOf(text, code)).toEqual(modes);
	});

	test("an input the wrong way round is passed through the wrong way round", () => {
		const text = `${charger(bonding)}at inv\n  supply-1.black on inv.in.neutral\n  supply-1.white on inv.in.hot\n`;
		const [finding] = checkPlan(text, "plan").findings;
		expect(finding?.title).toContain("Hot and neutral are exchanged at b1");
	});
});

describe("modes that the builder names", () => {
	test("are the ones that count", () => {
		expect(modesOf(`${charger("")}mode camp: shore, inv\n`, "bond-missing")).toEqual([]);
		expect(modesOf(`${charger("")}mode camp: shore, inv\nmode wild: inv\n`, "bond-missing")).toEqual([["wild"]]);
	});
});
