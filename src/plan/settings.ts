// The `plan` statement and the places: what holds for the whole plan and where its things are.
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import type { Quantity } from "../base/quantity.ts";
import type { Region, RuleSet, Termination } from "../kinds/kind.ts";
import type { PlaceStatement, PlanStatement, QuantityTerm, Setting, Term } from "../syntax/tree.ts";
import { planFinding } from "./codes.ts";
import { foldName } from "./names.ts";
import type { Place, Settings } from "./plan.ts";

const regions = ["us", "iec"] as const satisfies readonly Region[];
const ruleSets = ["camper", "boat", "building"] as const satisfies readonly RuleSet[];
const terminations = [
	"solid",
	"bare",
	"fork",
	"ring",
	"ferrule",
	"lug",
	"pin",
] as const satisfies readonly Termination[];
const connectors = ["lever", "push-in", "twist-on", "crimp"] as const;
const papers = ["A4", "A3", "A2", "A1", "letter", "tabloid"] as const;
const settingWords = ["region", "rules", "ambient", "ends", "joints", "box", "splices", "paper", "notes", "note"];

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
	const seen = new Set<string>();
	for (const line of statement?.settings ?? []) {
		const key = line.key.text;
		const [first, second] = line.terms;
		if (seen.has(key) && key !== "note" && key !== "notes")
			findings.push(
				planFinding("attribute-twice", { title: `The setting \`${key}\` is said twice`, span: line.key.span }),
			);
		seen.add(key);
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
				if (first?.kind === "quantity" && isLikely(first.quantity)) settings.ambient = first.quantity.value;
				else refuseValue(line, first, ["35 C", "95 F"], findings);
				break;
			case "ends": {
				const ends = pick(terminations);
				if (ends !== undefined) settings.ends = ends;
				break;
			}
			case "joints": {
				const connector = pick(connectors);
				if (connector !== undefined)
					settings.joints = { connector, ...(second?.kind === "number" ? { ports: second.value } : {}) };
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
				findings.push(
					planFinding("not-understood-yet", { title: "The usual box is read, but has no effect yet", span: line.span }),
				);
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

/** Words a place can have, and the traits they stand for. */
const placeWords = ["wet", "damp", "dry", "outdoor", "engine-space", "bath", "basin", "sink"];

/** A place from its statement. `sink 3 ft` and `basin 3 ft` say how far the nearest basin edge is. */
export function readPlace(statement: PlaceStatement, findings: Finding[]): Place {
	const traits = new Set<string>();
	let basin: number | undefined;
	let temperature: number | undefined;
	for (let index = 0; index < statement.terms.length; index++) {
		const term = statement.terms[index];
		const next = statement.terms[index + 1];
		if (term?.kind === "name" && (term.text === "sink" || term.text === "basin")) {
			if (next?.kind === "quantity" && next.quantity.dimension === "length") {
				index++;
				if (isLikely(next.quantity)) basin = next.quantity.value;
				else refuseFigure(next, findings);
			} else basin = 0;
		} else if (term?.kind === "name" && placeWords.includes(term.text)) traits.add(term.text);
		else if (term?.kind === "quantity" && term.quantity.dimension === "temperature") {
			if (isLikely(term.quantity)) temperature = term.quantity.value;
			else refuseFigure(term, findings);
		} else if (term !== undefined) {
			const word = "text" in term ? term.text : "";
			findings.push(
				planFinding("place-word-unknown", {
					title: `\`${word}\` says nothing about a place`,
					span: term.span,
					help: `${didYouMean(word, placeWords)} A place takes: ${placeWords.join(", ")} and a temperature.`.trim(),
				}),
			);
		}
	}
	return {
		name: statement.name.text,
		label: statement.label?.text ?? statement.name.text,
		traits,
		...(basin === undefined ? {} : { basin }),
		...(temperature === undefined ? {} : { temperature }),
		span: statement.span,
	};
}

/** Where people live and wires run it is between -60 and 100 °C; a basin beyond 30 m is no neighbour. */
function isLikely({ dimension, value }: Quantity): boolean {
	if (dimension === "temperature") return value >= -60 && value <= 100;
	return dimension === "length" && value >= 0 && value <= 30;
}

function refuseFigure(term: QuantityTerm, findings: Finding[]): void {
	findings.push(
		planFinding("quantity-out-of-range", {
			title: `${term.text} is no likely figure of a place`,
			span: term.span,
			label: "out of range",
		}),
	);
}

/** Every place by its folded name; a name used twice is a finding. */
export function readPlaces(statements: readonly PlaceStatement[], findings: Finding[]): ReadonlyMap<string, Place> {
	const places = new Map<string, Place>();
	for (const statement of statements) {
		const key = foldName(statement.name.text);
		const first = places.get(key);
		if (first === undefined) places.set(key, readPlace(statement, findings));
		else
			findings.push(
				planFinding("name-twice", {
					title: `The place ${statement.name.text} is declared twice`,
					span: statement.name.span,
					also: [{ span: first.span, label: "first here" }],
				}),
			);
	}
	return places;
}
