// Makes things: reads what was said of each against its kind, gives it its place, its slot and its owner, and keeps names unique.
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import { withArticle } from "../base/wording.ts";
import { findKind, kindWords } from "../kinds/index.ts";
import type { Brought, Kind, Said, System } from "../kinds/kind.ts";
import type { Member, NameTerm, Term } from "../syntax/tree.ts";
import { statementWords } from "../syntax/vocabulary.ts";
import { type AttributeValue, readAttributes } from "./attributes.ts";
import { boxFacts, hasOwnBox, tellMisplacedFittings, withTerminals } from "./box-facts.ts";
import { planFinding } from "./codes.ts";
import { foldName } from "./names.ts";
import type { OwnParts } from "./own-parts.ts";
import type { Place, Settings, Thing } from "./plan.ts";
import { shareInRow } from "./row-shares.ts";
import { SaidValues, type Wiring } from "./said-values.ts";
import type { SharedAttributes } from "./shared-words.ts";

/** A thing about to be made. */
export interface Declaration extends Wiring {
	readonly type: NameTerm;
	readonly name: NameTerm;
	/** Its full name where that is not just `name`: `LC.1A`. */
	readonly fullName?: string;
	readonly label?: string;
	readonly terms: readonly Term[];
	readonly members: readonly Member[];
	readonly stands: Kind["stands"][number];
	readonly run?: string;
	readonly owner?: Thing;
	/** How many alike are declared in one row `l1..l6`; 1 if not given. */
	readonly row?: number;
}

/** Takes in declarations and keeps the things, in the order of the text. */
export class ThingRegister {
	readonly things: Thing[] = [];
	readonly byName = new Map<string, Thing>();
	/** Folded names of what is declared at the left edge and wired to direct current. */
	private readonly direct: ReadonlySet<string>;
	private readonly membersByOwner = new Map<string, Thing[]>();
	/** Names of things that are declared but not understood, so that what rests on them is not called unknown. */
	readonly notUnderstood = new Map<string, string>();
	private readonly settings: Settings;
	private readonly places: ReadonlyMap<string, Place>;
	private readonly parts: OwnParts;
	private readonly findings: Finding[];

	constructor(
		settings: Settings,
		places: ReadonlyMap<string, Place>,
		parts: OwnParts,
		direct: ReadonlySet<string>,
		findings: Finding[],
	) {
		this.direct = direct;
		this.settings = settings;
		this.places = places;
		this.parts = parts;
		this.findings = findings;
	}

	/** Makes a thing and its members; undefined, with a finding, when its kind is not known or its name is taken. */
	declare(declaration: Declaration): Thing | undefined {
		const kind = this.findKind(declaration);
		if (kind === undefined) return undefined;
		const name = declaration.fullName ?? declaration.name.text;
		if (!this.isFree(name, declaration)) return undefined;
		const words = { at: declaration.name, label: declaration.label };
		const { values, shared } = readAttributes(kind, termsOf(declaration), words, this.findings);
		const own = shareInRow(values, shared.shares, declaration, this.findings);
		const known = new Map([...broughtValues(kind, declaration.owner), ...own]);
		const said = new SaidValues(name, this.settings, known, this.systemOf(kind, declaration), declaration);
		const made = kind.build(said);
		const usualBox = hasOwnBox(declaration.owner, made) ? this.settings.box : undefined;
		const thing: Thing = {
			name,
			label: shared.label ?? (declaration.owner === undefined ? declaration.name.text : name),
			kind,
			said,
			blueprint: withTerminals(made, shared.terminals?.clamp),
			place: this.locate(shared, declaration),
			owner: declaration.owner?.name,
			box: boxFacts(shared, said.quantity("volume"), usualBox),
			run: declaration.run,
			roughedIn: shared.roughedIn === true,
			span: declaration.name.span,
		};
		this.keep(thing);
		this.findings.push(...tellMisplacedFittings(thing, shared));
		for (const member of declaration.members)
			if (thing.blueprint.heads === true) this.declareBehind(thing, member);
			else this.declareMember(thing, member, declaration.run);
		for (const brought of thing.blueprint.brings ?? []) this.bring(thing, brought);
		return thing;
	}

