// Reads the trade's words for a cable into its conductors: how many, how thick, which colours, what each is for.
import type { Finding } from "../base/finding.ts";
import { awg, formatGauge, type Gauge, squareMillimetres } from "../base/gauge.ts";
import { didYouMean } from "../base/nearest.ts";
import { joinSpans, type Span } from "../base/span.ts";
import type { Region, Role, System } from "../kinds/kind.ts";
import { spellTerm } from "../syntax/spelling.ts";
import type { Term } from "../syntax/tree.ts";
import { planFinding } from "./codes.ts";
import { foldName } from "./names.ts";
import type { CableMake, Core } from "./plan.ts";

/** A colour and what a core of that colour is for. */
type ColouredRole = readonly [colour: string, role: Role];

/** House trade: insulated conductors by count, hot first (common practice; NEC 200.6 for white). A ground comes on top. */
const houseCores: readonly (readonly ColouredRole[])[] = [
	[],
	[["black", "hot"]],
	[
		["black", "hot"],
		["white", "neutral"],
	],
	[
		["black", "hot"],
		["red", "hot2"],
		["white", "neutral"],
	],
	[
		["black", "hot"],
		["red", "hot2"],
		["blue", "hot3"],
		["white", "neutral"],
	],
];
/** Metric cable with a protective conductor, by total count (HD 308 as recalled): brown and blue, brown black grey, all five. */
const metricCores: readonly (readonly ColouredRole[])[] = [
	[],
	[],
	[["brown", "hot"]],
	[
		["brown", "hot"],
		["blue", "neutral"],
	],
	[
		["brown", "hot"],
		["black", "hot2"],
		["blue", "neutral"],
	],
	[
		["brown", "hot"],
		["black", "hot2"],
		["grey", "hot3"],
		["blue", "neutral"],
	],
];

const makeWords = [
	...["single", "pair", "duplex", "triplex", "cord", "stranded", "solid", "copper", "aluminium"],
	// What is around the conductors: printed with the make-up, and of no consequence to where they land.
	...["sheathed", "metal-clad"],
] as const;

/** Insulation temperatures a conductor is used at unless said: house cable 60 °C (NEC 334.80), boat cable 105 °C (33 CFR 183), PVC 70 °C (IEC). */
const usedAt = { house: 60, boat: 105, metric: 70, cord: 60, single: 75 } as const;

/** What words for a cable are read by: whose colours hold, and the cables that the plan describes, by folded names. */
export interface CableWords {
	readonly region: Region;
	/** Undefined stands for one that is described and could not be understood. */
	readonly own: ReadonlyMap<string, CableMake | undefined>;
}

