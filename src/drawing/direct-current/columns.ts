// Which functional column each box of the direct-current sheet stands in, and which way each run is drawn: away from the battery.
import type { Part } from "../../circuit/circuit.ts";
import type { DirectNet, DirectNode, Run } from "./net.ts";

/** Battery, fuse or shunt, switch, bus, protection, equipment, load: from left to right. */
export type Column = 0 | 1 | 2 | 3 | 4 | 5 | 6;

/** The order of a net. */
export interface NetOrder {
	/** The batteries that the sheet is read from. */
	readonly bank: readonly string[];
	/** Undefined for what stands wherever its conductors are: stubs, flags and the ends of sheaths. */
	readonly columnOf: (node: string) => Column | undefined;
	/** The end of a run that is drawn on its left. */
	readonly startOf: (run: Run) => 0 | 1;
	/** The end of a run that power comes from: that on its left, but where the run is turned. */
	readonly sourceOf: (run: Run) => 0 | 1;
	/** The wall of its box that an end of a run is drawn at. */
	readonly sideOf: (run: Run, end: 0 | 1) => "left" | "right";
}

/** How far power has come from the battery: to the first bus, from there to what it feeds, and beyond. */
type Reach = "bank" | "distribution" | "branch";

interface Found {
	readonly depth: number;
	readonly column: Column | undefined;
	/** What follows is reached so. */
	readonly onward: Reach;
}

/** Orders a net from its largest bank of batteries outward; what no battery reaches, from its first box. */
export function orderNet({ nodes }: DirectNet): NetOrder {
	const byName = new Map(nodes.map((node) => [node.name, node]));
	const found = new Map<string, Found>();
	const isAny = (): boolean => true;
	/** Nearest first, so that what several ways lead to is reached by the shortest. */
	const spread = (starts: readonly string[], passes: (run: Run) => boolean): void => {
		const waiting: string[][] = [];
		const wait = (name: string): void => {
			const depth = found.get(name)?.depth ?? 0;
			const there = waiting[depth];
			if (there === undefined) waiting[depth] = [name];
			else there.push(name);
		};
		for (const name of starts) wait(name);
		for (let depth = 0; depth < waiting.length; depth++)
			for (const name of waiting[depth] ?? []) {
				const node = byName.get(name);
				const here = found.get(name);
				if (node === undefined || here === undefined || node.kind === "stub" || node.kind === "flag") continue;
				for (const { run, end, isControl } of node.meetings) {
					const next = byName.get(run.ends[end === 0 ? 1 : 0]);
					if (isControl || next === undefined || found.has(next.name) || !passes(run)) continue;
					found.set(next.name, reachNode(next, here));
					wait(next.name);
				}
			}
	};
	/** All that a battery reaches through nothing but fuses, switches and buses: batteries among it are of one bank. */
	const reachOf = (start: string): ReadonlySet<string> => {
		const seen = new Set([start]);
		for (const name of seen)
			for (const { run, end } of byName.get(name)?.meetings ?? []) {
				const next = byName.get(run.ends[end === 0 ? 1 : 0]);
				if (next !== undefined && carriesPower(run) && (isBattery(next) || isPassage(next))) seen.add(next.name);
			}
		return seen;
	};
	const banks: { readonly names: readonly string[]; readonly size: number }[] = [];
	const banked = new Set<string>();
	for (const { name } of nodes.filter(isBattery)) {
		if (banked.has(name)) continue;
		const reach = reachOf(name);
		const names = nodes.filter((node) => reach.has(node.name) && isBattery(node)).map((node) => node.name);
		banks.push({ names: [name, ...names.filter((one) => one !== name)], size: reach.size });
		for (const one of names) banked.add(one);
	}
	// The bank that shares out to most is the one the sheet is read from; a starter battery comes after it, wherever it is written.
	banks.sort((one, other) => other.size - one.size);
	for (const bank of [...banks.map(({ names }) => names), ...nodes.map(({ name }) => [name])]) {
		if (bank.some((name) => found.has(name))) continue;
		for (const name of bank) {
			const node = byName.get(name);
			if (node !== undefined) found.set(name, reachNode(node, { depth: -1, column: undefined, onward: "bank" }));
		}
		spread(bank, carriesPower);
		// What only negatives and grounds lead to comes after what power leads to.
		spread([...found.keys()], isAny);
	}
	const rankOf = (name: string): readonly [number, number] => {
		const { depth = 0, column } = found.get(name) ?? {};
		return [column ?? -1, depth];
	};
	const isStub = (node: DirectNode | undefined): boolean => node?.kind === "stub" || node?.kind === "flag";
	const isFar = (name: string): boolean => (found.get(name)?.column ?? 0) === 6;
	const worked = new Map(
		nodes.flatMap(({ meetings }) =>
			meetings.flatMap(({ run, end, isControl }) => (isControl ? [[run, end] as const] : [])),
		),
	);
	const startOf = (run: Run): 0 | 1 => {
		const coil = worked.get(run);
		if (coil !== undefined) return coil === 0 ? 1 : 0;
		const [from, to] = run.ends;
		const [one, other] = [byName.get(from), byName.get(to)];
		// A core enters its sheath where that starts and leaves it where that ends, wherever it comes from.
		const end = run.sort !== "tail" ? undefined : one?.kind === "sheath" ? 0 : 1;
		const whole =
			end === undefined ? undefined : byName.get(run.ends[end])?.meetings.find((one) => one.run.sort !== "tail");
		if (end !== undefined && whole !== undefined && whole.run !== run)
			return startOf(whole.run) === whole.end ? (end === 0 ? 1 : 0) : end;
		// A stub stands behind what it hangs on, whichever way that is written; before it at a load, behind which nothing is.
		if (isStub(one)) return isFar(to) ? 0 : 1;
		if (isStub(other)) return isFar(from) ? 1 : 0;
		const [first, second] = [rankOf(from), rankOf(to)];
		if (first[0] >= 0 && second[0] >= 0 && first[0] !== second[0]) return first[0] < second[0] ? 0 : 1;
		return first[1] <= second[1] ? 0 : 1;
	};
	const columns = behindSheaths(
		nodes,
		(name) => found.get(name)?.column,
		startOf,
		(run) => worked.has(run),
	);
	return {
		bank: banks[0]?.names ?? [],
		columnOf: (name) => columns.get(name) ?? found.get(name)?.column,
		startOf,
		sourceOf: startOf,
		sideOf: (run, end) => (startOf(run) === end ? "right" : "left"),
	};
}

