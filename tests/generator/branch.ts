// One branch circuit as it is being written: its hops, what its breaker still carries, and whether a ground fault opens it.
import type { AttributeSpec, Kind } from "../../src/kinds/kind.ts";
import type { CableSet } from "./cables.ts";
import { blueprintOf, kindsFor, type Part } from "./kind-parts.ts";
import type { Line } from "./lines.ts";
import type { Site } from "./site.ts";
import type { Facts } from "./words.ts";

/** A stretch of a circuit: hops are written to `lines`, and are behind a ground-fault device if `isProtected`. */
export interface Stretch {
	readonly lines: Line[];
	isProtected: boolean;
}

/** A thing at the end of a hop. */
export interface Arrival {
	readonly kind: Kind;
	readonly facts?: Facts;
	/** Words left of `to` behind the length. */
	readonly left?: readonly string[];
	/** How many alike stand in the row. */
	readonly row?: number;
	/** Letter that its name begins with. */
	readonly letter: string;
	readonly below?: readonly Line[];
	/** Set where the thing can stand by itself at the left edge, with the hop leading to its name. */
	readonly maySeparate?: boolean;
	/** Set for what has no box around it to speak of. */
	readonly hasNoBox?: boolean;
}

/** A circuit behind one breaker. */
export class Branch {
	readonly site: Site;
	readonly amperes: number;
	readonly cables: CableSet;
	/** What its breaker still carries for long, in amperes. */
	spare: number;
	/** The last plain outlet, and the hop that leads to it: where nothing goes on from it, its landings are three. */
	last: { readonly name: string; readonly line: Line | undefined } | undefined;

	constructor(site: Site, amperes: number) {
		this.site = site;
		this.amperes = amperes;
		this.cables = site.cablesFor(amperes);
		this.spare = amperes * 0.95;
	}

	/** A hop to something new; gives its name, that of the last one for a row. */
	hop(stretch: Stretch, arrival: Arrival): string {
		const { site } = this;
		const { chance, names } = site;
		const row = arrival.row === undefined ? undefined : names.freshRow(arrival.letter, arrival.row);
		const name = row?.names.at(-1) ?? names.fresh(arrival.letter);
		const facts = arrival.facts ?? {};
		const place = site.placeFor(stretch.isProtected);
		const covered: Facts = place?.isOpen === true && takes(arrival.kind, "weatherproof") ? { weatherproof: true } : {};
		const what = site.words.thing(arrival.kind, { ...facts, ...covered });
		const around = arrival.hasNoBox === true ? [] : [...this.box()];
		const behind = site.spelling.list([
			names.label(),
			...chance.shuffle([place === undefined ? "" : `in ${place.name}`, ...around]),
			row === undefined || facts.power === undefined ? "" : "each",
		]);
		const hop = this.run(arrival.left ?? [], arrival.row);
		if (arrival.maySeparate === true && row === undefined && chance.maybe(0.06)) {
			const [word = "", ...others] = what.split(" ");
			site.standing.push({ text: `${word} ${name} ${`${others.join(" ")} ${behind}`.trim()}`.trim() });
			stretch.lines.push({ ...hop, text: `${hop.text}to ${name}${names.remark()}` });
		} else
			stretch.lines.push({
				...hop,
				text: `${hop.text}to ${row?.text ?? name}: ${`${what} ${behind}`.trim()}${names.remark()}`,
				...(arrival.below === undefined ? {} : { below: arrival.below }),
			});
		site.left -= arrival.row ?? (arrival.below?.length || 1);
		return name;
	}

	/** A hop to a part of the builder's own. */
	hopTo(stretch: Stretch, part: string, letter: string): void {
		const { names } = this.site;
		const text = `to ${names.fresh(letter)}: ${part} ${names.label()}`.trim();
		const hop = this.run([]);
		stretch.lines.push({ ...hop, text: `${hop.text}${text}` });
		this.site.left -= 1;
	}

	/** A branch that starts at something: `from b1`, with hops of its own. */
	branchOff(stretch: Stretch, from: string, isProtected: boolean, write: (branch: Stretch) => void): void {
		const branch: Stretch = { lines: [], isProtected };
		write(branch);
		if (branch.lines.length > 0) stretch.lines.push({ text: `from ${from}`, below: branch.lines });
	}

	/** A figure of power in watts that the breaker still carries, for one of `count` alike; what it draws is taken off. */
	drawPower(kind: Kind, share: number, count = 1, most = Number.MAX_VALUE): number {
		const { site } = this;
		const spec = kind.attributes.find((candidate) => candidate.name === "power");
		const [least, greatest] = spec?.takes === "quantity" ? [spec.least ?? 1, spec.most ?? 1000] : [1, 1000];
		const usual = usualPower(blueprintOf(kind).face.traits);
		const limit = Math.min(greatest, most, usual.most, (this.spare * share * site.volts) / count);
		const watts = site.chance.figure(Math.max(least, Math.min(usual.least, limit)), Math.max(least, limit));
		this.spare -= (watts * count) / site.volts;
		return watts;
	}

	/** Length and words left of `to`. */
	private run(left: readonly string[], row = 1): Line {
		const { site } = this;
		const { chance, names } = site;
		const length = chance.weigh([
			[30, site.spelling.length(chance.count(2, 80) / 10)],
			[1, "?"],
			[2, undefined],
		]);
		const through =
			length !== undefined && length !== "?" && chance.maybe(0.03)
				? `${site.wish.region === "us" ? "1 ft" : "0.2 m"} through ${chance.pick(site.places).name}`
				: "";
		const tag = chance.maybe(0.04) ? `as ${row === 1 ? names.fresh("tag") : names.freshRow("tag", row).text}` : "";
		const words = [...left, through, tag].filter((word) => word !== "");
		// Two lengths side by side are told apart by the comma between them.
		const comma = words.length > 0 && (through !== "" || chance.maybe(0.5)) ? "," : "";
		return {
			text: words.map((word) => `${word}${word === words.at(-1) ? "" : ","} `).join(""),
			...(length === undefined ? {} : { length: `${length}${comma}` }),
			...(tag === "" ? {} : { tag }),
		};
	}

	/** What is said of the box around a device: room enough for what comes and goes, of metal or not. */
	private box(): string[] {
		const { chance, wish } = this.site;
		if (chance.maybe(0.75)) return [];
		const volume =
			wish.region === "us" ? `${chance.pick(["34", "42", "30.3"])} cuin` : `${chance.pick([600, 750])} cm3`;
		return [`box ${volume}${chance.maybe(0.4) ? " metal" : ""}`];
	}
}

/** Whether a kind takes an attribute. */
export function takes(kind: Kind, name: AttributeSpec["name"]): boolean {
	return kind.attributes.some((spec) => spec.name === name);
}

/** One of the kinds that play a part, among those that take all of these attributes. */
export function pickKind(site: Site, part: Part, ...attributes: readonly string[]): Kind {
	return site.chance.pick(kindsFor(part).filter((kind) => attributes.every((name) => takes(kind, name))));
}

/** What such things draw, in watts: for the size of the plan only (common practice). */
function usualPower(traits: readonly string[]): { least: number; most: number } {
	if (traits.includes("light")) return { least: 2, most: 60 };
	if (traits.includes("fan")) return { least: 5, most: 120 };
	if (traits.includes("heater")) return { least: 200, most: 9000 };
	return { least: 10, most: 3000 };
}
