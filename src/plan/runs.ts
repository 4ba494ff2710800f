// Takes in runs: where each starts, by which cable it goes, its tags; the things on the way are declared as they are met.
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import type { Span } from "../base/span.ts";
import type { System } from "../kinds/kind.ts";
import type { HopStatement, NameTerm, RunStatement, Term, ThingStatement } from "../syntax/tree.ts";
import { type CableWords, readCableMake } from "./cable-make.ts";
import { Flattener } from "./chain.ts";
import { calledTwice, planFinding } from "./codes.ts";
import { namesOf } from "./name-rows.ts";
import { foldName, resolveName } from "./names.ts";
import type { CableMake, HopEnd, Place, Run, Thing } from "./plan.ts";
import { everyHopSaysBy, hasWords, isRoughedIn } from "./run-words.ts";
import type { Wiring } from "./said-values.ts";
import { postsAt, sideAt, sideOfTerminal, tellSides } from "./sides.ts";
import type { ThingRegister } from "./things.ts";

/** Takes in runs and keeps them, in the order of the text. */
export class RunRegister {
	readonly runs: Run[] = [];
	/** Set where a hop could not be taken up. */
	incomplete = false;
	private readonly names = new Map<string, Span>();
	private readonly tags = new Map<string, Span>();
	private readonly register: ThingRegister;
	private readonly places: ReadonlyMap<string, Place>;
	private readonly cables: CableWords;
	private readonly findings: Finding[];

	constructor(register: ThingRegister, places: ReadonlyMap<string, Place>, cables: CableWords, findings: Finding[]) {
		this.register = register;
		this.places = places;
		this.cables = cables;
		this.findings = findings;
	}

	/** A `circuit`, `feed` or `bond` with its hops. */
	addRun(statement: RunStatement): void {
		if (!this.takeName(statement.name)) return;
		const start = this.findStart(statement);
		const cable = this.readCable(
			statement.cable,
			statement.name.span,
			statement.cable.length === 0 && !everyHopSaysBy(statement.links),
		);
		if (start?.protection !== undefined) this.reportSharedSlot(start.protection, statement);
		const flattener = new Flattener(this, statement.name.text);
		if (statement.links.length === 0)
			this.findings.push(
				planFinding("cable-goes-nowhere", {
					title: `${statement.name.text} goes nowhere`,
					span: statement.name.span,
					label: "no hop below it",
				}),
			);
		const others = statement.from.slice(1).flatMap((name) => this.resolveEnd(name, "from") ?? []);
		flattener.follow(statement.links, { from: start?.end, others, cable });
		this.runs.push({
			name: statement.name.text,
			label: statement.label?.text ?? statement.name.text,
			sort: statement.sort,
			...(start?.protection === undefined ? {} : { protection: start.protection }),
			hops: flattener.hops,
			fastenings: flattener.fastenings,
			roughedIn: hasWords(statement.terms, "roughed", "in"),
			span: statement.name.span,
		});
	}

	/** The `from X by CABLE, LENGTH` at the end of a declaration: a feed of one hop. */
	addSupply(statement: ThingStatement, thing: Thing): void {
		const supply = statement.supply;
		if (supply === undefined) return;
		const poles = this.resolvePoles(supply.from);
		const cable = this.readCable(supply.cable, supply.span, true);
		const flattener = new Flattener(this, thing.name);
		flattener.add(
			{ ...poles, cable },
			{ thing: thing.name, span: supply.span },
			{
				length: supply.length,
				tag: undefined,
				through: [],
				markings: [],
				loop: false,
				atMost: false,
				slack: undefined,
				bundled: undefined,
				span: supply.span,
			},
		);
		this.names.set(foldName(thing.name), statement.name.span);
		this.runs.push({
			name: thing.name,
			label: thing.label,
			sort: "feed",
			hops: flattener.hops,
			fastenings: flattener.fastenings,
			roughedIn: false,
			span: supply.span,
		});
	}

