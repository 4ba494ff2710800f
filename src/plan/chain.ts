// Follows one chain hop by hop: each hop is one cable from where the chain stands to the thing it arrives at.
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import type { Quantity } from "../base/quantity.ts";
import { joinSpans, type Span } from "../base/span.ts";
import type { System } from "../kinds/kind.ts";
import { spellTerm } from "../syntax/spelling.ts";
import type {
	BranchStatement,
	HopStatement,
	Link,
	Marking,
	NameTerm,
	NewName,
	QuantityTerm,
	Term,
	UnknownTerm,
} from "../syntax/tree.ts";
import { planFinding } from "./codes.ts";
import { readBundle, readSlack } from "./hop-words.ts";
import { markedRole } from "./marked-role.ts";
import { namesOf } from "./name-rows.ts";
import type { CableMake, CoreMarking, Fastening, Hop, HopEnd } from "./plan.ts";
import { everyHopSaysBy } from "./run-words.ts";
import type { RunRegister } from "./runs.ts";
import type { Wiring } from "./said-values.ts";

/** What a chain stands at: where the next cable leaves from; undefined where that could not be understood. */
interface Position {
	readonly from: HopEnd | undefined;
	/** Where the further poles stand, when several run together. */
	readonly others: readonly HopEnd[];
	readonly cable: CableMake | undefined;
}

/** What a hop says of its cable. */
interface Way {
	readonly length: QuantityTerm | UnknownTerm | undefined;
	readonly tag: NameTerm | undefined;
	readonly through: HopStatement["through"];
	readonly markings: HopStatement["markings"];
	readonly loop: boolean;
	/** The length is an upper bound: `within 7 in to`. */
	readonly atMost: boolean;
	readonly slack: Quantity | undefined;
	readonly bundled: number | undefined;
	readonly span: Span;
}

/** No cable of a vehicle, boat or cabin is longer, in metres. */
const longestCable = 500;

/** Follows one chain and its branches. */
export class Flattener {
	readonly hops: Hop[] = [];
	private cables = 0;
	readonly fastenings: Fastening[] = [];
	private readonly told = new Set<string>();
	/** The cable by which each thing was reached. */
	private readonly reachedBy = new Map<string, CableMake>();
	private readonly register: RunRegister;
	private readonly run: string;

	constructor(register: RunRegister, run: string) {
		this.register = register;
		this.run = run;
	}

	follow(links: readonly Link[], start: Position): void {
		let position = start;
		for (const link of links) {
			if (link.kind === "branch") {
				const own = this.register.readCable(link.cable, link.span, false);
				const poles = this.register.resolvePoles(link.from);
				if (own === undefined && !everyHopSaysBy(link.links)) this.tellCarriedOver(link, poles.from, position.cable);
				this.follow(link.links, { ...poles, cable: own ?? position.cable });
			} else position = this.takeHop(link, position);
		}
	}

	/** A branch goes on in the cable that was said last, which need not be the one that its thing was reached by. */
	private tellCarriedOver(branch: BranchStatement, from: HopEnd | undefined, cable: CableMake | undefined): void {
		const reached = from === undefined ? undefined : this.reachedBy.get(from.thing);
		if (reached === undefined || cable === undefined || reached === cable || reached.text === cable.text) return;
		this.reportOnce(
			planFinding("cable-carried-over", {
				title: `The branch from ${from?.thing} goes on in ${cable.text}, the last cable said, and ${from?.thing} is reached by ${reached.text}`,
				span: branch.span,
				help: `Write the cable of the branch: \`from ${from?.thing} by ${reached.text}\`, or \`by ${cable.text}\` if it is meant.`,
			}),
		);
	}

