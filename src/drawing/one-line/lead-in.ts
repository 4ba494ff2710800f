// A further source of what stands on another's line, a second battery of a bus or the shore of an inverter, is drawn into it instead of ending at a flag.
import { findSymbol } from "../../symbols/index.ts";
import type { XY } from "../scene.ts";
import type { Chain, DeviceStep, PartingStep, Step } from "./steps.ts";

/** The chains without those that end at a device or a bus of another chain and can be drawn into it: these stand there as what leads in. */
export function leadIn(chains: readonly Chain[]): readonly Chain[] {
	const waiting = new Map<string, Chain>();
	for (const chain of chains) {
		const target = targetOf(chain);
		if (target !== undefined && !waiting.has(target)) waiting.set(target, chain);
	}
	if (waiting.size === 0) return chains;
	const taken = new Set<Chain>();
	const takeIn = (chain: Chain): Chain =>
		chain.map((step, index): Step => {
			if (step.kind === "split") return { ...step, branches: step.branches.map(takeIn) };
			if (step.kind !== "bus" && step.kind !== "device") return step;
			const further = waiting.get(step.names[0] ?? "");
			const own = step.kind === "bus" ? { ...step, branches: step.branches.map(takeIn) } : step;
			if (further === undefined || taken.has(further)) return own;
			if ("branches" in own ? !isPlainBus(own) : !takesIn(own, further, chain[index - 1], chain[index + 1])) return own;
			taken.add(further);
			return { ...own, further: further.slice(0, -1) };
		});
	const single = new Set(waiting.values());
	return chains.map((chain) => (single.has(chain) ? chain : takeIn(chain))).filter((chain) => !taken.has(chain));
}

/** The box that a line without partings ends at elsewhere. */
function targetOf(chain: Chain): string | undefined {
	const last = chain.at(-1);
	if (chain[0]?.kind !== "device" || chain[0].place !== "start" || last?.kind !== "flag") return undefined;
	return chain.some((step) => "branches" in step) ? undefined : last.to;
}

/** A bus by itself: a panel may have a main breaker that what leads in goes through first. */
function isPlainBus({ names }: PartingStep): boolean {
	return new Set(names).size === 1;
}

/** Whether the symbol of a device between two steps has a place left for a further line. */
function takesIn(step: DeviceStep, further: Chain, before: Step | undefined, after: Step | undefined): boolean {
	if (step.place !== "through" || step.parts.length > 1 || before?.kind !== "cable") return false;
	const last = further.at(-2);
	if (last?.kind !== "cable") return false;
	if (directSideOf(step.symbol) !== undefined)
		return before.cables[0]?.system === "dc" && last.cables[0]?.system === "ac";
	return after === undefined && converters.has(step.symbol);
}

/** Where a symbol has its direct-current side, when that is apart from the way through it. */
export function directSideOf(symbol: string): XY | undefined {
	return findSymbol(symbol)?.ports.find(({ name }) => name === "dc");
}

/** What is fed at one end of its symbol and feeds at the other. */
const converters: ReadonlySet<string> = new Set(["dc-dc", "solar-controller", "charger"]);
