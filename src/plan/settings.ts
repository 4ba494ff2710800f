// The `plan` statement: what holds for the whole plan.
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import type { Quantity } from "../base/quantity.ts";
import type { Region, RuleSet } from "../kinds/kind.ts";
import type { PlanStatement, Setting, Term } from "../syntax/tree.ts";
import { planFinding } from "./codes.ts";
import { readJointMake } from "./joint-make.ts";
import { isLikely } from "./places.ts";
import type { Settings, UsualBox } from "./plan.ts";
import { isLikelyVolume } from "./shared-words.ts";
import { connectors, terminations } from "./wiring-words.ts";

const regions = ["us", "iec"] as const satisfies readonly Region[];
const ruleSets = ["camper", "boat", "building"] as const satisfies readonly RuleSet[];
const papers = ["A4", "A3", "A2", "A1", "letter", "tabloid"] as const;
/** The words of the lines below `plan`. */
export const settingWords = [
	"region",
	"rules",
	"ambient",
	"ends",
	"joints",
	"box",
	"splices",
	"paper",
	"notes",
	"note",
];

/** The settings of a plan: what is said, else the trade's defaults: region us, rules camper, 30 °C, lever connectors, paper to fit. */
export function readSettings(statement: PlanStatement | undefined, findings: Finding[]): Settings {
	const settings: { -readonly [Key in keyof Settings]: Settings[Key] } = {
		region: "us",
		rules: "camper",
		ambient: 30,
		joints: { connector: "lever" },
		splicesAlways: false,
		paper: "",
		notes: [],
	};
	const [leftOver] = statement?.terms ?? [];
	if (leftOver !== undefined && !isVersion(statement?.terms ?? []))
		findings.push(
			planFinding("setting-wrong", {
				title: "A `plan` line takes a title, and `notation 1`",
				span: leftOver.span,
				label: "left over",
				help: "Settings stand on lines of their own below it.",
			}),
		);
	const seen = new Set<string>();
	for (const line of statement?.settings ?? []) {
		const key = line.key.text;
		const [first] = line.terms;
		if (seen.has(key) && key !== "note" && key !== "notes")
			findings.push(
				planFinding("attribute-twice", { title: `The setting \`${key}\` is said twice`, span: line.key.span }),
			);
		seen.add(key);
		const extra = line.terms[1];
		if (extra !== undefined && key !== "box" && key !== "joints" && settingWords.includes(key))
			findings.push(
				planFinding("setting-wrong", {
					title: `\`${key}\` takes no more behind its value`,
					span: extra.span,
					label: "left over",
					help: "Take it out, or put it on a line of its own.",
				}),
			);
		const pick = <Word extends string>(words: readonly Word[]): Word | undefined => {
			const word = words.find((candidate) => first?.kind === "name" && candidate === first.text);
			if (word === undefined) refuseValue(line, first, words, findings);
			return word;
		};
		switch (key) {
			case "region":
				settings.region = pick(regions) ?? settings.region;
				break;
			case "rules":
				settings.rules = pick(ruleSets) ?? settings.rules;
				break;
			case "ambient":
				if (first?.kind === "quantity" && first.quantity.dimension === "temperature" && isLikely(first.quantity)) {
					settings.ambient = first.quantity.value;
				} else refuseValue(line, first, ["35 C", "95 F"], findings);
				break;
			case "ends": {
				const ends = pick(terminations);
				if (ends !== undefined) settings.ends = ends;
				break;
			}
			case "joints": {
				if (first === undefined) pick(connectors);
				settings.joints = readJointMake(line.terms, findings) ?? settings.joints;
				break;
			}
			case "splices":
				if (first?.kind === "name" && first.text === "always") settings.splicesAlways = true;
				else refuseValue(line, first, ["always"], findings);
				break;
			case "paper":
				settings.paper = pick(papers) ?? settings.paper;
				break;
			case "notes":
			case "note":
				if (first?.kind === "text") settings.notes = [...settings.notes, first.text];
				else refuseValue(line, first, ['"a sentence in quotes"'], findings);
				break;
			case "box":
				settings.box = readUsualBox(line, findings);
				break;
			default:
				findings.push(
					planFinding("setting-unknown", {
						title: `\`${key}\` is no setting of a plan`,
						span: line.key.span,
						help: `${didYouMean(key, settingWords)} Settings are: ${settingWords.join(", ")}.`.trim(),
					}),
				);
		}
	}
	return settings;
}

/** `box 18 cuin metal`. */
function readUsualBox(line: Setting, findings: Finding[]): UsualBox {
	let volume: Quantity | undefined;
	let material: string | undefined;
	for (const term of line.terms)
		if (term.kind === "quantity" && volume === undefined && isLikelyVolume(term.quantity)) volume = term.quantity;
		else if (term.kind === "name" && material === undefined && (term.text === "metal" || term.text === "plastic"))
			material = term.text;
		else refuseValue(line, term, ["18 cuin", "metal", "plastic"], findings);
	if (line.terms.length === 0) refuseValue(line, undefined, ["18 cuin", "metal", "plastic"], findings);
	return { metal: material === "metal", ...(volume === undefined ? {} : { volume }) };
}

function refuseValue(line: Setting, found: Term | undefined, fitting: readonly string[], findings: Finding[]): void {
	const word = found?.kind === "name" ? found.text : "";
	findings.push(
		planFinding("setting-wrong", {
			title: `\`${line.key.text}\` needs one of: ${fitting.join(", ")}`,
			span: found?.span ?? line.key.span,
			...(word === "" ? {} : { help: didYouMean(word, fitting) || `Write one of: ${fitting.join(", ")}.` }),
		}),
	);
}

/** `notation 1`: the version the plan is written in. */
function isVersion([word, number, ...others]: readonly Term[]): boolean {
	return (
		word?.kind === "name" &&
		word.text === "notation" &&
		number?.kind === "number" &&
		number.value === 1 &&
		others.length === 0
	);
}