	/** A breaker in a slot of a panel; undefined, with a finding, when the slot is taken. */
	declareInSlot(
		panel: Thing,
		slot: NameTerm,
		type: NameTerm,
		terms: readonly Term[],
		label: string | undefined,
		{ members = [], behind }: { readonly members?: readonly Member[]; readonly behind?: Thing | undefined } = {},
	): Thing | undefined {
		const name = `${panel.name}.${slot.text}`;
		const taken = this.byName.get(foldName(name));
		if (taken !== undefined) {
			this.findings.push(
				planFinding("slot-twice", {
					title: `Slot ${slot.text} of ${panel.name} holds two breakers`,
					span: slot.span,
					label: "taken",
					also: [{ span: taken.span, label: "first here" }],
				}),
			);
			return undefined;
		}
		return this.declare({
			type,
			name: slot,
			fullName: name,
			...(label === undefined ? {} : { label }),
			terms,
			members,
			stands: "panel",
			owner: panel,
			slot: { name: slot.text, legs: behind === undefined ? this.legsOf(panel, slot.text) : this.busesOf(behind) },
			...(behind === undefined ? {} : { behind }),
		});
	}

	/** The names of all things. */
	get names(): string[] {
		return this.things.map((thing) => thing.name);
	}

	/** Whose colours and usual devices hold. */
	get region(): Said["region"] {
		return this.settings.region;
	}

	/** The panel that a device at the head of others sits in. */
	panelOf(head: Thing): Thing | undefined {
		return head.blueprint.heads === true ? this.byName.get(foldName(head.owner ?? "")) : undefined;
	}

	/** What sits in a thing, in the order of the text. */
	membersOf(owner: Thing): readonly Thing[] {
		return this.membersByOwner.get(owner.name) ?? [];
	}

	/** The number of the next free slot of a panel; undefined when it is full. */
	nextFreeSlot(panel: Thing): string | undefined {
		const spaces = panel.said.count("spaces") ?? usualSpaces;
		const taken = new Set<number>();
		for (const thing of this.membersOf(panel)) {
			// A bar is named by itself; what is in a slot is named by the panel and the slot.
			const inSlot = thing.name.startsWith(`${panel.name}.`) ? thing.name.slice(panel.name.length + 1) : "";
			const number = Number.parseInt(inSlot, 10);
			if (Number.isNaN(number)) continue;
			taken.add(number);
			// The second pole of a two-pole breaker takes the next space on its side.
			if (thing.blueprint.protection?.poles === 2) taken.add(number + (this.busesOf(panel).length === 2 ? 2 : 1));
		}
		for (let slot = 1; slot <= spaces; slot++) if (!taken.has(slot)) return String(slot);
		return undefined;
	}

	private declareMember(owner: Thing, member: Member, run: string | undefined): void {
		// A line without a name of its own says something of the thing itself, and has been read with its attributes.
		if (member.name === undefined) return;
		const label = member.label?.text;
		if (member.role?.text === "slot") {
			if (!owner.blueprint.face.traits.includes("panel"))
				this.misplaced(member.role, `${owner.kind.name} has no slots`);
			else this.declareInSlot(owner, member.name.first, member.type, member.terms, label, { members: member.members });
			return;
		}
		const isPanel = owner.blueprint.face.traits.includes("panel");
		this.declare({
			type: member.type,
			name: member.name.first,
			...(label === undefined ? {} : { label }),
			terms: member.terms,
			members: member.members,
			stands: isPanel ? "panel" : "box",
			owner,
			...(isPanel ? { slot: { name: member.name.first.text, legs: this.busesOf(owner) } } : {}),
			...(run === undefined ? {} : { run }),
		});
	}

