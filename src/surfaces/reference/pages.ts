// Every page of the reference, made from what the rooms say of themselves: rules, errors in a text, kinds of things.
import { findUnit, formatNumber, unitsOf } from "../../base/quantity.ts";
import type { AttributeSpec, Kind } from "../../kinds/kind.ts";
import { tellMeterTest } from "../../rules/meter-test.ts";
import type { Rule } from "../../rules/rule.ts";
import { hasSlot, isUsual, nameInLists, tellAnatomy } from "./anatomy.ts";
import type { Page } from "./page.ts";

/** What the rooms say of themselves. */
export interface Rooms {
	readonly ruleGroups: readonly { readonly name: string; readonly rules: readonly Rule[] }[];
	/** Entries on errors in a text; where two have one code the first is taken. */
	readonly problems: readonly Problem[];
	readonly kinds: readonly Kind[];
}

/** An entry on an error in a text, from whichever room finds it. */
export interface Problem {
	readonly code: string;
	readonly level?: Page["level"];
	readonly meaning: string;
	readonly why: string;
	readonly help: string;
}

/** All pages: rules, then errors in a text, then kinds, each in the order of its list. */
export function makePages(rooms: Rooms): readonly Page[] {
	const problems = new Map<string, Problem>();
	for (const problem of rooms.problems) if (!problems.has(problem.code)) problems.set(problem.code, problem);
	return [
		...rooms.ruleGroups.flatMap(({ name, rules }) => rules.map((rule) => pageOfRule(rule, name))),
		...[...problems.values()].map(pageOfProblem),
		...rooms.kinds.map(pageOfKind),
	];
}

function pageOfRule(rule: Rule, group: string): Page {
	const { applies, meter, basis } = rule;
	return {
		name: rule.code,
		also: [],
		group: "rule",
		rule: { group, clause: basis, applies, meter },
		level: rule.level,
		summary: rule.what,
		slots: [
			{ word: "if left", text: rule.why },
			{ word: "to do", text: rule.help },
			...meter.map((test, index) => ({ word: index === 0 ? "meter" : "", text: tellMeterTest(test) })),
			{ word: "clause", text: basis },
			...applies.regions.map((region, index) => ({
				word: index === 0 ? "applies" : "",
				text: `in region ${region}: ${applies.rules.join(", ")}`,
			})),
			...(applies.differs === undefined ? [] : [{ word: "", text: applies.differs }]),
		],
		plans: [...numbered("wrong", "Wrong", rule.wrong), ...numbered("right", "Right", rule.right)],
	};
}

/** `Wrong:` for one plan, `Wrong 1:` and `Wrong 2:` for two. */
function numbered(sort: "wrong" | "right", word: string, texts: readonly string[]): Page["plans"] {
	return texts.map((text, index) => ({ sort, word: texts.length === 1 ? word : `${word} ${index + 1}`, text }));
}

function pageOfProblem(problem: Problem): Page {
	return {
		name: problem.code,
		also: [],
		group: "text",
		...(problem.level === undefined ? {} : { level: problem.level }),
		summary: problem.meaning,
		slots: [
			{ word: "if left", text: problem.why },
			{ word: "to do", text: problem.help },
		],
		plans: [],
	};
}

function pageOfKind(kind: Kind): Page {
	const also = kind.also ?? [];
	return {
		name: kind.name,
		also,
		group: "kind",
		summary: kind.summary,
		slots: [
			...(also.length === 0 ? [] : [{ word: "also", text: also.join(", ") }]),
			{ word: "stands", text: kind.stands.map((place) => tellPlace(kind, place)).join("; ") },
			...kind.attributes.map((attribute, index) => ({
				word: index === 0 ? "takes" : "",
				text: `${tellAttribute(kind, attribute)}: ${attribute.summary}${attribute.kept === true ? "; kept, and counted by no check" : ""}`,
			})),
			...(kind.stands.includes("hop") ? [{ word: "anything", text: shared }] : []),
			...tellAnatomy(kind),
			{ word: "on lists", text: nameInLists(kind) },
		],
		plans: [{ sort: "example", word: "Example", text: kind.example }],
	};
}

/** Where a kind may stand, by the line that puts it there. */
const places = {
	top: "at the left edge, `KIND NAME`",
	hop: "on a hop, `14 ft to NAME: KIND`",
	box: "indented below a box, `NAME: KIND`",
	panel: "indented below a panel, `NAME: KIND`",
} as const;

function tellPlace(kind: Kind, place: Kind["stands"][number]): string {
	const line = places[place].replace("KIND", kind.name);
	return hasSlot(kind) ? line.replace("NAME", "slot 1") : line;
}

const shared =
	"takes a label in double quotes, `in PLACE`, for the box around it `box 18 cuin`, `metal`, `gangs ...`, `clamps inside` or `outside`, `cover ...`, `partition`, and for its terminals `terminals ...`; a row of names says `each` or `together` behind its figure";

/** An attribute as it is written, with dots where a figure stands, its units and its limits: `surge ... W`. */
export function tellAttribute(kind: Kind, attribute: AttributeSpec): string {
	switch (attribute.takes) {
		case "quantity": {
			const [unit = "", ...others] = unitsOf(attribute.dimension);
			const figure = `${attribute.word === undefined ? "" : `${attribute.word} `}... ${unit}`;
			const remarks = [
				...(others.length === 0 ? [] : [`or ${others.join(", ")}`]),
				...tellLimits(attribute.least, attribute.most, unit),
				...(attribute.required === true ? ["must be said"] : []),
			];
			return remarks.length === 0 ? figure : `${figure} (${remarks.join("; ")})`;
		}
		case "flag":
			return attribute.name;
		case "choice":
			return attribute.words
				.map((word) => (isUsual(kind, attribute, word) ? `${word} (if not said)` : word))
				.join(" or ");
		case "phrase":
			return attribute.phrases.join(" or ");
		case "count":
			return `${attribute.word} ... (${attribute.least} to ${attribute.most}${attribute.bare === true ? `; \`${attribute.word}\` may be left out` : ""})`;
		case "name":
			return `${attribute.word} NAME`;
		case "gauge":
			return `${attribute.word} ... AWG or ... mm2`;
		case "pair": {
			const unit = unitsOf(attribute.dimension)[0] ?? "";
			const [limits] = tellLimits(attribute.least, attribute.most, unit);
			return `... ${unit} / ... ${unit}${limits === undefined ? "" : ` (each ${limits})`}`;
		}
	}
}

function tellLimits(least: number | undefined, most: number | undefined, unit: string): string[] {
	const tell = (value: number | undefined) =>
		value === undefined ? undefined : `${formatNumber(value / (findUnit(unit)?.factor ?? 1))} ${unit}`;
	const low = tell(least);
	const high = tell(most);
	if (low !== undefined && high !== undefined) return [`${low} to ${high}`];
	if (low !== undefined) return [`${low} at least`];
	return high === undefined ? [] : [`${high} at most`];
}
