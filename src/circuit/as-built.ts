// Second-last step: what the builder says is landed where, in `at` blocks. What is said replaces what would be inferred for that end.
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import type { Span } from "../base/span.ts";
import type { Termination } from "../kinds/kind.ts";
import { planFinding } from "../plan/codes.ts";
import { foldName, resolveName } from "../plan/names.ts";
import type { BoxLandings, SaidLanding } from "../plan/plan.ts";
import type { NameTerm } from "../syntax/tree.ts";
import type { Enclosure } from "./circuit.ts";
import type { Draft, DraftConductor } from "./draft.ts";

/** One end of a conductor, found by its name. */
interface FoundEnd {
	readonly conductor: DraftConductor;
	readonly which: 0 | 1;
}

/** Lands everything that is said; a landing that cannot be made is a finding and changes nothing. */
export function landAsBuilt(draft: Draft, findings: Finding[]): void {
	for (const block of draft.plan.landings) {
		const thing = draft.plan.thingByName.get(foldName(block.box));
		const enclosure = thing === undefined ? undefined : draft.enclosureOfThing.get(thing.name);
		if (enclosure !== undefined) new BoxWiring(draft, enclosure, findings).wire(block);
	}
}

class BoxWiring {
	private readonly draft: Draft;
	private readonly enclosure: Enclosure;
	private readonly findings: Finding[];

	constructor(draft: Draft, enclosure: Enclosure, findings: Finding[]) {
		this.draft = draft;
		this.enclosure = enclosure;
		this.findings = findings;
	}

	wire(block: BoxLandings): void {
		for (const landing of block.landings) this.wireLanding(landing);
	}

	private wireLanding(landing: SaidLanding): void {
		switch (landing.sort) {
			case "land": {
				const point = this.findPoint(landing.on);
				if (point === undefined) return;
				for (const core of landing.cores) {
					const end = this.findEnd(core);
					if (end === undefined || !this.isFree(end, core)) continue;
					this.draft.land(
						end.conductor,
						end.which,
						this.portFor(point, landing.on),
						true,
						landing.termination,
						landing.span,
					);
				}
				return;
			}
			case "free": {
				const end = this.findEnd(landing.core);
				if (end === undefined || !this.isFree(end, landing.core)) return;
				const target = end.conductor.ends[end.which];
				target.state = landing.state;
				target.said = true;
				target.span = landing.span;
				return;
			}
			case "join":
				return this.join(landing);
			case "link":
				return this.link(landing);
		}
	}

	/** A joint: cores go into it by their ends, a terminal by a pigtail of the first core's make. */
	private join(landing: SaidLanding & { sort: "join" }): void {
		const names = landing.members.flat();
		const members: { name: NameTerm; end?: FoundEnd; point?: number }[] = [];
		for (const name of names) {
			const end = this.seekEnd(name);
			const point = end === undefined ? this.seekPoint(name) : undefined;
			if (end === undefined && point === undefined) this.reportCore(name);
			else if (end === undefined || this.isFree(end, name))
				members.push({ name, ...(end === undefined ? {} : { end }), ...(point === undefined ? {} : { point }) });
		}
		const first = members.find((member) => member.end !== undefined)?.end;
		const like = first?.conductor ?? this.likeAround(members[0]?.point);
		if (like === undefined || members.length === 0) return;
		// Named after what its first conductor is for here, as one that is inferred.
		const knot = first?.conductor.ends[first.which].knot ?? like.role;
		const splice = this.draft.addSplice(this.enclosure, knot, like.role, {
			make: landing.make,
			members: landing.members.length,
			said: true,
			span: landing.span,
		});
		for (const { name, end, point } of members) {
			const termination = landing.terminations.get(name);
			if (end !== undefined) this.draft.land(end.conductor, end.which, splice, true, termination, name.span);
			else if (point !== undefined) this.pigtail(like, point, splice, termination, name.span);
		}
	}

	/** A jumper between terminals, conductor by conductor of its cable. */
	private link(landing: SaidLanding & { sort: "link" }): void {
		const points = landing.between.map((name) => this.findPoint(name));
		for (let index = 1; index < points.length; index++) {
			const [from, to] = [points[index - 1], points[index]];
			const core = landing.cable.cores[0];
			if (from === undefined || to === undefined || core === undefined) continue;
			const names = [from, to].map((point) => this.draft.points[point]?.name ?? "");
			this.draft.addPigtail(`${names[0]}~${names[1]}`, core, this.enclosure, from, to, true, landing.span);
		}
	}