	/** What is said below a device at the head of others: the slots it feeds in its panel, and their neutral bar. */
	private declareBehind(head: Thing, member: Member): void {
		const panel = this.panelOf(head);
		if (member.name === undefined || panel === undefined) return;
		const label = member.label?.text;
		if (member.role?.text === "slot")
			this.declareInSlot(panel, member.name.first, member.type, member.terms, label, {
				members: member.members,
				behind: head,
			});
		else
			this.declare({
				type: member.type,
				name: member.name.first,
				...(label === undefined ? {} : { label }),
				terms: member.terms,
				members: [],
				stands: "panel",
				owner: head,
				behind: head,
			});
	}

	/** A part that comes with a thing, unless the builder declared one of its kind. */
	private bring(owner: Thing, brought: Brought): void {
		const kind = findKind(brought.kind);
		if (kind === undefined) return;
		const members = this.membersByOwner.get(owner.name) ?? [];
		const name = `${owner.name}.${brought.name}`;
		const own = brought.name === "main" ? undefined : members.find((thing) => thing.kind === kind);
		if (own !== undefined) {
			// It takes the place of the usual one, and goes by that one's name too: `LC.ground`.
			this.byName.set(foldName(name), this.byName.get(foldName(name)) ?? own);
			return;
		}
		const system = kind.system === "dc" ? "dc" : owner.said.system;
		const said = new SaidValues(name, this.settings, readBrought(brought), system, {
			slot: { name: brought.name, legs: this.busesOf(owner) },
			...(owner.blueprint.heads === true ? { behind: owner } : {}),
		});
		this.keep({
			name,
			label: name,
			kind,
			said,
			blueprint: kind.build(said),
			place: owner.place,
			owner: owner.name,
			box: undefined,
			run: undefined,
			roughedIn: false,
			span: owner.span,
		});
	}

	private keep(thing: Thing): void {
		this.things.push(thing);
		this.byName.set(foldName(thing.name), thing);
		if (thing.owner === undefined) return;
		const members = this.membersByOwner.get(thing.owner);
		if (members === undefined) this.membersByOwner.set(thing.owner, [thing]);
		else members.push(thing);
	}

	private findKind(declaration: Declaration): Kind | undefined {
		const { type, name } = declaration;
		const kind = findKind(type.text) ?? this.parts.get(foldName(type.text));
		if (kind === undefined && this.parts.has(foldName(type.text))) {
			// What is wrong with the part has been told where it is described.
			this.notUnderstood.set(foldName(declaration.fullName ?? name.text), type.text);
			return undefined;
		}
		if (kind === undefined) {
			this.notUnderstood.set(foldName(declaration.fullName ?? name.text), type.text);
			const known = [...kindWords, ...[...this.parts.values()].flatMap((part) => part?.name ?? [])];
			const words = declaration.stands === "top" ? [...known, ...statementWords] : known;
			this.findings.push(
				planFinding("kind-unknown", {
					title: `\`${type.text}\` is no kind of thing`,
					span: type.span,
					label: "not known",
					help: `${didYouMean(type.text, words)} \`ferrule explain\` lists the kinds.`.trim(),
				}),
			);
			return undefined;
		}
		if (!kind.stands.includes(declaration.stands)) {
			this.notUnderstood.set(foldName(declaration.fullName ?? name.text), type.text);
			const fitting = kind.stands.map((place) => rightWords[place](type.text));
			this.misplaced(
				type,
				`${withArticle(type.text)} cannot stand ${standsWords[declaration.stands]}`,
				`It stands ${fitting.join(", or ")}.`,
			);
			return undefined;
		}
		return kind;
	}

