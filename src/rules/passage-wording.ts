// What is said of conductors that go on through a device: who hangs on it, and the joint that takes its place.
import type { Passage } from "../analysis/passages.ts";
import type { Circuit } from "../circuit/circuit.ts";

/** The parts and boxes that points belong to. */
export function namesOf({ points }: Circuit, victims: readonly number[]): readonly string[] {
	return [
		...new Set(
			victims.flatMap((index) => {
				const point = points[index];
				return point === undefined ? [] : [point.kind === "terminal" ? point.part : point.enclosure.name];
			}),
		),
	];
}

/** The line to write in place of the landings on the device. */
export function tellJoin({ part, terminal }: Passage, wires: readonly string[]): string {
	return `Join them in ${part.enclosure.name} and take one pigtail to the device: \`join ${[...wires, terminal.name].join(", ")}\`.`;
}