	private pigtail(
		like: DraftConductor,
		point: number,
		splice: number,
		termination: Termination | undefined,
		span: Span,
	): void {
		const target = this.draft.points[point];
		const name = target?.kind === "terminal" ? `${target.part}~${target.terminal}` : `${this.enclosure.name}~case`;
		const pigtail = this.draft.addPigtail(name, like, this.enclosure, point, splice, true, span);
		const [end] = pigtail.ends;
		end.termination = termination ?? end.termination;
		this.draft.joinedByHand.add(point);
	}

	/** For a joint of terminals alone, a core of the terminal's role that comes into the box says what its pigtails are made of. */
	private likeAround(point: number | undefined): DraftConductor | undefined {
		const target = point === undefined ? undefined : this.draft.points[point];
		return this.draft.conductors.find(
			(conductor) => conductor.role === target?.role && conductor.ends.some((end) => end.enclosure === this.enclosure),
		);
	}

	private isFree({ conductor, which }: FoundEnd, name: NameTerm): boolean {
		const end = conductor.ends[which];
		if (!end.said) return true;
		this.findings.push(
			planFinding("landed-twice", {
				title: `${conductor.name} is said to be in two places in ${this.enclosure.name}`,
				span: name.span,
				label: "again",
				also: [{ span: end.span, label: "first here" }],
				marks: [conductor.name],
			}),
		);
		return false;
	}

	private findEnd(name: NameTerm): FoundEnd | undefined {
		const end = this.seekEnd(name);
		if (end === undefined) this.reportCore(name);
		return end;
	}

	/** `bunks-1.black`, `bunks-1.black(2)`, `bunks-1@LC.black`, `g1.tail.white`; a cable with one conductor needs no colour. */
	private seekEnd(name: NameTerm): FoundEnd | undefined {
		const { colour, at } = this.readEnd(name);
		const fits = (conductor: DraftConductor): boolean => {
			if (conductor.cable === undefined || foldName(conductor.cable) !== foldName(name.head)) return false;
			return colour === "" || conductor.colour === colour || (colour === "green" && conductor.colour === "bare");
		};
		const cores = this.draft.conductorsInto(this.enclosure).filter(fits);
		const core = name.nth === undefined ? cores[0] : cores[name.nth - 1];
		if (core === undefined) return this.seekLead(name);
		if (colour === "" && cores.length > 1) return undefined;
		if (at === undefined && name.end !== undefined && this.enclosureNamed(name.end) !== this.enclosure)
			return undefined;
		const isHere = (which: 0 | 1) => core.ends[which].enclosure === this.enclosure;
		const here = ([0, 1] as const).filter((which) => isHere(which) && (at === undefined || core.ends[which].at === at));
		const [first, second] = here;
		if (first === undefined) return undefined;
		// A cable that meets the box twice: the end not yet said, the leaving one first.
		return { conductor: core, which: second !== undefined && core.ends[first].said ? second : first };
	}

	/** Of `bunks-1@inv.in.black` the end that `@` names, where the cable has both in this box, and the colour behind it. */
	private readEnd(name: NameTerm): { readonly colour: string; readonly at: string | undefined } {
		const colour = name.steps.join(".");
		if (name.end === undefined) return { colour, at: undefined };
		const path = [name.end, ...name.steps];
		const ends = this.draft
			.conductorsInto(this.enclosure)
			.filter((conductor) => conductor.cable !== undefined && foldName(conductor.cable) === foldName(name.head))
			.flatMap((conductor) => conductor.ends.flatMap((end) => end.at ?? []));
		for (let taken = path.length; taken > 0; taken--) {
			const said = foldName(path.slice(0, taken).join("."));
			const at = ends.find((known) => foldName(known) === said);
			if (at !== undefined) return { colour: path.slice(taken).join("."), at };
		}
		return { colour, at: undefined };
	}

