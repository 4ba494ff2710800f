// A plan text wired, told end by end and joint by joint, so that a test can be read beside the box.
import { expect } from "vitest";
import type { Finding } from "../../src/base/finding.ts";
import { buildCircuit } from "../../src/circuit/build-circuit.ts";
import type { Circuit, Conductor, End } from "../../src/circuit/circuit.ts";
import { buildPlan } from "../../src/plan/build-plan.ts";
import { readText } from "../../src/syntax/read.ts";

/** The circuit of a text and what was found on the way to it: `line:text under it code`. */
export function wirePlan(text: string): { circuit: Circuit; findings: readonly Finding[]; told: readonly string[] } {
	const read = readText(text, "plan");
	const planned = buildPlan(read.tree);
	const { circuit, findings: wiring } = buildCircuit(planned.plan);
	const findings = [...read.findings, ...planned.findings, ...wiring];
	const lines = text.split("\n");
	const told = findings.map(({ code, span }) => {
		const under = (lines[span.line - 1] ?? "").slice(span.column - 1, span.endColumn - 1);
		return `${span.line}:${under} ${code}`;
	});
	return { circuit, findings, told };
}

/** The circuit of a text in which nothing may be found wrong. */
export function wireRight(text: string): Circuit {
	const { circuit, told } = wirePlan(text);
	expect(told).toEqual([]);
	return circuit;
}

/** Where every conductor ends in a box: `one-1.black on b1.hot`, `one-1.red capped`. */
export function endsIn(circuit: Circuit, box: string): string[] {
	return circuit.conductors.flatMap((conductor) =>
		conductor.ends.filter((end) => end.enclosure.name === box).map((end) => tellEnd(circuit, conductor, end)),
	);
}

/** The joints in a box with their members: `b1/hot: one-1.black one-2.black b1~hot`. */
export function jointsIn(circuit: Circuit, box: string): string[] {
	return circuit.points
		.filter((point) => point.kind === "splice" && point.enclosure.name === box)
		.map((point) => `${point.name}: ${membersOf(circuit, point.index).join(" ")}`);
}

/** The conductors on a point. */
export function membersOf(circuit: Circuit, point: number): string[] {
	return circuit.conductors.flatMap(({ name, ends }) => ends.filter((end) => end.point === point).map(() => name));
}

/** The end of a conductor in a box. */
export function endOf(circuit: Circuit, conductor: string, box: string): End | undefined {
	const index = circuit.conductorByName.get(conductor);
	return index === undefined ? undefined : circuit.conductors[index]?.ends.find((end) => end.enclosure.name === box);
}

function tellEnd(circuit: Circuit, { name }: Conductor, { point, state }: End): string {
	return point === undefined ? `${name} ${state}` : `${name} on ${circuit.points[point]?.name ?? "?"}`;
}

/** An inlet and a panel, two lines. */
export const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;
