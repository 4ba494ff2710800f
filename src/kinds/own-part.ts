// A part of the builder's own: from what he says of its terminals and ways to a kind that is wired like any other.
import type { Gauge } from "../base/gauge.ts";
import type { Quantity } from "../base/quantity.ts";
import type {
	Blueprint,
	Clamp,
	Kind,
	LinkSpec,
	LoadSpec,
	ProtectionSpec,
	Region,
	Role,
	SideSpec,
	TerminalSpec,
	Trait,
} from "./kind.ts";
import { deviceTerminal } from "./terminals.ts";

/** A part as it is described. Names in links and loads are those of its terminals. */
export interface PartDesign {
	readonly name: string;
	/** What the parts list and the drawing say of it. */
	readonly text: string;
	/** A word of `partSorts`, where one was said. */
	readonly sort?: string;
	/** Amperes and volts it is made for. */
	readonly rating?: number;
	readonly volts?: number;
	readonly terminals: readonly PartTerminal[];
	readonly links: readonly LinkSpec[];
	readonly loads: readonly LoadSpec[];
	readonly protection?: ProtectionSpec;
	/** Its own case; without one it sits in a box. */
	readonly case?: { readonly metal: boolean; readonly volume?: Quantity };
	/** What it takes of the room in its box. */
	readonly room?: Quantity;
}
/** A terminal as it is described; what is not said is usual for a device of the part's rating. */
export interface PartTerminal {
	readonly name: string;
	readonly also: readonly string[];
	readonly role: Role;
	/** The side of the part it belongs to: `line`, `load`, `coil`; undefined: to every side. */
	readonly side?: string;
	readonly clamp?: Clamp;
	readonly screw?: string;
	readonly capacity?: number;
	readonly smallest?: Gauge;
	readonly largest?: Gauge;
}

/** The kind that a description makes. */
export function kindOfPart(design: PartDesign): Kind {
	return {
		name: design.name,
		summary: design.text,
		example: "",
		stands: ["top", "hop", "box"],
		attributes: [],
		build: ({ region }) => blueprintOf(design, region),
	};
}

/** What a part may be to the rules and on the drawings. */
const sorts: readonly { readonly word: string; readonly wiring: string; readonly oneLine: string; trait: Trait }[] = [
	{ word: "switch", wiring: "switch-face", oneLine: "switch", trait: "switch" },
	{ word: "dimmer", wiring: "dimmer-face", oneLine: "switch", trait: "dimmer" },
	{ word: "disconnect", wiring: "disconnect-face", oneLine: "disconnect", trait: "disconnect" },
	{ word: "receptacle", wiring: "receptacle-single-face", oneLine: "receptacle", trait: "receptacle" },
	{ word: "light", wiring: "luminaire-face", oneLine: "lamp", trait: "light" },
	{ word: "fan", wiring: "fan-face", oneLine: "fan", trait: "fan" },
	{ word: "pump", wiring: "pump-face", oneLine: "pump", trait: "load" },
	{ word: "heater", wiring: "heater-face", oneLine: "heater", trait: "heater" },
	{ word: "load", wiring: "load-face", oneLine: "load", trait: "load" },
];

/** Words that say what a part is. */
export const partSorts: readonly string[] = sorts.map(({ word }) => word);

function blueprintOf(design: PartDesign, region: Region): Blueprint {
	const sort = sorts.find(({ word }) => word === design.sort);
	const outlets = design.loads.filter((load) => load.outlet).length;
	const traits = new Set<Trait>([
		...(sort === undefined ? [] : [sort.trait]),
		...(outlets > 0 ? (["receptacle"] as const) : []),
		...(sort === undefined && design.loads.length > outlets ? (["load"] as const) : []),
	]);
	const sides = sidesOf(design.terminals);
	const knots = new Set(sides.flatMap((side) => Object.values(side.knots)));
	const ground = design.terminals.find(({ role }) => role === "ground");
	const caseLink: LinkSpec[] =
		design.case?.metal === true && ground !== undefined ? [{ between: [ground.name, "^case"], nature: "solid" }] : [];
	return {
		terminals: design.terminals.map((terminal) => terminalOf(design, terminal, region, knots)),
		links: [...design.links, ...caseLink],
		loads: design.loads.map((load) => {
			const volts = load.volts ?? design.volts;
			return volts === undefined || load.outlet ? load : { ...load, volts };
		}),
		...(design.protection === undefined ? {} : { protection: design.protection }),
		sides,
		onward: (sides.find(({ name }) => onwardSides.has(name)) ?? sides[0])?.name ?? "feed",
		...(design.case === undefined ? {} : { enclosure: { sort: "equipment", ...design.case } }),
		face: {
			text: design.text,
			wiring: sort?.wiring ?? "part",
			oneLine: sort?.oneLine ?? "load",
			traits: [...traits],
			...(design.rating === undefined ? {} : { rating: design.rating }),
			...(outlets === 0 ? {} : { outlets }),
			named: true,
			...(design.room === undefined ? {} : { room: design.room }),
		},
	};
}