	/** Whether what feeds a thing by the end of its own line is declared so far. */
	knowsOrigin({ supply }: ThingStatement): boolean {
		return supply?.from.every((name) => resolveName(name, this.register.byName) !== undefined) ?? true;
	}

	/** Where a cable leaves from: from a box with one device in it the chain goes on from that device, as if it stood there alone. */
	leave(end: HopEnd): HopEnd {
		const thing = this.register.byName.get(foldName(end.thing));
		if (thing === undefined || end.side !== undefined || thing.blueprint.terminals.length > 0) return end;
		const [only, another] = this.register.membersOf(thing);
		return only === undefined || another !== undefined ? end : { ...end, thing: only.name };
	}

	/** Where poles that run together start; a further one that leads to nothing is left out, with a finding. */
	resolvePoles([first, ...further]: readonly NameTerm[]): { from: HopEnd | undefined; others: readonly HopEnd[] } {
		return {
			from: this.resolveEnd(first, "from"),
			others: further.flatMap((name) => this.resolveEnd(name, "from") ?? []),
		};
	}

	/** What a side of a thing carries. */
	systemOf(end: HopEnd): System | undefined {
		const thing = this.register.byName.get(foldName(end.thing));
		return thing === undefined ? undefined : (sideAt(thing, end, "onward")?.system ?? thing.said.system);
	}

	/** Whether a lug can be bolted to a thing, at the side that a chain meets. */
	hasStud(end: HopEnd, way: "onward" | "arrival"): boolean {
		const thing = this.register.byName.get(foldName(end.thing));
		return thing !== undefined && sideAt(thing, end, way)?.lone !== undefined;
	}

	/** The names of the two posts of a side for a pair. */
	polesOf(end: HopEnd): readonly string[] | undefined {
		return postsAt(this.register.byName.get(foldName(end.thing)), end);
	}

	/** The thing and side a name leads to; undefined, with a finding, when it leads to nothing. */
	resolveEnd(name: NameTerm | undefined, direction: "from" | "to"): HopEnd | undefined {
		if (name === undefined) return undefined;
		const resolved = resolveName(name, this.register.byName);
		if (resolved === undefined) {
			this.reportUnknown(name);
			return undefined;
		}
		// A side may lie within another: `sun.out.+`.
		const side = resolved.rest.length === 0 ? undefined : resolved.rest.join(".");
		const sides = resolved.thing.blueprint.sides.map((known) => known.name);
		// Which of its inputs a cable comes to is for the builder to say.
		const isOpen = direction === "to" && resolved.thing.blueprint.transfer !== undefined;
		if (side === undefined && !isOpen) return { thing: resolved.thing.name, span: name.span };
		const own = side === undefined || sides.includes(side) ? side : sideOfTerminal(resolved.thing, side)?.name;
		if (own !== undefined) return { thing: resolved.thing.name, side: own, span: name.span };
		this.findings.push(
			planFinding("side-unknown", {
				title:
					side === undefined
						? `It is not said to which input of ${resolved.thing.name} the cable goes`
						: `${resolved.thing.name} has no side \`${side}\` to go ${direction}`,
				span: name.span,
				help: tellSides(resolved.thing, side),
			}),
		);
		return undefined;
	}

	/** The tag of a cable: as said, or the run's name and a running number that is free. */
	takeTag(run: string, number: number, said: NameTerm | undefined, span: Span): string {
		const tag = said?.text ?? `${run}-${number}`;
		const first = this.tags.get(foldName(tag));
		if (first !== undefined) {
			this.findings.push(
				planFinding("tag-twice", {
					title: `Two cables have the tag ${tag}`,
					span: said?.span ?? span,
					also: [{ span: first, label: "first here" }],
				}),
			);
			return `${tag}-again`;
		}
		this.tags.set(foldName(tag), said?.span ?? span);
		return tag;
	}