	/** The lead that comes with a device, by its free end: `LC.3.tail`, `LC.3.tail.white`. */
	private seekLead(name: NameTerm): FoundEnd | undefined {
		const resolved = resolveName(name, this.draft.plan.thingByName);
		if (resolved === undefined) return undefined;
		// Of a device with several, each goes by the terminal it comes from too: `R1.load.neutral`.
		const named = this.draft.leads.get([resolved.thing.name, ...resolved.rest].join("."));
		if (named !== undefined && resolved.rest[0] !== "tail") return { conductor: named, which: 1 };
		const [tail, ...colour] = resolved.rest;
		if (tail !== "tail") return undefined;
		const leads = (resolved.thing.blueprint.leads ?? [])
			.filter((lead) => colour.length === 0 || lead.colour === colour.join("."))
			.flatMap((lead) => this.draft.leads.get(`${resolved.thing.name}.${lead.mine}`) ?? [])
			.filter((lead) => lead.ends[1].enclosure === this.enclosure);
		const lead = leads[(name.nth ?? 1) - 1];
		return lead === undefined || (colour.length === 0 && leads.length > 1) ? undefined : { conductor: lead, which: 1 };
	}

	private enclosureNamed(name: string): Enclosure | undefined {
		const thing = this.draft.plan.thingByName.get(foldName(name));
		return thing === undefined ? undefined : this.draft.enclosureOfThing.get(thing.name);
	}

	private findPoint(name: NameTerm): number | undefined {
		const point = this.seekPoint(name);
		if (point !== undefined) return point;
		const here = this.draft.parts.filter((part) => part.enclosure === this.enclosure);
		const known = here.flatMap((part) => part.points.map((index) => this.draft.points[index]?.name ?? ""));
		this.findings.push(
			planFinding("terminal-unknown", {
				title: `${this.enclosure.name} has no terminal ${name.text}`,
				span: name.span,
				help: `${didYouMean(name.text, known)} Its terminals are: ${known.slice(0, 12).join(", ")}${known.length > 12 ? " ..." : ""}.`.trim(),
			}),
		);
		return undefined;
	}

	/** A terminal by its full name or a synonym; a device with one terminal of use, or a bar, by its own name. */
	private seekPoint(name: NameTerm): number | undefined {
		const resolved = resolveName(name, this.draft.plan.thingByName);
		if (resolved === undefined) return undefined;
		const { thing, rest } = resolved;
		if (this.draft.enclosureOfThing.get(thing.name) !== this.enclosure) return undefined;
		if (rest.length > 0) {
			const direct = this.draft.pointNames.byName.get(`${thing.name}.${rest.join(".")}`);
			if (direct !== undefined) return direct;
			return rest.join(".") === "case" ? this.enclosure.body : undefined;
		}
		const usable = (this.draft.partByName.get(thing.name)?.points ?? []).filter((index) => {
			const point = this.draft.points[index];
			return point?.kind === "terminal" && point.capacity > 0 && point.clamp !== "lead";
		});
		const gathers = thing.blueprint.terminals.some((terminal) => terminal.gathers === true);
		return usable.length === 1 || gathers ? usable[0] : undefined;
	}

	/** On a bar named as a whole, the next port with room; a port named by itself takes whatever is put there. */
	private portFor(point: number, name: NameTerm): number {
		const target = this.draft.points[point];
		const isWhole = target?.kind === "terminal" && foldName(target.part) === foldName(name.text);
		if (!isWhole) return point;
		if (target?.kind !== "terminal" || (this.draft.landed[point] ?? 0) < target.capacity) return point;
		const part = this.draft.partByName.get(target.part);
		const gathers = this.draft.plan.thingByName
			.get(foldName(target.part))
			?.blueprint.terminals.some((spec) => spec.gathers === true);
		if (gathers !== true) return point;
		return part?.points.find((index) => (this.draft.landed[index] ?? 0) === 0) ?? point;
	}

	private reportCore(name: NameTerm): void {
		const here = this.draft.conductorsInto(this.enclosure).filter((conductor) => conductor.sort === "core");
		const known = here.map((conductor) => conductor.name);
		this.findings.push(
			planFinding("core-unknown", {
				title: `No conductor ${name.text} comes into ${this.enclosure.name}`,
				span: name.span,
				help: `${didYouMean(name.text, known)} Into it come: ${known.slice(0, 12).join(", ")}${known.length > 12 ? " ..." : ""}.`.trim(),
			}),
		);
	}
}