	add(position: Position, to: HopEnd, way: Way): void {
		// A cable that could not be taken up keeps its number, so that no other gets its tag.
		const tag = this.register.takeTag(this.run, ++this.cables, way.tag, way.span);
		const length = this.readLength(way.length);
		if (position.from === undefined || position.cable === undefined) {
			this.register.incomplete = true;
			return;
		}
		if (position.from.thing === to.thing && position.from.side === to.side) {
			this.reportOnce(
				planFinding("cable-to-itself", {
					title: `${tag} goes from ${to.thing} to ${to.thing}`,
					span: way.span,
					marks: [to.thing],
				}),
			);
			return;
		}
		this.reachedBy.set(to.thing, position.cable);
		this.hops.push({
			tag,
			tagSaid: way.tag !== undefined,
			from: this.register.leave(position.from),
			others: position.others,
			to,
			cable: position.cable,
			length,
			lengthText:
				length === undefined || way.length === undefined
					? ""
					: `${way.atMost ? "at most " : ""}${spellTerm(way.length)}`,
			through: way.through.flatMap((part) => {
				const place = this.register.findPlace(part.place);
				return place === undefined
					? []
					: [{ place, ...(part.length === undefined ? {} : { length: part.length.quantity }) }];
			}),
			markings: way.markings.flatMap((marking) => this.readMarking(marking, position.cable, [position.from, to]) ?? []),
			slack: way.slack,
			bundled: way.bundled,
			loop: way.loop && this.isLoop(position.from, to, way.span),
			span: way.span,
		});
	}

	/** Whether a loop can go there: from what is switched, or on from a switch of it, to a switch. Else it is a finding, and a plain cable. */
	private isLoop(from: HopEnd, to: HopEnd, span: Span): boolean {
		const misplaced = !this.register.canLoopFrom(from)
			? from.thing
			: this.register.canLoopTo(to)
				? undefined
				: to.thing;
		if (misplaced !== undefined)
			this.reportOnce(
				planFinding("loop-misplaced", {
					title: `A loop cannot go ${misplaced === from.thing ? "from" : "to"} ${misplaced}`,
					span,
					label: "no loop here",
					marks: [misplaced],
				}),
			);
		return misplaced === undefined;
	}

	/** Fastens the stud of one thing to that of another; where either has none, that is a finding. */
	private fasten(from: HopEnd | undefined, to: HopEnd): void {
		if (from === undefined) {
			this.register.incomplete = true;
			return;
		}
		const bare = [
			this.register.hasStud(from, "onward") ? undefined : from,
			this.register.hasStud(to, "arrival") ? undefined : to,
		].find((end) => end !== undefined);
		if (bare === undefined) this.fastenings.push({ from, to, span: to.span });
		else {
			const poles = bare === from ? this.register.polesOf(from) : undefined;
			this.reportOnce(
				planFinding("stud-missing", {
					title:
						poles === undefined
							? `${to.thing} cannot be bolted to ${from.thing}: ${bare.thing} has no stud for it`
							: `${to.thing} cannot be bolted to both poles of ${from.thing} at once`,
					span: to.span,
					label: poles === undefined ? "no stud" : "on which pole?",
					...(poles === undefined
						? {}
						: {
								help: `Say both poles where the run begins, the one it is bolted to first: \`from ${poles.join(", ")}\`.`,
							}),
				}),
			);
		}
	}

	/** What is carried here: as the thing it comes from says, else the cable. */
	private systemAt({ from, cable }: Position): System {
		return (from === undefined ? undefined : this.register.systemOf(from)) ?? cable?.system ?? "ac";
	}

	/** A length that a cable can have; any other is a finding and not known. */
	private readLength(term: Way["length"]): Quantity | undefined {
		if (term?.kind !== "quantity") return undefined;
		if (term.quantity.value > 0 && term.quantity.value <= longestCable) return term.quantity;
		this.reportOnce(
			planFinding("quantity-out-of-range", {
				title: `${term.text} is no likely length of a cable`,
				span: term.span,
				label: "out of range",
			}),
		);
		return undefined;
	}

	/** A core re-marked with another colour, at an end of its cable by the name of the thing there. */
	private readMarking(
		marking: Marking,
		cable: CableMake | undefined,
		ends: readonly (HopEnd | undefined)[],
	): CoreMarking | undefined {
		const { core, colour, at } = marking;
		const colours = (cable?.cores ?? []).map((known) => known.colour);
		if (cable !== undefined && !colours.includes(core.text)) {
			this.reportOnce(
				planFinding("core-unknown", {
					title: `${cable.text} has no ${core.text} conductor to mark`,
					span: core.span,
					help: `${didYouMean(core.text, colours)} Its conductors are: ${colours.join(", ")}.`.trim(),
				}),
			);
			return undefined;
		}
		if (at === undefined) return { core: core.text, colour: colour.text };
		const end = ends.find((candidate) => candidate !== undefined && this.register.isAt(candidate, at));
		if (end !== undefined) return { core: core.text, colour: colour.text, at: end.thing };
		this.reportOnce(
			planFinding("name-unknown", {
				title: `The cable does not end at ${at.text}`,
				span: at.span,
				label: "no end here",
			}),
		);
		return undefined;
	}