	/** What a thing is wired to: its kind's own system, else that of the run it stands on, of what it sits in, of the runs that meet it. */
	private systemOf(kind: Kind, { system, owner, name }: Declaration): System {
		if (kind.system === "dc") return "dc";
		return system ?? owner?.said.system ?? (this.direct.has(foldName(name.text)) ? "dc" : "ac");
	}

	private misplaced(at: NameTerm, what: string, help?: string): void {
		const title = what.charAt(0).toUpperCase() + what.slice(1);
		this.findings.push(
			planFinding("kind-misplaced", { title, span: at.span, ...(help === undefined ? {} : { help }) }),
		);
	}

	private isFree(name: string, declaration: Declaration): boolean {
		const first = this.byName.get(foldName(name));
		if (first === undefined) return true;
		this.findings.push(
			planFinding("name-twice", {
				title: `${name} is declared twice`,
				span: declaration.name.span,
				label: "again",
				also: [{ span: first.span, label: "first here" }],
			}),
		);
		return false;
	}

	private locate(shared: SharedAttributes, declaration: Declaration): Place | undefined {
		if (shared.place === undefined) return declaration.owner?.place;
		const place = this.places.get(foldName(shared.place.text));
		if (place !== undefined) return place;
		this.findings.push(
			planFinding("place-unknown", {
				title: `${declaration.name.text} is in ${shared.place.text}, which is no place of this plan`,
				span: shared.place.span,
				help: `${didYouMean(
					shared.place.text,
					[...this.places.values()].map((known) => known.name),
				)} Declare it: \`place ${shared.place.text}\`.`.trim(),
			}),
		);
		return undefined;
	}

	private busesOf(panel: Thing): readonly string[] {
		return panel.blueprint.terminals
			.filter((terminal) => terminal.name.startsWith("bus."))
			.map((terminal) => terminal.name);
	}

	/** The bus terminals a breaker in a slot plugs on to, its own leg first. Two columns: slots 1 and 2 share a leg (common practice). */
	private legsOf(panel: Thing, slot: string): readonly string[] {
		const buses = this.busesOf(panel);
		const number = Number.parseInt(slot, 10);
		const odd = Number.isNaN(number) || Math.ceil(number / 2) % 2 === 1;
		return odd ? buses : buses.toReversed();
	}
}

/** A vehicle load centre without a stated number of spaces is taken for one of this many (common practice). */
const usualSpaces = 12;

/** Everything said of a thing: behind its name, and on lines below it that name no part: `bonding screw`. */
function termsOf(declaration: Declaration): Term[] {
	const below = declaration.members.filter((member) => member.name === undefined && member.role === undefined);
	return [...declaration.terms, ...below.flatMap((member) => [member.type, ...member.terms])];
}

/** What a thing says of the part it brings, and so of one of that kind which the builder declares in its stead: a bonded neutral bar. */
function broughtValues(kind: Kind, owner: Thing | undefined): ReadonlyMap<string, AttributeValue> {
	const brought = owner?.blueprint.brings?.find((part) => part.kind === kind.name && part.name !== "main");
	return brought === undefined ? new Map() : readBrought(brought);
}

function readBrought({ values }: Brought): ReadonlyMap<string, AttributeValue> {
	return new Map(
		[...values].map(([attribute, value]): [string, AttributeValue] => [
			attribute,
			value === true
				? { sort: "flag", flag: true }
				: typeof value === "string"
					? { sort: "word", word: value }
					: { sort: "quantity", quantity: value },
		]),
	);
}

/** How a line is written there. */
const rightWords: Readonly<Record<Declaration["stands"], (kind: string) => string>> = {
	top: (kind) => `at the left edge, \`${kind} NAME\``,
	hop: (kind) => `on a hop, \`to NAME: ${kind}\``,
	box: (kind) => `indented below a box, \`NAME: ${kind}\``,
	panel: (kind) => `indented below a panel, \`NAME: ${kind}\``,
};

const standsWords = { top: "by itself", hop: "at the end of a cable", box: "in a box", panel: "in a panel" } as const;