	readCable(terms: readonly Term[], at: Span, needed: boolean): CableMake | undefined {
		if (terms.length > 0) return readCableMake(terms, at, this.cables, this.findings);
		if (needed)
			this.findings.push(
				planFinding("cable-missing", { title: "The cable is not said", span: at, label: "by which cable?" }),
			);
		return undefined;
	}

	findPlace(name: NameTerm): Place | undefined {
		const place = this.places.get(foldName(name.text));
		if (place === undefined)
			this.findings.push(
				planFinding("place-unknown", { title: `${name.text} is no place of this plan`, span: name.span }),
			);
		return place;
	}

	/** Makes the thing a hop arrives at, or finds the one declared before. */
	arrive(
		hop: HopStatement,
		name: NameTerm,
		run: string,
		arrival: Pick<Wiring, "system" | "arriving">,
	): HopEnd | undefined {
		if (hop.type === undefined) {
			const known = resolveName(name, this.register.byName);
			if (known === undefined && !this.register.notUnderstood.has(foldName(name.head))) {
				this.findings.push(
					planFinding("kind-missing", {
						title: `${name.text} is new here, and it is not said what it is`,
						span: name.span,
						label: "no kind",
						help: `${didYouMean(name.text, this.register.names)} Or say what it is: \`to ${name.text}: receptacle\`.`.trim(),
					}),
				);
				return undefined;
			}
			return this.resolveEnd(name, "to");
		}
		const thing = this.register.declare({
			type: hop.type,
			name,
			row: namesOf(hop.name).length,
			...(hop.label === undefined ? {} : { label: hop.label.text }),
			terms: hop.attributes,
			members: hop.members,
			stands: "hop",
			run,
			...arrival,
		});
		return thing === undefined ? undefined : { thing: thing.name, span: name.span };
	}

	/** Whether a switch loop can leave a thing: one that can be switched, or a switch that a loop has reached. */
	canLoopFrom({ thing }: HopEnd): boolean {
		const blueprint = this.register.byName.get(foldName(thing))?.blueprint;
		return blueprint?.loop !== undefined || blueprint?.sides.some(({ name }) => name === "switched") === true;
	}

	/** Whether a switch loop can arrive at a thing: a switch, or a box on the way to one. */
	canLoopTo({ thing }: HopEnd): boolean {
		const blueprint = this.register.byName.get(foldName(thing))?.blueprint;
		return blueprint?.loop !== undefined || blueprint?.face.traits.includes("junction") === true;
	}

	/** Whether a name stands for the thing a cable ends at, or for what that sits in. */
	isAt(end: HopEnd, name: NameTerm): boolean {
		const owner = this.register.byName.get(foldName(end.thing))?.owner;
		return [end.thing, owner].some((known) => known !== undefined && foldName(known) === foldName(name.text));
	}

	report(problem: Finding): void {
		this.findings.push(problem);
	}

	/** Two circuits from one breaker: most likely a slip in the slot's name. */
	private reportSharedSlot(protection: string, statement: RunStatement): void {
		const first = this.runs.find((run) => run.protection === protection);
		if (first === undefined) return;
		this.findings.push(
			planFinding("slot-shared", {
				title: `${statement.name.text} hangs on ${protection}, as ${first.name} does`,
				span: statement.from[0]?.span ?? statement.name.span,
				label: "taken",
				also: [{ span: first.span, label: "first here" }],
				marks: [protection],
			}),
		);
	}

	private reportUnknown(name: NameTerm): void {
		this.incomplete = true;
		const kind = this.register.notUnderstood.get(foldName(name.head));
		// What hangs on a thing that was not understood has been told at that thing already.
		if (kind !== undefined) return;
		this.findings.push(
			planFinding("name-unknown", {
				title: `Nothing here is called ${name.text}`,
				span: name.span,
				label: "not declared",
				help: this.runs.some((run) => foldName(run.name) === foldName(name.text))
					? `${name.text} is a run: name the thing on it to go on from.`
					: `${didYouMean(name.text, this.register.names)} Declare it, or correct the name.`.trim(),
			}),
		);
	}

