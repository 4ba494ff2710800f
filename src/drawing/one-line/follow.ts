// Follows the power through a circuit: from each source over cables and devices to the loads, every cable once.
import type { Cable, Circuit, Enclosure, Part } from "../../circuit/circuit.ts";
import { type BoxNets, findBoxNets } from "./box-nets.ts";
import { type State, statesOf } from "./box-states.ts";
import { deviceStep, endSteps, isBar, sourceStep } from "./device-steps.ts";
import { findHalfSwitched } from "./half-switched.ts";
import { partLabel } from "./labels.ts";
import { powerLines, returnBoxes } from "./power-lines.ts";
import { findSeries, seriesStep } from "./series-sources.ts";
import type { Chain, DeviceStep, PartingStep, Step } from "./steps.ts";

/** A chain from each source that no other feeds, then one from anything that no source reaches. */
export function followPower(whole: Circuit): Chain[] {
	const circuit = powerLines(whole);
	const series = findSeries(whole, circuit);
	const aside = new Set(returnBoxes(whole, circuit));
	for (const [head, string] of series)
		for (const { enclosure } of string) if (enclosure.name !== head) aside.add(enclosure.name);
	const walk = new Walk(circuit, series);
	const isFar = (name: string): boolean => {
		const source = circuit.sources.find((candidate) => candidate.name === name);
		return source?.sort === "shore" || source?.sort === "utility" || source?.sort === "generator";
	};
	const bySource = circuit.sources.map((source) => circuit.partByName.get(source.part)?.enclosure.name ?? "");
	// Batteries first: their line goes on through an inverter, whose other input is then told by a flag.
	const isBattery = (name: string): boolean =>
		circuit.sources.find((source) => source.name === name)?.sort === "battery";
	const starts = [
		...bySource.filter(isBattery),
		...bySource.filter(isFar),
		...bySource,
		...circuit.enclosures.map((enclosure) => enclosure.name),
	];
	walk.foresee(bySource);
	const chains: Chain[] = [];
	for (const name of starts) {
		const enclosure = circuit.enclosureByName.get(name);
		if (enclosure === undefined || walk.seen.has(name) || aside.has(name) || !walk.concerns(enclosure)) continue;
		const fed = bySource.includes(enclosure.name);
		const chain = walk.chainFrom({ kind: "box", enclosure, incoming: undefined }, 0);
		chains.push(fed ? chain : [{ kind: "flag", place: "start", text: "fed by nothing" }, ...chain]);
	}
	return chains;
}

/** What comes next on a line: a box that a cable arrives in, a device in it, or a cable that leaves it. */
type Way =
	| { readonly kind: "box"; readonly enclosure: Enclosure; readonly incoming: Cable | undefined }
	| { readonly kind: "device"; readonly part: Part; readonly state: State; readonly box: Box }
	| { readonly kind: "cable"; readonly cable: Cable; readonly from: Enclosure };

interface Box {
	readonly enclosure: Enclosure;
	readonly incoming: Cable | undefined;
	/** Set where nothing but a joint is in the box. */
	readonly joint?: Pick<PartingStep, "label" | "names"> & Required<Pick<PartingStep, "span">>;
}

/** Partings within partings beyond this are told by a flag: no drawing could be read. */
const deepest = 200;

class Walk {
	readonly seen = new Set<string>();
	private readonly walked = new Set<Cable>();
	/** Enclosures that are drawn when cables are followed as they are written. */
	private readonly foreseen = new Set<string>();
	private readonly circuit: Circuit;
	private readonly nets: BoxNets;
	private readonly cablesAt = new Map<string, Cable[]>();
	private readonly partsIn = new Map<string, Part[]>();
	/** First cables of roughed-in circuits without a breaker of their own. */
	private readonly roughedIn: ReadonlySet<string>;

	/** Sources that stand for others in series with them, by their boxes. */
	private readonly series: ReturnType<typeof findSeries>;

	constructor(circuit: Circuit, series: ReturnType<typeof findSeries>) {
		this.circuit = circuit;
		this.series = series;
		this.nets = findBoxNets(circuit);
		for (const cable of circuit.cables) {
			if (cable.runSort === "bond") continue;
			for (const name of new Set([cable.from.name, cable.to.name])) append(this.cablesAt, name, cable);
		}
		this.roughedIn = new Set(
			circuit.plan.runs
				.filter((run) => run.roughedIn && run.protection === undefined)
				.flatMap(({ hops }) => hops.slice(0, 1).map(({ tag }) => tag)),
		);
		const halfSwitched = findHalfSwitched(circuit);
		for (const part of circuit.parts) {
			const face = halfSwitched.has(part.name) ? { ...part.face, oneLine: "receptacle-half-switched" } : part.face;
			append(this.partsIn, part.enclosure.name, face === part.face ? part : { ...part, face });
		}
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
		const parts = this.partsIn.get(enclosure.name) ?? [];
		return this.cablesAt.has(enclosure.name) || parts.some(({ points }) => points.length > 0);
	}

	/** Everything from `start` on. A line is followed in a loop, however long it is; only partings go deeper. */
	chainFrom(start: Way, depth: number): Chain {
		const steps: Step[] = [];
		for (let way: Way | undefined = start; way !== undefined; ) way = this.pass(way, steps, depth);
		return steps;
	}