/**
 * The columns of what must stand further right than its own: behind a sheath, one of whose cores comes from there. Without them no layers
 * are found in which everything stands behind what leads to it.
 */
function behindSheaths(
	nodes: readonly DirectNode[],
	columnOf: (node: string) => Column | undefined,
	startOf: (run: Run) => 0 | 1,
	leadsBack: (run: Run) => boolean,
): ReadonlyMap<string, Column> {
	const least = new Map<string, Column>();
	if (!nodes.some(({ kind }) => kind === "sheath")) return least;
	const byName = new Map(nodes.map((node) => [node.name, node]));
	const waiting = nodes.map(({ name }) => name);
	for (let name = waiting.pop(); name !== undefined; name = waiting.pop()) {
		const column = least.get(name) ?? columnOf(name);
		if (column === undefined) continue;
		for (const { run, end } of byName.get(name)?.meetings ?? []) {
			const next = run.ends[end === 0 ? 1 : 0];
			if (startOf(run) !== end || leadsBack(run) || column <= (least.get(next) ?? columnOf(next) ?? -1)) continue;
			least.set(next, column);
			waiting.push(next);
		}
	}
	for (const name of least.keys()) if (byName.get(name)?.kind !== "box") least.delete(name);
	return least;
}

/** Whether it brings power, and is no return. */
export function carriesPower({ conductors, sort }: Run): boolean {
	return sort === "strap" || conductors.some(({ role }) => role !== "negative" && role !== "ground");
}

/**
 * The order with some nodes, and all runs that meet them, turned round: they stand left of what feeds them. Runs of `returns` leave the
 * right walls of both their boxes.
 */
export function turnOrder(order: NetOrder, turned: ReadonlySet<string>, returns: ReadonlySet<Run>): NetOrder {
	const startOf = (run: Run): 0 | 1 => {
		const source = order.sourceOf(run);
		if (!run.ends.some((name) => turned.has(name))) return source;
		return source === 0 ? 1 : 0;
	};
	return {
		bank: order.bank,
		columnOf: (name) => (turned.has(name) ? undefined : order.columnOf(name)),
		startOf,
		sourceOf: order.sourceOf,
		sideOf: (run, end) => (startOf(run) === end || returns.has(run) ? "right" : "left"),
	};
}

function reachNode(node: DirectNode, { depth, onward }: Found): Found {
	if (node.kind !== "box") return { depth: depth + 1, column: undefined, onward };
	const parts = node.stock.parts;
	const has = (test: (part: Part) => boolean): boolean => parts.some(test);
	const at = (column: Column, next: Reach): Found => ({ depth: depth + 1, column, onward: next });
	if (isBattery(node)) return onward === "bank" ? at(0, "bank") : at(6, "branch");
	if (has(({ face }) => face.oneLine === "bus"))
		return at(onward === "branch" ? 6 : onward === "bank" ? 3 : 4, further(onward));
	if (has(({ face }) => face.traits.includes("panel") || isEquipment(face)))
		return at(onward === "branch" ? 6 : 5, "branch");
	const inLine = parts.length === 1 && has(({ face }) => inLineTraits.some((trait) => face.traits.includes(trait)));
	if (!inLine || onward === "branch") return at(6, "branch");
	if (onward === "distribution") return at(4, onward);
	return at(has(({ face }) => face.traits.includes("breaker") || face.oneLine === "shunt") ? 1 : 2, onward);
}

/** Whether current goes through it to where it is made or used. */
function isPassage(node: DirectNode): boolean {
	if (node.kind !== "box") return node.kind === "sheath";
	return node.stock.parts.every(
		({ face }) => face.oneLine === "bus" || inLineTraits.some((trait) => face.traits.includes(trait)),
	);
}

function further(reach: Reach): Reach {
	return reach === "bank" ? "distribution" : reach;
}

function isBattery(node: DirectNode): boolean {
	return node.kind === "box" && node.stock.parts.some(({ face }) => face.oneLine === "battery");
}

/** What makes or converts power. */
function isEquipment({ oneLine, traits }: Part["face"]): boolean {
	return traits.includes("source") || converters.has(oneLine);
}

const inLineTraits = ["breaker", "disconnect", "switch", "junction"] as const;
const converters: ReadonlySet<string> = new Set(["dc-dc", "charger", "solar-controller", "solar-array", "alternator"]);