/** The cable that `terms` stand for; undefined, with a finding, when they do not make sense. `at` is where to point when there are none. */
export function readCableMake(
	terms: readonly Term[],
	at: Span,
	{ region, own }: CableWords,
	findings: Finding[],
): CableMake | undefined {
	const words = new Set<string>();
	let colour: string | undefined;
	let gauge: Gauge | undefined;
	let makeUp: string | undefined;
	let insulation: number | undefined;
	const [first, last] = [terms[0], terms.at(-1)];
	const span = first === undefined || last === undefined ? at : joinSpans(first.span, last.span);
	const refuse = (title: string, where: Span, help?: string): undefined => {
		findings.push(
			planFinding("cable-unknown", { title, span: where, ...(help === undefined || help === "" ? {} : { help }) }),
		);
		return undefined;
	};
	const [word, extra] = terms;
	if (word?.kind === "name" && own.has(foldName(word.text))) {
		if (extra !== undefined)
			return refuse(`${word.text} is described as a cable, and takes no more words here`, extra.span);
		return own.get(foldName(word.text));
	}
	const [unknown] = terms.filter(({ kind }) => kind === "unknown");
	if (unknown !== undefined) {
		findings.push(
			planFinding("cable-missing", {
				title: "Which cable it is is not known yet",
				span: unknown.span,
				help: "Nothing can be checked on it until that is said; take a make-up that is likely, and put it right later.",
			}),
		);
		return undefined;
	}
	const [, another] = terms.filter(isSize);
	if (another !== undefined)
		return refuse(
			"Two sizes are said of one cable",
			another.span,
			"A hop is one cable: what runs beside it is a run of its own. `pair 8 AWG` has a positive and a negative.",
		);
	for (const term of terms) {
		if (term.kind === "gauge") gauge = term.gauge;
		else if (term.kind === "make-up") makeUp = term.text;
		else if (term.kind === "quantity" && term.quantity.dimension === "area")
			gauge = squareMillimetres(term.quantity.value);
		else if (term.kind === "quantity" && term.quantity.dimension === "temperature") insulation = term.quantity.value;
		else if (term.kind === "name" && makeWords.some((word) => word === term.text)) words.add(term.text);
		else if (term.kind === "name" && cableColours.has(term.text)) colour = term.text;
		else
			return refuse(
				`\`${"text" in term ? term.text : "?"}\` is no word for a cable`,
				term.span,
				"text" in term ? didYouMean(term.text, [...makeWords, ...cableColours, ...own.keys()]) : "",
			);
	}
	const base = {
		region,
		text: terms.map((term) => (term.kind === "unknown" ? "" : spellTerm(term))).join(" "),
		flexible: words.has("cord"),
		material: words.has("aluminium") ? ("aluminium" as const) : ("copper" as const),
	};
	const build = (
		system: System,
		usual: keyof typeof usedAt,
		cores: readonly ColouredRole[],
		size: Gauge,
		stranded: boolean,
		groundSize = size,
	): CableMake => ({
		...base,
		system,
		insulation: insulation ?? usedAt[usual],
		cores: cores.map(
			([coreColour, role]): Core => ({
				colour: coreColour,
				role,
				gauge: role === "ground" ? groundSize : size,
				stranded,
			}),
		),
	});
	if (makeUp !== undefined) return readMakeUp(makeUp);
	if (gauge === undefined) return refuse("The size of the cable is missing", span);
	const stranded = !words.has("solid");
	if (words.has("triplex"))
		return build(
			"ac",
			"boat",
			[
				["black", "hot"],
				["white", "neutral"],
				["green", "ground"],
			],
			gauge,
			stranded,
		);
	if (words.has("pair") || words.has("duplex"))
		return build(
			"dc",
			"boat",
			[
				["red", "positive"],
				[words.has("pair") ? "black" : "yellow", "negative"],
			],
			gauge,
			stranded,
		);
	const ownColour = colour ?? "black";
	return build(
		ownColour === "red" && words.has("single") ? "dc" : "ac",
		"single",
		[[ownColour, roleOfColour(ownColour, region)]],
		gauge,
		stranded,
	);

	function readMakeUp(text: string): CableMake | undefined {
		const metric = /^(\d)(G|x)(\d+(?:\.\d+)?)$/i.exec(text);
		if (metric !== null) {
			const count = Number(metric[1]);
			const withGround = metric[2] === "G" || metric[2] === "g";
			const live = withGround ? metricCores[count] : metricCores[count + 1];
			if (live === undefined || live.length === 0) return refuse(`A cable of make ${text} is not known`, span);
			const ground: ColouredRole[] = withGround ? [["green-yellow", "ground"]] : [];
			return build(
				"ac",
				"metric",
				[...live, ...ground],
				squareMillimetres(Number(metric[3])),
				base.flexible || words.has("stranded"),
			);
		}
		const thick = /^([1-4])\/0-(\d)$/.exec(text);
		const house = thick ?? /^(\d+)[-/](\d)$/.exec(text);
		if (house === null) return refuse(`A cable of make ${text} is not known`, span);
		const number = thick === null ? Number(house[1]) : 1 - Number(thick[1]);
		const size = awg(number);
		if (!houseSizes.has(number) || (thick === null && number === 0))
			return refuse(
				`${formatGauge(size)} is no size that such cable is made in`,
				span,
				"House cable comes in 14, 12, 10, 8, 6, 4, 2 and 1 AWG, and in 1/0 to 4/0.",
			);
		const counted = Number(house[2]);
		// In cord the count includes the ground (common practice); in house cable the ground comes on top.
		const live = houseCores[base.flexible && counted >= 3 ? counted - 1 : counted];
		if (live === undefined || live.length === 0) return refuse(`A cable with ${counted} conductors is not known`, span);
		const isStranded = base.flexible || words.has("stranded") || (!words.has("solid") && number <= 8);
		const ground: ColouredRole[] =
			base.flexible && counted === 2 ? [] : [[base.flexible || words.has("stranded") ? "green" : "bare", "ground"]];
		return build("ac", base.flexible ? "cord" : "house", [...live, ...ground], size, isStranded);
	}
}

/** A size or a make-up, of which a cable has one. */
function isSize(term: Term): boolean {
	return (
		term.kind === "gauge" || term.kind === "make-up" || (term.kind === "quantity" && term.quantity.dimension === "area")
	);
}

/** Sizes in which house cable and cord are made (common practice); 1/0 is 0, 4/0 is -3. */
const houseSizes: ReadonlySet<number> = new Set([18, 16, 14, 12, 10, 8, 6, 4, 2, 1, 0, -1, -2, -3]);

const cableColours: ReadonlySet<string> = new Set(
	"black white red green blue brown grey gray yellow orange violet purple pink turquoise bare green-yellow".split(" "),
);

/** Whether a word means something where a cable is said, so that no cable can be called so; a figure is a size or a make-up. */
export function isCableWord(word: string): boolean {
	return /^[0-9]/.test(word) || makeWords.some((known) => known === word) || cableColours.has(word);
}

/** What a single conductor of a colour is for by the trade's convention. */
export function roleOfColour(colour: string, region: Region): Core["role"] {
	if (colour === "green" || colour === "bare" || colour === "green-yellow") return "ground";
	const neutrals = region === "us" ? ["white", "grey", "gray"] : ["blue"];
	return neutrals.includes(colour) ? "neutral" : "hot";
}