	/** Adds the steps of one way, and gives the next; undefined where the line ends or parts. */
	private pass(way: Way, steps: Step[], depth: number): Way | undefined {
		switch (way.kind) {
			case "box":
				return this.passBox(way.enclosure, way.incoming, steps, depth);
			case "device":
				return this.passDevice(way.part, way.state, way.box, steps, depth);
			case "cable":
				return this.passCable(way.cable, way.from, steps);
		}
	}

	private passCable(cable: Cable, from: Enclosure, steps: Step[]): Way | undefined {
		if (this.walked.has(cable)) return undefined;
		this.walked.add(cable);
		steps.push({ kind: "cable", cables: [cable], ...(this.roughedIn.has(cable.tag) ? { roughedIn: true } : {}) });
		const to = cable.from === from ? cable.to : cable.from;
		if (!this.seen.has(to.name)) return { kind: "box", enclosure: to, incoming: cable };
		steps.push({ kind: "flag", place: "end", text: `to ${to.name}`, to: to.name });
		return undefined;
	}

	private passBox(enclosure: Enclosure, incoming: Cable | undefined, steps: Step[], depth: number): Way | undefined {
		this.seen.add(enclosure.name);
		const parts = this.partsIn.get(enclosure.name) ?? [];
		const source = parts.find((part) => part.face.traits.includes("source"));
		const isJoint = (part: Part): boolean => part.face.traits.includes("junction");
		const fed = statesOf(this.circuit, this.nets, {
			enclosure,
			incoming,
			source,
			parts: parts.filter((part) => part !== source && !isBar(part) && !isJoint(part)),
			cables: (this.cablesAt.get(enclosure.name) ?? []).filter(
				(cable) => !this.walked.has(cable) && !this.comesFromElsewhere(cable, enclosure),
			),
		});
		if (source !== undefined) {
			const step = sourceStep(this.circuit, source, incoming === undefined ? "start" : "through");
			const string = this.series.get(enclosure.name);
			steps.push(string === undefined ? step : seriesStep(step, string));
		}
		const isBare = incoming !== undefined && parts.every(isJoint);
		return this.leave(fed, isBare ? bareBox(enclosure, incoming, parts) : { enclosure, incoming }, steps, depth);
	}

	private passDevice(part: Part, state: State, box: Box, steps: Step[], depth: number): Way | undefined {
		const step = deviceStep(this.circuit, part, "through");
		const at = steps.push(step);
		const next = this.leave(state, { enclosure: box.enclosure, incoming: box.incoming }, steps, depth);
		if (next === undefined && steps.length === at) steps.splice(-1, 1, ...endSteps(this.circuit, part, step));
		return next;
	}

	/** A state in steps: what taps it, then the one thing that leads on, or where it parts. */
	private leave(state: State, box: Box, steps: Step[], depth: number): Way | undefined {
		const taps = state.taps.map((part): DeviceStep => deviceStep(this.circuit, part, "tap"));
		const ways = this.waysFrom(state, box);
		const branches = (): Chain[] =>
			ways.map((way) => this.chainFrom(way, depth + 1)).filter((branch) => branch.length > 0);
		if (state.panel !== undefined) {
			const { name, span } = state.panel;
			const names = [name, box.enclosure.name, ...this.barsIn(box.enclosure)];
			steps.push(...taps, { kind: "bus", label: partLabel(state.panel), names, branches: branches(), span });
			return undefined;
		}
		if (ways.length > 1 && depth < deepest) {
			const about = box.joint ?? { label: { name: "", lines: [] }, names: [] };
			steps.push(...taps, { kind: "split", ...about, branches: branches() });
			return undefined;
		}
		if (box.joint !== undefined) steps.push({ kind: "joint", ...box.joint });
		const last = taps.at(-1);
		if (ways.length === 0 && last !== undefined) taps.splice(-1, 1, { ...last, place: "end" });
		steps.push(...taps);
		if (ways.length < 2) return ways[0];
		steps.push({ kind: "flag", place: "end", text: `${ways.length} more lines` });
		return undefined;
	}

	/** Devices first, then cables, that of the line's own run before the others. */
	private waysFrom(state: State, box: Box): Way[] {
		const isOwn = (cable: Cable): boolean => cable.run === box.incoming?.run;
		const cables = [...state.cables.filter(isOwn), ...state.cables.filter((cable) => !isOwn(cable))];
		return [
			...state.onward.map((way): Way => ({ kind: "device", ...way, box })),
			...cables.map((cable): Way => ({ kind: "cable", cable, from: box.enclosure })),
		];
	}

	/** A cable that is written toward this enclosure is drawn from its other end, where that is drawn. */
	private comesFromElsewhere(cable: Cable, enclosure: Enclosure): boolean {
		return cable.from !== enclosure && this.foreseen.has(cable.from.name);
	}

	private barsIn(enclosure: Enclosure): string[] {
		return (this.partsIn.get(enclosure.name) ?? []).filter(isBar).map((part) => part.name);
	}
}

function bareBox(enclosure: Enclosure, incoming: Cable, parts: readonly Part[]): Box {
	const words = parts[0]?.face.text ?? (enclosure.sort === "open" ? "open end" : "box");
	const names = [enclosure.name, ...parts.map((part) => part.name)];
	return {
		enclosure,
		incoming,
		joint: { label: { name: enclosure.name, lines: [words] }, names, span: enclosure.span },
	};
}

function append<Key, Value>(lists: Map<Key, Value[]>, key: Key, value: Value): void {
	const list = lists.get(key);
	if (list === undefined) lists.set(key, [value]);
	else list.push(value);
}
