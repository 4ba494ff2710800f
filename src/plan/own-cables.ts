// Cables that the builder describes: `cable NAME` with a line for each conductor, or all of them on its own line.
import type { Finding } from "../base/finding.ts";
import { formatGauge, type Gauge, squareMillimetres } from "../base/gauge.ts";
import { didYouMean } from "../base/nearest.ts";
import type { Span } from "../base/span.ts";
import { colourWords, findColour } from "../handbook/colours.ts";
import type { Region, Role } from "../kinds/kind.ts";
import type { DefinitionStatement, Term } from "../syntax/tree.ts";
import { isCableWord, readCableMake } from "./cable-make.ts";
import { calledTwice, planFinding } from "./codes.ts";
import { keptOnly } from "./kept-only.ts";
import { foldName } from "./names.ts";
import type { CableMake, Core } from "./plan.ts";
import { roleOfTerm, roleWords } from "./role-words.ts";

/** Own cables by their folded names; undefined stands for one that is described and could not be understood. */
export type OwnCables = ReadonlyMap<string, CableMake | undefined>;

/** Reads every `cable` statement; what is wrong goes to `findings` and leaves the other cables as they are. */
export function readOwnCables(
	statements: readonly DefinitionStatement[],
	region: Region,
	findings: Finding[],
): OwnCables {
	const cables = new Map<string, CableMake | undefined>();
	const firsts = new Map<string, Span>();
	for (const statement of statements) {
		const { text, span } = statement.name;
		const first = firsts.get(foldName(text));
		if (first !== undefined) findings.push(calledTwice("cables", text, span, first));
		else if (isCableWord(text))
			findings.push(
				planFinding("name-twice", {
					title: `\`${text}\` is a word for cables already`,
					span,
					help: "Give the cable a name that is none of the words of the trade.",
				}),
			);
		else {
			firsts.set(foldName(text), span);
			cables.set(foldName(text), new CableReader(statement, region, findings).read());
		}
	}
	return cables;
}

/** What holds for the whole cable. */
interface Sheath {
	size?: Gauge;
	insulation?: number;
	stranded?: boolean;
	material?: CableMake["material"];
	flexible?: boolean;
}
/** A conductor as it is described: colour and role, and its own size where that differs. */
interface DescribedCore {
	readonly colour: string;
	readonly role: Role;
	size?: Gauge;
	stranded?: boolean;
	readonly span: Span;
}

/** Sizes from a bell wire to the thickest starter cable, in mm2, and temperatures that insulation is made for, in degrees Celsius. */
const likelySize = { least: 0.1, most: 300 };
const likelyInsulation = { least: 50, most: 250 };

class CableReader {
	private readonly statement: DefinitionStatement;
	private readonly region: Region;
	private readonly findings: Finding[];
	private readonly sheath: Sheath = {};
	private readonly cores: DescribedCore[] = [];
	private failed = false;

	constructor(statement: DefinitionStatement, region: Region, findings: Finding[]) {
		this.statement = statement;
		this.region = region;
		this.findings = findings;
	}

	read(): CableMake | undefined {
		const { name, terms, lines } = this.statement;
		// `cable van 12-2 stranded`: a name of its own for what the trade has a word for.
		if (lines.length === 0 && terms.some(({ kind }) => kind === "make-up")) {
			const make = readCableMake(terms, name.span, { region: this.region, own: new Map() }, this.findings);
			return make === undefined ? undefined : { ...make, text: name.text };
		}
		this.readRow(terms);
		for (const line of lines) this.readRow([line.key, ...line.terms]);
		if (this.failed) return undefined;
		if (this.cores.length === 0)
			return this.refuse("cable-unknown", `The cable ${name.text} has no conductors`, name.span, {
				label: "made of what?",
				help: "Write a line for each below it: colour, what it is for, size, such as `black hot 12 AWG`.",
			});
		const cores = this.cores.flatMap((core) => this.complete(core) ?? []);
		if (this.failed) return undefined;
		const isDirect = cores.some(({ role }) => role === "positive" || role === "negative");
		return {
			region: this.region,
			text: name.text,
			system: isDirect && !cores.some(({ role }) => role === "hot") ? "dc" : "ac",
			flexible: this.sheath.flexible ?? false,
			cores,
			insulation: this.sheath.insulation ?? usualInsulation,
			material: this.sheath.material ?? "copper",
		};
	}

	/** Conductors and words on one line: behind a colour stands its role, then what holds for that conductor. */
	private readRow(terms: readonly Term[]): void {
		let core: DescribedCore | undefined;
		for (let index = 0; index < terms.length; index++) {
			const term = terms[index];
			if (term === undefined) continue;
			const colour = term.kind === "name" ? findColour(term.text) : undefined;
			if (colour !== undefined && term.kind === "name" && !(core === undefined && isMetal(term, terms[index + 1]))) {
				core = this.openCore(term.text, terms[index + 1], term.span);
				if (core === undefined) continue;
				this.cores.push(core);
				index++;
			} else this.readWord(term, core, terms === this.statement.terms);
		}
	}

