// Alike devices that follow one another on one make of cable are drawn once, with their number: the drawing says more in less.
import type { Chain, DeviceStep, Step } from "./steps.ts";

/** The chain with alike neighbours drawn together; `apart` holds names that a finding marks and that keep their own place. */
export function groupAlike(chain: Chain, apart: ReadonlySet<string>): Chain {
	const steps: Step[] = [];
	for (const step of chain) {
		steps.push(step);
		mergeTail(steps, apart);
	}
	return steps.map((step) =>
		step.kind === "bus" || step.kind === "split"
			? { ...step, branches: step.branches.map((branch) => groupAlike(branch, apart)) }
			: step,
	);
}

/** Merges cable, device, cable, device at the end of `steps` into one pair where they are alike. */
function mergeTail(steps: Step[], apart: ReadonlySet<string>): void {
	const [firstCable, first, secondCable, second] = steps.slice(-4);
	if (firstCable?.kind !== "cable" || secondCable?.kind !== "cable") return;
	if (first?.kind !== "device" || second?.kind !== "device" || !devicesAlike(first, second)) return;
	const cables = [...firstCable.cables, ...secondCable.cables];
	if (new Set(cables.map((cable) => cable.make)).size > 1) return;
	if ([...first.names, ...second.names, ...cables.map((cable) => cable.tag)].some((name) => apart.has(name))) return;
	steps.splice(-4, 4, { ...firstCable, cables }, mergeDevices(first, second));
}

function devicesAlike(first: DeviceStep, second: DeviceStep): boolean {
	return (
		first.place === "tap" &&
		(second.place === "tap" || second.place === "end") &&
		first.symbol === second.symbol &&
		whatOf(first) === whatOf(second)
	);
}

function mergeDevices(first: DeviceStep, second: DeviceStep): DeviceStep {
	const parts = [...first.parts, ...second.parts];
	const name = parts.length > 2 ? `${parts[0]} to ${parts.at(-1)}` : parts.join(", ");
	return {
		...second,
		label: { name, lines: [`${parts.length} x ${whatOf(second)}`] },
		parts,
		names: [...first.names, ...second.names],
		span: first.span,
	};
}

/** What a device is, without the number a group has put before it. */
function whatOf(step: DeviceStep): string {
	return (step.label.lines.at(-1) ?? "").replace(/^\d+ x /, "");
}
