// Follows one chain hop by hop: each hop is one cable from where the chain stands to the thing it arrives at.
import type { Span } from "../base/span.ts";
import type { HopStatement, Link, NameTerm, QuantityTerm, UnknownTerm } from "../syntax/tree.ts";
import { planFinding } from "./codes.ts";
import { namesOf } from "./name-rows.ts";
import type { CableMake, Hop, HopEnd } from "./plan.ts";
import type { RunRegister } from "./runs.ts";

/** What a chain stands at: where the next cable leaves from; undefined where that could not be understood. */
interface Position {
	readonly from: HopEnd | undefined;
	readonly cable: CableMake | undefined;
}

/** What a hop says of its cable. */
interface Way {
	readonly length: QuantityTerm | UnknownTerm | undefined;
	readonly tag: NameTerm | undefined;
	readonly through: HopStatement["through"];
	readonly markings: HopStatement["markings"];
	readonly span: Span;
}

/** Follows one chain and its branches. */
export class Flattener {
	readonly hops: Hop[] = [];
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
				const from = this.register.resolveEnd(link.from[0], "from");
				const cable = this.register.readCable(link.cable, link.span, false) ?? position.cable;
				this.follow(link.links, { from, cable });
			} else position = this.takeHop(link, position);
		}
	}

	add(position: Position, to: HopEnd, way: Way): void {
		const tag = this.register.takeTag(this.run, this.hops.length + 1, way.tag, way.span);
		const length = way.length?.kind === "quantity" ? way.length.quantity : undefined;
		if (position.from === undefined || position.cable === undefined) {
			this.register.incomplete = true;
			return;
		}
		this.hops.push({
			tag,
			tagSaid: way.tag !== undefined,
			from: position.from,
			to,
			cable: position.cable,
			...(length === undefined ? {} : { length }),
			lengthText: way.length?.kind === "quantity" ? way.length.text : "",
			through: way.through.flatMap((part) => {
				const place = this.register.findPlace(part.place);
				return place === undefined
					? []
					: [{ place, ...(part.length === undefined ? {} : { length: part.length.quantity }) }];
			}),
			markings: way.markings.map((marking) => ({
				core: marking.core.text,
				colour: marking.colour.text,
				...(marking.at === undefined ? {} : { at: marking.at.text }),
			})),
			span: way.span,
		});
	}

	private takeHop(hop: HopStatement, start: Position): Position {
		let position: Position =
			hop.cable.length === 0 ? start : { ...start, cable: this.register.readCable(hop.cable, hop.span, false) };
		if (hop.manner === "bolted" || hop.manner === "within") {
			this.register.incomplete = true;
			this.register.report(
				planFinding("not-understood-yet", {
					title: `\`${hop.manner === "bolted" ? "bolted to" : "within"}\` is read, but has no meaning yet`,
					span: hop.span,
				}),
			);
		}
		for (const name of namesOf(hop.name)) {
			const to = this.register.arrive(hop, name, this.run);
			if (to === undefined) {
				this.register.incomplete = true;
				position = { ...position, from: undefined };
				continue;
			}
			this.add(position, to, {
				length: hop.length,
				tag: hop.tag,
				through: hop.through,
				markings: hop.markings,
				span: name.span,
			});
			position = { ...position, from: { thing: to.thing, span: name.span } };
		}
		return position;
	}
}
