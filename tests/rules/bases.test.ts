// What every rule rests on says how it is known: read and in the handbook, or else recalled, computed, common practice.
import { expect, test } from "vitest";
import { tables } from "../../src/handbook/index.ts";
import { citation } from "../../src/handbook/provenance.ts";
import { checkPlan } from "../../src/pipeline.ts";
import { rules } from "../../src/rules/index.ts";

const readCitations = tables
	.flatMap((table) => table.printed().map(({ provenance }) => provenance))
	.filter(({ known }) => known === "read")
	.map(citation)
	.toSorted((one, other) => other.length - one.length);

/** The parts of a basis that neither stand in the handbook as read nor say how else they are known. */
function unknownParts(basis: string): string[] {
	const rest = readCitations.reduce((text, read) => text.replaceAll(read, "§"), basis);
	return rest.split(";").filter((part) => {
		if (/recalled|computed|common practice/.test(part)) return false;
		// Beside what was read there may be words, and no number of another clause.
		return part.includes("§") ? /\d/.test(part) : /\S/.test(part);
	});
}

test("a literal that says nothing of how it is known is noticed", () => {
	expect(unknownParts("NFPA 70 999.9")).toHaveLength(1);
	expect(unknownParts("common practice; NFPA 70 999.9 and 551.54")).toHaveLength(1);
	expect(unknownParts("NFPA 70 999.9, recalled; common practice")).toEqual([]);
});

test.each(rules.map((rule) => [rule.code, rule] as const))("%s", (_, rule) => {
	expect(unknownParts(rule.basis)).toEqual([]);
	for (const text of rule.wrong)
		for (const { code, basis, figures } of checkPlan(text, "plan").findings)
			if (code === rule.code) expect([basis, ...figures.map(({ source }) => source)].flatMap(unknownParts)).toEqual([]);
});
