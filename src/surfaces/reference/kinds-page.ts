// All kinds as one Markdown page, `grammar/kinds.md`: what each takes with an example of every attribute, its terminals, a plan.
import { type Dimension, findUnit, formatNumber, unitsOf } from "../../base/quantity.ts";
import type { AttributeSpec, Kind } from "../../kinds/kind.ts";
import { withoutMarks } from "./marks.ts";
import type { Page } from "./page.ts";
import { tellAttribute } from "./pages.ts";

/** The page of these kinds; `pages` has what is said of each beside its attributes. */
export function writeKindsPage(kinds: readonly Kind[], pages: readonly Page[]): string {
	return [head, ...kinds.map((kind) => writeKind(kind, pages))].join("\n");
}

const head = `# The kinds of things

Every kind, made from what the kinds say of themselves; \`ferrule explain KIND\` prints the same. The notation is on [its own page](reference.md), the
rules are on [theirs](rules.md).

Any thing takes a label in double quotes, \`in PLACE\`, \`roughed in\`; in a box of its own \`box 18 cuin\`, \`metal\` or \`plastic\`, \`gangs 2\`,
\`clamps inside\`, \`cover blank\`, \`partition\`; and \`terminals plate\` for what holds its wires, \`terminals 75 C\` for what they are marked for. What
is _kept_ goes to the lists, and no check counts it: a note says so.
`;

function writeKind(kind: Kind, pages: readonly Page[]): string {
	const page = pages.find(({ group, name }) => group === "kind" && name === kind.name);
	const rows = kind.attributes.map(
		(attribute) =>
			`| ${cell(tellAttribute(kind, attribute))} | ${cell(attribute.summary)}${attribute.kept === true ? "; _kept_" : ""} | \`${exampleOf(attribute)}\` |`,
	);
	const says: string[] = [];
	let isLeftOut = false;
	for (const { word, text } of page?.slots ?? []) {
		// A word left out goes on with the one before.
		isLeftOut = word === "" ? isLeftOut : leftOut.has(word);
		if (isLeftOut) continue;
		if (word === "") says.push(`${says.pop() ?? ""}\\\n  ${withoutMarks(text)}`);
		else says.push(`- **${word}:** ${withoutMarks(text)}`);
	}
	return [
		`## ${kind.name}\n`,
		`${withoutMarks(kind.summary)}\n`,
		...(rows.length === 0 ? [] : ["| takes | says | such as |", "| --- | --- | --- |", ...rows, ""]),
		...says,
		"",
		`\`\`\`ferrule\n${kind.example.trimEnd()}\n\`\`\`\n`,
	].join("\n");
}

/** What the table and the head of the page tell. */
const leftOut: ReadonlySet<string> = new Set(["takes", "anything"]);

function cell(text: string): string {
	return withoutMarks(text).replaceAll("|", "\\|");
}

/** An attribute as it may be written: `surge 15 A`. */
export function exampleOf(attribute: AttributeSpec): string {
	switch (attribute.takes) {
		case "quantity": {
			const { word, dimension, least = 1, most = least * 10 } = attribute;
			const middle = least > 0 ? Math.sqrt(least * most) : (least + most) / 2;
			const likely = usual[dimension]?.find((figure) => figure >= least && figure <= most);
			const value = likely ?? Number(middle.toPrecision(1));
			const symbols = unitsOf(dimension).toSorted((one, other) => inUnit(1, one) - inUnit(1, other));
			const unit = symbols.find((symbol) => Math.abs(inUnit(value, symbol)) >= 1) ?? symbols.at(-1) ?? "";
			return `${word === undefined ? "" : `${word} `}${formatNumber(inUnit(value, unit), 3)} ${unit}`;
		}
		case "flag":
			return attribute.summary.startsWith(`\`no ${attribute.name}\``) ? `no ${attribute.name}` : attribute.name;
		case "choice":
			return attribute.words[0] ?? "";
		case "phrase":
			return attribute.phrases[0] ?? "";
		case "count":
			return `${attribute.word} ${Math.max(attribute.least, 2)}`;
		case "name":
			return `${attribute.word} LC.3`;
		case "gauge":
			return `${attribute.word} ${attribute.word === "smallest" ? "14 AWG" : "2/0"}`;
		case "pair":
			return /`([^`]+ \/ [^`]+)`/.exec(attribute.summary)?.[1] ?? "120 V / 240 V";
	}
}

/** Figures that a builder meets, in base units; the first that fits is shown. */
const usual: Partial<Record<Dimension, readonly number[]>> = {
	current: [30, 15, 0.03, 100, 5, 1, 300, 5000],
	voltage: [12, 120, 24, 0.05],
	power: [60, 1000, 2000],
	"apparent-power": [100],
	charge: [100],
	resistance: [0.002],
	share: [0.8],
	temperature: [-15],
	time: [4 * 3600, 0.04],
	length: [0.4572],
};

function inUnit(value: number, symbol: string): number {
	return Number((value / (findUnit(symbol)?.factor ?? 1)).toPrecision(6));
}
