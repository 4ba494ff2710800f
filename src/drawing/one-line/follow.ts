// Follows the power through a circuit: from each source over cables and devices to the loads, every cable once.
import type { Cable, Circuit, Enclosure, Part } from "../../circuit/circuit.ts";
import { type BoxNets, findBoxNets } from "./box-nets.ts";
import { breakerLabel, oneLineSymbolOf, partLabel, sourceLabel } from "./labels.ts";
import type { Chain, DeviceStep, Step } from "./steps.ts";

/** A chain from each source that no other feeds, then one from anything that no source reaches. */
export function followPower(circuit: Circuit): Chain[] {
	const walk = new Walk(circuit);
	const isFar = (name: string): boolean => {
		const source = circuit.sources.find((candidate) => candidate.name === name);
		return source?.sort === "shore" || source?.sort === "generator";
	};
	const bySource = circuit.sources.map((source) => circuit.partByName.get(source.part)?.enclosure.name ?? "");
	const starts = [...bySource.filter(isFar), ...bySource, ...circuit.enclosures.map((enclosure) => enclosure.name)];
	walk.foresee(starts.slice(0, 2 * bySource.length));
	const chains: Chain[] = [];
	for (const name of starts) {
		const enclosure = circuit.enclosureByName.get(name);
		if (enclosure === undefined || walk.seen.has(enclosure.name) || !walk.concerns(enclosure)) continue;
		const fed = circuit.sources.some((source) => circuit.partByName.get(source.part)?.enclosure === enclosure);
		const chain = walk.enter(enclosure, undefined);
		chains.push(fed ? chain : [{ kind: "flag", place: "start", text: "fed by nothing" }, ...chain]);
	}
	return chains;
}

/** One state of a box: potentials that closed contacts join, what taps them, and what leads on. */
interface State {
	readonly nets: Set<number>;
	readonly taps: Part[];
	/** Parts whose contacts lead to a further state. */
	readonly onward: { readonly part: Part; readonly state: State }[];
	readonly cables: Cable[];
	/** A panel's bus lies on this potential. */
	panel?: Part;
}

class Walk {
	readonly seen = new Set<string>();
	private readonly walked = new Set<Cable>();
	/** Enclosures that are drawn when cables are followed as they are written. */
	private readonly foreseen = new Set<string>();
	private readonly circuit: Circuit;
	private readonly nets: BoxNets;
	private readonly cablesAt = new Map<string, Cable[]>();
	private readonly partsIn = new Map<string, Part[]>();

	constructor(circuit: Circuit) {
		this.circuit = circuit;
		this.nets = findBoxNets(circuit);
		for (const cable of circuit.cables) {
			if (cable.runSort === "bond") continue;
			for (const name of new Set([cable.from.name, cable.to.name])) append(this.cablesAt, name, cable);
		}
		for (const part of circuit.parts) append(this.partsIn, part.enclosure.name, part);
	}

	/** Finds what is reached from `starts` along cables in the direction they are written. */
	foresee(starts: readonly string[]): void {
		const waiting = [...starts];
		for (const name of waiting) {
			if (this.foreseen.has(name)) continue;
			this.foreseen.add(name);
			for (const cable of this.cablesAt.get(name) ?? []) if (cable.from.name === name) waiting.push(cable.to.name);
		}
	}

	/** Whether power could pass here: a frame or an earth rod is no part of a one-line diagram. */
	concerns(enclosure: Enclosure): boolean {
		return this.cablesAt.has(enclosure.name) || this.partsIn.has(enclosure.name);
	}

	/** Everything from `enclosure` on, fed by `incoming`. */
	enter(enclosure: Enclosure, incoming: Cable | undefined): Chain {
		this.seen.add(enclosure.name);
		const parts = this.partsIn.get(enclosure.name) ?? [];
		const source = parts.find((part) => part.face.traits.includes("source"));
		const root = this.states(enclosure, incoming, source);
		const steps: Step[] = source === undefined ? [] : [this.sourceStep(source, incoming)];
		const rest = this.tell(root, enclosure, incoming);
		const isBare = parts.every((part) => part.face.traits.includes("junction"));
		if (!isBare || incoming === undefined) return [...steps, ...rest];
		const about = {
			label: { name: enclosure.name, lines: [junctionWords(enclosure, parts)] },
			names: [enclosure.name, ...parts.map((part) => part.name)],
			span: enclosure.span,
		};
		const [first, ...others] = rest;
		if (first?.kind === "split") return [...steps, { ...first, ...about }, ...others];
		return [...steps, { kind: "joint", ...about }, ...rest];
	}

