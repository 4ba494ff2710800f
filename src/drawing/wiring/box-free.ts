// The order of columns in a box whose devices stand clear of the rows, their terminals facing them: one column for each
// upright wire, so that no two can ever lie on one another.
import type { Part } from "../../circuit/circuit.ts";
import { type BoxContent, farTie, isCore, pointOf, type Wire } from "./box-content.ts";
import { type Pairing, pairBySplice, planRows, type RowPlan } from "./box-rows.ts";
import { planSplicePorts, type SplicePorts } from "./splice-ports.ts";

/** One column: a screw of a device, a port of a splice, or both where a pigtail drops straight. */
export interface Slot {
	/** Index of the device; the stud on the metal of the box comes behind them. */
	readonly device?: number;
	readonly terminal?: number;
	/** The wire on that screw; undefined on an empty one. */
	readonly wire?: Wire;
	splice?: number;
}
/** A box with its devices on one side of the rows. */
export interface FreePlan {
	readonly rows: RowPlan;
	readonly side: "above" | "below";
	readonly ports: ReadonlyMap<number, SplicePorts>;
	readonly slots: readonly Slot[];
	/** Which devices have their terminals from right to left. */
	readonly mirrored: ReadonlySet<number>;
	/** Wires between two columns that are not one: each needs a track. */
	readonly jogs: readonly Wire[];
}

/** What can be chosen: devices mirrored, splices that serve no terminal first or last, rows shared by left and right. */
export interface FreeChoice {
	readonly mirrored: ReadonlySet<number>;
	readonly passing: "first" | "last";
	/** Cores of one use that land on screws share a row where the left one turns off before the right one does. */
	readonly shared: boolean;
}

/** The choices worth trying, the plainest first. */
export function freeChoices(content: BoxContent): FreeChoice[] {
	const devices = content.devices.length;
	const plain: FreeChoice = { mirrored: new Set(), passing: "first", shared: true };
	const cables = content.left.length + content.right.length;
	if (devices <= 1 && cables <= 2 && content.splices.length <= 4) return [plain];
	const choices: FreeChoice[] = [];
	for (let bits = 0; bits < 2 ** Math.min(devices, 3); bits++) {
		const mirrored = new Set([...content.devices.keys()].filter((index) => (bits >> index) % 2 === 1));
		choices.push({ ...plain, mirrored }, { ...plain, mirrored, passing: "last" });
	}
	return choices;
}

/** The columns of a box under one choice. */
export function planFree(content: BoxContent, choice: FreeChoice): FreePlan {
	const rows = planRows(content, choice.shared ? pairOnScrews(content) : pairBySplice(content));
	const branches = content.left.length > 1 || content.right.length > 1;
	const side = branches ? "above" : "below";
	const towardDevices = side === "above" ? "up" : "down";
	const ports = planSplicePorts(content, rows, () => towardDevices);
	const slots = deviceSlots(content, choice);
	const passing: number[] = [];
	for (const splice of rows.homeOf.keys())
		if (!anchor(content, splice, ports.get(splice), towardDevices, slots)) passing.push(splice);
	const blocks = passing.map((splice) => block(splice, Math.max(1, widthOf(ports.get(splice)))));
	// Those that turn off to the right below must not meet: the lowest row turns first.
	const ordered = blocks.reverse().flat();
	const all = choice.passing === "first" ? [...ordered, ...slots] : [...slots, ...ordered];
	return {
		rows,
		side,
		ports,
		slots: all,
		mirrored: choice.mirrored,
		jogs: findJogs(content, all, ports, towardDevices),
	};
}

/** Left and right pair by their splice, or as cores of one use that both land on screws. */
function pairOnScrews(content: BoxContent): Pairing {
	const bySplice = pairBySplice(content);
	const onScrew = (wire: Wire): boolean => content.circuit.points[pointOf(wire.to) ?? -1]?.kind === "terminal";
	return (left, right) =>
		bySplice(left, right) ??
		(onScrew(left) ? right.find((wire) => wire.conductor.role === left.conductor.role && onScrew(wire)) : undefined);
}

/** Terminals that are drawn: all of a device, only the used ones of a bar; a breaker's stab takes no wire. */
export function drawnTerminals(content: BoxContent, device: Part): number[] {
	const bar = device.face.traits.some(
		(trait) => trait === "neutral-bar" || trait === "ground-bar" || trait === "panel",
	);
	return device.points.filter((point) => {
		if (content.landings.has(point)) return true;
		const terminal = content.circuit.points[point];
		return !bar && terminal?.kind === "terminal" && terminal.clamp !== "stab";
	});
}

function deviceSlots(content: BoxContent, choice: FreeChoice): Slot[] {
	const slots: Slot[] = [];
	for (const [index, device] of content.devices.entries()) {
		const terminals = drawnTerminals(content, device);
		if (choice.mirrored.has(index)) terminals.reverse();
		for (const terminal of terminals) slots.push(...screwSlots(content, index, terminal));
	}
	const body = content.enclosure.body;
	if (body !== undefined && content.landings.has(body))
		slots.push(...screwSlots(content, content.devices.length, body));
	return slots;
}

/** One slot for each wire on a terminal; a jumper from it to itself has two. */
function screwSlots(content: BoxContent, device: number, terminal: number): Slot[] {
	const wires = content.landings.get(terminal) ?? [];
	return wires.length === 0 ? [{ device, terminal }] : wires.map((wire) => ({ device, terminal, wire }));
}

/**
 * Puts a splice on the column of a terminal it serves, and as many more beside it as it has upright wires.
 * False where it serves none that is free.
 */
function anchor(
	content: BoxContent,
	splice: number,
	ports: SplicePorts | undefined,
	towardDevices: "up" | "down",
	slots: Slot[],
): boolean {
	const own = new Set((content.landings.get(splice) ?? []).filter((wire) => !isCore(wire)));
	const serves = (slot: Slot | undefined): boolean =>
		slot?.wire !== undefined &&
		slot.splice === undefined &&
		own.has(slot.wire) &&
		pointOf(farTie(slot.wire, splice)) === slot.terminal;
	const first = slots.findIndex(serves);
	if (first < 0) return false;
	let last = first;
	while (serves(slots[last + 1])) last++;
	const count = last - first + 1;
	const needed = Math.max(
		ports?.[towardDevices].length ?? 0,
		ports?.[towardDevices === "up" ? "down" : "up"].length ?? 0,
	);
	for (const slot of slots.slice(first, last + 1)) slot.splice = splice;
	if (needed > count) slots.splice(last + 1, 0, ...block(splice, needed - count));
	return true;
}

function block(splice: number, count: number): Slot[] {
	return Array.from({ length: count }, () => ({ splice }));
}

function widthOf(ports: SplicePorts | undefined): number {
	return ports === undefined ? 0 : Math.max(ports.up.length, ports.down.length);
}

/** Wires that leave one column and arrive in another. */
function findJogs(
	content: BoxContent,
	slots: readonly Slot[],
	ports: ReadonlyMap<number, SplicePorts>,
	towardDevices: "up" | "down",
): Wire[] {
	const straight = new Set<Wire>();
	for (const slot of slots)
		if (
			slot.wire !== undefined &&
			slot.splice !== undefined &&
			ports.get(slot.splice)?.[towardDevices].includes(slot.wire) === true
		)
			straight.add(slot.wire);
	return content.wires.filter(
		(wire) =>
			!isCore(wire) && !straight.has(wire) && pointOf(wire.from) !== undefined && pointOf(wire.to) !== undefined,
	);
}
