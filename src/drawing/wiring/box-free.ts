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
	/** On which side of the rows the devices stand. */
	readonly side: "above" | "below";
	/** Cores of one use that land on screws share a row where the left one turns off before the right one does. */
	readonly shared: boolean;
}

/** Where devices usually stand: below the rows, unless more cables leave there. */
export function usualSide(content: BoxContent): "above" | "below" {
	return content.left.length > 1 || content.right.length > 1 ? "above" : "below";
}

/** The choices worth trying on one side, the plainest first; all of them where a simple box is not simple to lay out. */
export function freeChoices(content: BoxContent, side: FreeChoice["side"], all: boolean): FreeChoice[] {
	const devices = content.devices.length;
	const plain: FreeChoice = { mirrored: new Set(), passing: "first", side, shared: true };
	const cables = content.left.length + content.right.length;
	if (!all && devices <= 1 && cables <= 2 && content.splices.length <= 4) return [plain];
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
	const { side } = choice;
	const towardDevices = side === "above" ? "up" : "down";
	const ports = planSplicePorts(content, rows, () => towardDevices);
	const slots = deviceSlots(content, choice);
	const passing: number[] = [];
	for (const splice of rows.homeOf.keys())
		if (!anchor(content, splice, { rows, ports, towardDevices, slots })) passing.push(splice);
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
 * Puts a splice over the columns of terminals it serves, as many in a row as it can reach without lying in another's way, and
 * adds columns for what is left. False where it serves no terminal.
 */
function anchor(content: BoxContent, splice: number, plan: Anchoring): boolean {
	const { slots, ports, towardDevices } = plan;
	const served = slots.flatMap((slot, index) => (spliceServing(content, slot) === splice ? [index] : []));
	let best: number[] = [];
	let run: number[] = [];
	for (const index of served) {
		const last = run.at(-1);
		const clear =
			last !== undefined && slots.slice(last + 1, index).every((slot) => !liesInWay(content, splice, slot, plan));
		run = clear ? [...run, index] : [index];
		if (run.length > best.length) best = run;
	}
	const last = best.at(-1);
	if (last === undefined) return false;
	for (const index of best) {
		const slot = slots[index];
		if (slot !== undefined) slot.splice = splice;
	}
	const own = ports.get(splice);
	const needed = Math.max(own?.[towardDevices].length ?? 0, own?.[opposite(towardDevices)].length ?? 0);
	if (needed > best.length) slots.splice(last + 1, 0, ...block(splice, needed - best.length));
	return true;
}

interface Anchoring {
	readonly rows: RowPlan;
	readonly ports: ReadonlyMap<number, SplicePorts>;
	readonly towardDevices: "up" | "down";
	readonly slots: Slot[];
}

/** The splice at the other end of the wire on a screw; undefined where there is none. */
function spliceServing(content: BoxContent, { wire, terminal }: Slot): number | undefined {
	if (wire === undefined || terminal === undefined || isCore(wire)) return undefined;
	const other = pointOf(farTie(wire, terminal));
	return other !== undefined && content.circuit.points[other]?.kind === "splice" ? other : undefined;
}

/** Whether an upright wire at a slot would run through a splice that reaches over it. */
function liesInWay(
	content: BoxContent,
	splice: number,
	slot: Slot,
	{ rows, ports, towardDevices }: Anchoring,
): boolean {
	const home = rows.homeOf.get(splice) ?? 0;
	const isBeyond = (row: number | undefined): boolean =>
		row !== undefined && (towardDevices === "down" ? row < home : row > home);
	if (slot.wire !== undefined && isCore(slot.wire)) return isBeyond(rows.rowOf.get(slot.wire));
	const other = slot.splice ?? spliceServing(content, slot);
	if (other === undefined) return false;
	if (other === splice || isBeyond(rows.homeOf.get(other))) return other !== splice;
	return (ports.get(other)?.[opposite(towardDevices)].length ?? 0) > 0;
}

function opposite(way: "up" | "down"): "up" | "down" {
	return way === "up" ? "down" : "up";
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