	private states(enclosure: Enclosure, incoming: Cable | undefined, source: Part | undefined): State {
		const parts = (this.partsIn.get(enclosure.name) ?? []).filter(
			(part) => part !== source && !isBar(part) && !part.face.traits.includes("junction"),
		);
		const root: State = { nets: this.rootNets(enclosure, incoming, source), taps: [], onward: [], cables: [] };
		const states = [root];
		const placed = new Set<string>();
		for (const state of states) {
			for (const part of parts) {
				const meets = part.points.some((point) => state.nets.has(this.nets.netOf(point)));
				if (!meets) continue;
				if (part.face.traits.includes("panel")) {
					state.panel = part;
					placed.add(part.name);
				}
				if (placed.has(part.name)) continue;
				placed.add(part.name);
				const beyond = this.beyond(part, state, states);
				if (beyond.size === 0) state.taps.push(part);
				else {
					const next: State = { nets: beyond, taps: [], onward: [], cables: [] };
					state.onward.push({ part, state: next });
					states.push(next);
				}
			}
		}
		// A device that nothing hot reaches is still there: beside the line, where the finding points.
		root.taps.push(...parts.filter((part) => !placed.has(part.name)));
		for (const cable of this.cablesAt.get(enclosure.name) ?? [])
			if (!this.walked.has(cable) && !this.comesFromElsewhere(cable, enclosure))
				(states[this.deepest(cable, enclosure, states)] ?? root).cables.push(cable);
		return root;
	}

	private rootNets(enclosure: Enclosure, incoming: Cable | undefined, source: Part | undefined): Set<number> {
		const points = incoming === undefined ? [] : this.hotPoints(incoming, enclosure);
		const own = this.circuit.sources.find((candidate) => candidate.part === source?.name)?.hot ?? [];
		return new Set([...points, ...own].map((point) => this.nets.netOf(point)));
	}

	/** Where the contacts of a part lead from a state, but for where the walk has been. */
	private beyond(part: Part, state: State, states: readonly State[]): Set<number> {
		const beyond = new Set<number>();
		for (const net of state.nets)
			for (const { link, to } of this.nets.contactsFrom(net))
				if (link.part === part.name && !states.some((known) => known.nets.has(to))) beyond.add(to);
		return beyond;
	}

	/** The state furthest from the feed that a hot conductor of the cable leaves from; the first when none does. */
	private deepest(cable: Cable, enclosure: Enclosure, states: readonly State[]): number {
		const nets = this.hotPoints(cable, enclosure).map((point) => this.nets.netOf(point));
		return states.findLastIndex((state) => nets.some((net) => state.nets.has(net)));
	}

	private hotPoints(cable: Cable, enclosure: Enclosure): number[] {
		return cable.conductors.flatMap((index) => {
			const conductor = this.circuit.conductors[index];
			if (conductor === undefined || !hotRoles.has(conductor.role)) return [];
			return conductor.ends.flatMap((end) =>
				end.enclosure === enclosure && end.point !== undefined ? [end.point] : [],
			);
		});
	}

	/** A state in steps: what taps it, then the one thing that leads on, or where it parts. */
	private tell(state: State, enclosure: Enclosure, incoming: Cable | undefined): Chain {
		const cables = [...state.cables].sort(
			(one, other) => Number(other.run === incoming?.run) - Number(one.run === incoming?.run),
		);
		const ways = [
			...state.onward.map((way) => () => this.through(way.part, way.state, enclosure, incoming)),
			...cables.map((cable) => () => this.along(cable, enclosure)),
		];
		const taps = state.taps.map((part): DeviceStep => this.device(part, "tap"));
		if (state.panel !== undefined) {
			const { name, lines } = partLabel(state.panel);
			return [
				...taps,
				{
					kind: "bus",
					label: { name, lines },
					names: [name, enclosure.name, ...this.bars(enclosure)],
					branches: ways.map((way) => way()),
					span: state.panel.span,
				},
			];
		}
		const [only] = ways;
		if (only === undefined) return endsWith(taps);
		if (ways.length === 1) return [...taps, ...only()];
		const branches = ways.map((way) => way());
		return [...taps, { kind: "split", label: { name: "", lines: [] }, names: [], branches }];
	}