function terminalOf(
	design: PartDesign,
	terminal: PartTerminal,
	region: Region,
	knots: ReadonlySet<string>,
): TerminalSpec {
	const { name, role, side, clamp, screw, capacity, smallest, largest } = terminal;
	const knot = knotOf(terminal);
	const isFirst = firstOf(design.terminals, terminal) === terminal;
	const usual = deviceTerminal(region, design.rating ?? 0, name, role, isFirst && knots.has(knot) ? knot : undefined);
	const taken = new Set(design.terminals.flatMap((other) => [other.name, ...other.also]));
	return {
		...usual,
		// Its usual other names are only those that no terminal of the part has.
		also: [...terminal.also, ...(usual.also ?? []).filter((other) => !taken.has(other))],
		...(side === "line" || side === "in"
			? { side: "line" }
			: side === "load" || side === "out"
				? { side: "load" }
				: {}),
		...(clamp === undefined ? {} : { clamp, capacity: clamp === "plate" ? 2 : 1 }),
		...(screw === undefined ? {} : { screw }),
		...(capacity === undefined ? {} : { capacity }),
		...(smallest === undefined ? {} : { smallest }),
		...(largest === undefined ? {} : { largest }),
	};
}

/** Sides a chain goes on from, and those that a cable arrives at. */
const onwardSides: ReadonlySet<string> = new Set(["load", "out"]);
const arrivalSides: ReadonlySet<string> = new Set(["line", "in"]);
const roles = ["hot", "hot2", "hot3", "neutral", "ground", "positive", "negative"] as const satisfies readonly Role[];

/**
 * The sides of a part, that of an arriving cable first. On each, a core lands on that side's first terminal of its role, else on
 * one that belongs to no side, else it goes past the part.
 */
function sidesOf(terminals: readonly PartTerminal[]): SideSpec[] {
	const said = [...new Set(terminals.flatMap(({ side }) => side ?? []))].toSorted(bySide);
	const [first] = said;
	const isFedOnNoSide = terminals.some(
		({ role, side }) => side === undefined && (role === "hot" || role === "positive"),
	);
	// What is fed without a side being named is fed where a cable arrives.
	const isArrival = first !== undefined && (arrivalSides.has(first) || !(isFedOnNoSide || onwardSides.has(first)));
	const names = isArrival ? said : [said.some((side) => onwardSides.has(side)) ? "line" : "feed", ...said];
	return names.map((name) => ({
		name,
		knots: Object.fromEntries(
			roles.map((role) => {
				const own = terminals.find((terminal) => terminal.role === role && terminal.side === name);
				const shared = terminals.find((terminal) => terminal.role === role && terminal.side === undefined);
				const terminal = own ?? shared;
				return [role, terminal === undefined ? `^${role}` : knotOf(terminal)];
			}),
		),
	}));
}

/** Where a cable arrives comes first, where a chain goes on from last. */
function bySide(one: string, other: string): number {
	return rankOf(one) - rankOf(other);
}

function rankOf(side: string): number {
	return arrivalSides.has(side) ? 0 : onwardSides.has(side) ? 2 : 1;
}

/** The knot of a role on a side of the part, or on none. */
function knotOf({ role, side }: PartTerminal): string {
	return side === undefined ? role : `${side}-${role}`;
}

/** Of several terminals with one role on one side a core lands on the first by itself. */
function firstOf(terminals: readonly PartTerminal[], { role, side }: PartTerminal): PartTerminal | undefined {
	return terminals.find((terminal) => terminal.role === role && terminal.side === side);
}