	private takeName(name: NameTerm): boolean {
		const first = this.names.get(foldName(name.text));
		this.names.set(foldName(name.text), first ?? name.span);
		if (first !== undefined) this.findings.push(calledTwice("runs", name.text, name.span, first));
		return first === undefined;
	}

	/** Where a run starts: a breaker in a panel's slot, or any thing and its side. */
	private findStart(statement: RunStatement): { end: HopEnd; protection?: string } | undefined {
		const [name] = statement.from;
		if (name === undefined) return undefined;
		const [type, ...terms] = statement.terms.filter((term) => !isRoughedIn(term, statement.terms));
		const resolved = resolveName(name, this.register.byName);
		if (resolved === undefined) {
			this.reportUnknown(name);
			return undefined;
		}
		// A breaker said behind the device at the head of others takes a slot of the panel that both sit in.
		const behind = type?.kind === "name" ? this.register.panelOf(resolved.thing) : undefined;
		const panel = resolved.thing.blueprint.face.traits.includes("panel") ? resolved.thing : behind;
		if (panel === undefined) {
			if (type !== undefined && resolved.thing.said.slot !== undefined) this.reportTaken(name, resolved.thing);
			else if (type !== undefined) this.reportUnusedWords(type);
			const end = this.resolveEnd(name, "from");
			return end === undefined
				? undefined
				: { end, ...(resolved.thing.blueprint.protection === undefined ? {} : { protection: resolved.thing.name }) };
		}
		const head = behind === undefined ? undefined : resolved.thing;
		const thing = this.findSlot(panel, name, resolved.rest, { type, terms, behind: head }, statement);
		return thing === undefined ? undefined : { end: { thing: thing.name, span: name.span }, protection: thing.name };
	}

	private findSlot(
		panel: Thing,
		name: NameTerm,
		rest: readonly string[],
		{
			type,
			terms,
			behind,
		}: { readonly type: Term | undefined; readonly terms: readonly Term[]; readonly behind: Thing | undefined },
		statement: RunStatement,
	): Thing | undefined {
		if (type?.kind !== "name") {
			this.findings.push(
				rest.length === 0
					? planFinding("slot-unknown", {
							title: `${statement.name.text} comes from ${panel.name}, but it is not said from which breaker`,
							span: name.span,
							help: `Name a slot, \`from ${panel.name}.1\`, or a breaker: \`from ${panel.name} breaker 20 A\`.`,
						})
					: planFinding("slot-unknown", {
							title: `${panel.name} has no breaker in slot ${rest.join(".")}`,
							span: name.span,
							label: "empty slot",
						}),
			);
			return undefined;
		}
		const slot = rest[0] ?? this.register.nextFreeSlot(panel);
		if (slot === undefined) {
			this.findings.push(
				planFinding("panel-full", {
					title: `${panel.name} has no free slot for ${statement.name.text}`,
					span: name.span,
				}),
			);
			return undefined;
		}
		const at = { ...name, text: slot, head: slot, steps: [] };
		return this.register.declareInSlot(panel, at, type, terms, undefined, { behind });
	}

	/** A breaker said for a slot that has one already. */
	private reportTaken(name: NameTerm, breaker: Thing): void {
		this.findings.push(
			planFinding("slot-twice", {
				title: `${breaker.name} is declared, and its breaker is said once more`,
				span: name.span,
				label: "taken",
				also: [{ span: breaker.span, label: "first here" }],
			}),
		);
	}

	private reportUnusedWords(first: Term): void {
		this.findings.push(
			planFinding("attribute-unknown", {
				title: "These words say nothing about the start of a run",
				span: first.span,
				help: "A breaker is named behind a panel: `from LC breaker 20 A`.",
			}),
		);
	}
}
