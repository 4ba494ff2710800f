// Every page of the reference, made from what the rooms say of themselves: rules, errors in a text, kinds of things.
import { unitsOf } from "../../base/quantity.ts";
import type { AttributeSpec, Kind } from "../../kinds/kind.ts";
import type { Rule } from "../../rules/rule.ts";
import type { Page } from "./page.ts";

/** What the rooms say of themselves. */
export interface Rooms {
	readonly rules: readonly Rule[];
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
	return [...rooms.rules.map(pageOfRule), ...[...problems.values()].map(pageOfProblem), ...rooms.kinds.map(pageOfKind)];
}

function pageOfRule(rule: Rule): Page {
	return {
		name: rule.code,
		also: [],
		group: "rule",
		level: rule.level,
		summary: rule.what,
		slots: [
			{ word: "if left", text: rule.why },
			{ word: "to do", text: rule.help },
			{ word: "meter", text: rule.meter },
			{ word: "by", text: rule.basis },
			{ word: "applies", text: `regions ${rule.applies.regions.join(", ")}; rules ${rule.applies.rules.join(", ")}` },
		],
		plans: [...numbered("Wrong", rule.wrong), ...numbered("Right", rule.right)],
	};
}

/** `Wrong:` for one plan, `Wrong 1:` and `Wrong 2:` for two. */
function numbered(word: string, texts: readonly string[]): Page["plans"] {
	return texts.map((text, index) => ({ word: texts.length === 1 ? word : `${word} ${index + 1}`, text }));
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
			...kind.attributes.map((attribute) => ({
				word: "takes",
				text: `${tellAttribute(attribute)}: ${attribute.summary}`,
			})),
		],
		plans: [{ word: "Example", text: kind.example }],
	};
}

/** An attribute as it is written, with dots where a figure stands: `surge ... W`. */
function tellAttribute(attribute: AttributeSpec): string {
	switch (attribute.takes) {
		case "quantity": {
			const figure = `... ${unitsOf(attribute.dimension)[0] ?? ""}`;
			return attribute.word === undefined ? figure : `${attribute.word} ${figure}`;
		}
		case "flag":
			return attribute.name;
		case "choice":
			return attribute.words.join(" or ");
		case "phrase":
			return attribute.phrases.join(" or ");
		case "count":
			return `${attribute.word} ...`;
		case "pair": {
			const unit = unitsOf(attribute.dimension)[0] ?? "";
			return `... ${unit} / ... ${unit}`;
		}
	}
}