	private through(part: Part, state: State, enclosure: Enclosure, incoming: Cable | undefined): Chain {
		const on = this.tell(state, enclosure, incoming);
		const step = this.device(part, "through");
		if (on.length > 0) return [step, ...on];
		const { traits } = part.face;
		// A ground-fault receptacle at the end of its line: the sensor, then its own outlets.
		if (traits.includes("receptacle")) {
			const outlet = { ...part, face: { ...part.face, oneLine: "receptacle", traits: ["receptacle"] as const } };
			const symbol = oneLineSymbolOf(outlet, this.region);
			return [step, { ...step, place: "end", symbol, label: { name: "", lines: [] }, names: [] }];
		}
		return [
			traits.includes("breaker") ? { ...step, label: { ...step.label, lines: [...step.label.lines, "spare"] } } : step,
		];
	}

	/** A cable that is written toward this enclosure is drawn from its other end, where that is drawn. */
	private comesFromElsewhere(cable: Cable, enclosure: Enclosure): boolean {
		return cable.from !== enclosure && this.foreseen.has(cable.from.name);
	}

	private along(cable: Cable, from: Enclosure): Chain {
		if (this.walked.has(cable)) return [];
		this.walked.add(cable);
		const to = cable.from === from ? cable.to : cable.from;
		if (this.seen.has(to.name))
			return [
				{ kind: "cable", cables: [cable] },
				{ kind: "flag", place: "end", text: `to ${to.name}` },
			];
		return [{ kind: "cable", cables: [cable] }, ...this.enter(to, cable)];
	}

	private device(part: Part, place: DeviceStep["place"]): DeviceStep {
		const isBreaker = part.face.traits.includes("breaker");
		return {
			kind: "device",
			place,
			symbol: oneLineSymbolOf(part, this.region),
			parts: [part.name],
			label: isBreaker ? breakerLabel(part, this.circuit) : partLabel(part),
			names:
				part.enclosure.name === part.name || part.owner !== undefined ? [part.name] : [part.name, part.enclosure.name],
			span: part.span,
		};
	}

	private sourceStep(part: Part, incoming: Cable | undefined): DeviceStep {
		const source = this.circuit.sources.find((candidate) => candidate.part === part.name);
		const symbol = oneLineSymbolOf(part, this.region);
		const label = source === undefined ? partLabel(part) : sourceLabel(part, source);
		return {
			kind: "device",
			place: incoming === undefined ? "start" : "through",
			symbol,
			label,
			parts: [part.name],
			names: [part.name, part.enclosure.name],
			span: part.span,
		};
	}

	private bars(enclosure: Enclosure): string[] {
		return (this.partsIn.get(enclosure.name) ?? []).filter(isBar).map((part) => part.name);
	}

	private get region(): "us" | "iec" {
		return this.circuit.plan.settings.region;
	}
}

const hotRoles: ReadonlySet<string> = new Set(["hot", "hot2", "positive"]);

function isBar(part: Part): boolean {
	const { traits } = part.face;
	return (
		traits.includes("neutral-bar") ||
		traits.includes("ground-bar") ||
		(traits.includes("hot-bus") && !traits.includes("panel"))
	);
}

function junctionWords(enclosure: Enclosure, parts: readonly Part[]): string {
	return parts[0]?.face.text ?? (enclosure.sort === "open" ? "open end" : "box");
}

/** The last of what taps a line that goes nowhere ends it. */
function endsWith(taps: readonly DeviceStep[]): Chain {
	const last = taps.at(-1);
	return last === undefined ? [] : [...taps.slice(0, -1), { ...last, place: "end" }];
}

function append<Key, Value>(lists: Map<Key, Value[]>, key: Key, value: Value): void {
	const list = lists.get(key);
	if (list === undefined) lists.set(key, [value]);
	else list.push(value);
}