	private openCore(colour: string, role: Term | undefined, span: Span): DescribedCore | undefined {
		const known = roleOfTerm(role);
		if (known === undefined)
			return this.refuse("role-missing", `It is not said what the ${colour} conductor is for`, role?.span ?? span, {
				label: "for what?",
				help: `${didYouMean(role?.kind === "name" ? role.text : "", roleWords)} Write it behind the colour: ${roleWords.join(", ")}.`.trim(),
			});
		const hots = this.cores.filter((core) => isHot(core.role)).length;
		return { colour, role: known === "hot" ? (hotRoles[hots] ?? "hot3") : known, span };
	}

	/** A size, a temperature, a word. On the first line a size holds for every conductor, below it for that of its line. */
	private readWord(term: Term, core: DescribedCore | undefined, isCommon: boolean): void {
		const gauge = gaugeOf(term);
		if (gauge !== undefined) {
			if (gauge.mm2 < likelySize.least || gauge.mm2 > likelySize.most)
				this.refuse("quantity-out-of-range", `${formatGauge(gauge)} is no likely size of a conductor`, term.span);
			const holder = isCommon || core === undefined ? this.sheath : core;
			if (holder.size !== undefined) this.refuse("attribute-twice", "The size is said twice", term.span);
			holder.size = gauge;
			return;
		}
		if (term.kind === "quantity" && term.quantity.dimension === "temperature") {
			const { value } = term.quantity;
			if (value < likelyInsulation.least || value > likelyInsulation.most)
				this.refuse("quantity-out-of-range", `${term.text} is no likely rating of insulation`, term.span);
			if (this.sheath.insulation !== undefined)
				this.refuse("attribute-twice", "The temperature is said twice", term.span);
			this.sheath.insulation = value;
			return;
		}
		const word = term.kind === "name" ? term.text : "";
		if (word === "stranded" || word === "solid") (core ?? this.sheath).stranded = word === "stranded";
		else if (word === "copper" || word === "aluminium") this.sheath.material = word;
		else if (word === "flexible" || word === "cord") this.sheath.flexible = true;
		else if (jackets.includes(word)) this.findings.push(keptOnly("jacket of a cable", term.span));
		else if (term.kind === "number" || term.kind === "quantity")
			this.refuse("unit-wrong", `${term.text} is no size of a conductor`, term.span, {
				help: "A size is written as `12 AWG` or `2.5 mm2`, a temperature as `90 C`.",
			});
		else
			this.refuse("attribute-unknown", `\`${word}\` says nothing about a cable`, term.span, {
				label: "not understood",
				help: `${didYouMean(word, [...cableWords, ...colourWords, ...roleWords])} A line is a colour, what the conductor is for, and its size; a cable takes ${cableWords.join(", ")} and a temperature.`.trim(),
			});
	}

	private complete(core: DescribedCore): Core | undefined {
		const gauge = core.size ?? this.sheath.size;
		if (gauge === undefined)
			return this.refuse("quantity-missing", `The size of the ${core.colour} conductor is missing`, core.span, {
				label: "how thick?",
				help: "Write it on its line, or behind the cable's name where all are equal: `12 AWG` or `2.5 mm2`.",
			});
		return {
			colour: core.colour,
			role: core.role,
			gauge,
			stranded: core.stranded ?? this.sheath.stranded ?? this.sheath.flexible ?? false,
		};
	}

	private refuse(
		code: Parameters<typeof planFinding>[0],
		title: string,
		span: Span,
		more: { readonly label?: string; readonly help?: string } = {},
	): undefined {
		this.failed = true;
		this.findings.push(planFinding(code, { title, span, ...more }));
	}
}

/** Insulation of a cable of which nothing is said is used at 60 °C, as that of house cable is (NEC 334.80). */
const usualInsulation = 60;
const jackets = ["singles", "sheathed", "metal-clad"];
const cableWords = ["stranded", "solid", "copper", "aluminium", "flexible", ...jackets];

/** The hots of a cable in a row. */
const hotRoles = ["hot", "hot2", "hot3"] as const satisfies readonly Role[];

function isHot(role: Role): boolean {
	return hotRoles.some((hot) => hot === role);
}

/** `copper` is a metal, unless it is the colour of a bare conductor with its role behind it. */
function isMetal(term: Term, next: Term | undefined): boolean {
	return term.kind === "name" && term.text === "copper" && roleOfTerm(next) === undefined;
}

function gaugeOf(term: Term): Gauge | undefined {
	if (term.kind === "gauge") return term.gauge;
	return term.kind === "quantity" && term.quantity.dimension === "area"
		? squareMillimetres(term.quantity.value)
		: undefined;
}