	/** What is wrong with a hop to a row of things is told once. */
	private reportOnce(problem: Finding): void {
		if (this.told.has(problem.key)) return;
		this.told.add(problem.key);
		this.register.report(problem);
	}

	/** Words left of `to` that say nothing of a cable. */
	private reportWords(first: Term, last: Term): void {
		const word = first.kind === "name" ? first.text : "";
		if (word === "slack" || word === "bundled") {
			const span = joinSpans(first.span, last.span);
			this.register.report(
				planFinding("attribute-twice", { title: `\`${word}\` is said twice`, span, label: "said again" }),
			);
			return;
		}
		const help = didYouMean(word, ["slack", "bundled", "loop", "through", "within", "as", "by"]);
		this.register.report(
			planFinding("attribute-unknown", {
				title: `${word === "" ? "This" : `\`${word}\``} says nothing about the cable of a hop`,
				span: joinSpans(first.span, last.span),
				label: "not understood",
				help: `${help} Left of \`to\` stand its length, \`as\` and its tag, \`by\` and its make, \`slack\`, \`bundled\`, \`loop\`, and what it runs \`through\`.`.trim(),
			}),
		);
	}

	private reportUnusedTags(tags: NewName, cables: number): void {
		this.register.report(
			planFinding("tags-too-many", {
				title: `${tags.first.text}..${tags.last?.text ?? ""} are more tags than the hop has cables: ${cables}`,
				span: tags.span,
				label: "too many",
			}),
		);
	}

	private takeHop(hop: HopStatement, start: Position): Position {
		let position: Position =
			hop.cable.length === 0 ? start : { ...start, cable: this.register.readCable(hop.cable, hop.span, false) };
		const isLoop = hop.terms.some((term) => isLoopWord(term));
		const findings = { push: (problem: Finding) => this.register.report(problem) };
		const { slack, others: further } = readSlack(
			hop.terms.filter((term) => !isLoopWord(term)),
			findings,
		);
		const { bundled, others } = readBundle(further, findings);
		const [first, last] = [others[0], others.at(-1)];
		if (first !== undefined && last !== undefined) this.reportWords(first, last);
		const names = namesOf(hop.name);
		const tags = hop.tag === undefined ? [] : namesOf(hop.tag);
		if (hop.tag !== undefined && tags.length > names.length) this.reportUnusedTags(hop.tag, names.length);
		for (const [index, name] of names.entries()) {
			const arriving = isLoop ? {} : arrivingBy(position.cable, hop.markings);
			const to = this.register.arrive(hop, name, this.run, { system: this.systemAt(position), ...arriving });
			if (to === undefined) {
				this.register.incomplete = true;
				position = { ...position, from: undefined };
				continue;
			}
			if (hop.manner === "bolted") {
				this.fasten(position.from, to);
				// Only the first pole is fastened; the others still wait where they were.
				position = { ...position, from: { thing: to.thing, span: name.span } };
				continue;
			}
			this.add(position, to, {
				length: hop.length,
				tag: tags[index] ?? tags.at(-1),
				through: hop.through,
				markings: hop.markings,
				loop: isLoop,
				atMost: hop.manner === "within",
				slack,
				bundled,
				span: name.span,
			});
			position = { ...position, from: { thing: to.thing, span: name.span }, others: [] };
		}
		return position;
	}
}

function isLoopWord(term: Term): boolean {
	return term.kind === "name" && term.text === "loop";
}

/** What a cable brings with it, re-marked cores counted by their new colours. */
function arrivingBy(cable: CableMake | undefined, markings: readonly Marking[]): Pick<Wiring, "arriving"> {
	if (cable === undefined) return {};
	const marked = markings
		.filter((marking) => marking.at === undefined)
		.map(({ core, colour }) => ({ core: core.text, colour: colour.text }));
	const roles = cable.cores.map((core) => markedRole(core, cable, marked));
	return {
		arriving: {
			secondHot: roles.includes("hot2"),
			thirdHot: roles.includes("hot3"),
			neutral: roles.includes("neutral"),
		},
	};
}
