// A circuit of bare points, wires and contacts for tests of the graph alone; everything else in it is empty.
import { awg } from "../../src/base/gauge.ts";
import { buildCircuit } from "../../src/circuit/build-circuit.ts";
import type { Circuit, Conductor, Enclosure, Link } from "../../src/circuit/circuit.ts";
import { buildPlan } from "../../src/plan/build-plan.ts";
import { readText } from "../../src/syntax/read.ts";

const span = { file: "plan", line: 1, column: 1, endColumn: 1 };
const enclosure: Enclosure = { name: "e", label: "e", metal: false, sort: "box", span };

/** A contact between two points: its group, and the positions in which it is closed. */
export interface SmallContact {
	readonly between: readonly [number, number];
	readonly group: string;
	readonly positions: number;
	readonly closed: readonly number[];
}

/** A circuit of `count` points, joined by wires and contacts. */
export function smallCircuit(
	count: number,
	wires: readonly (readonly [number, number])[],
	contacts: readonly SmallContact[],
): Circuit {
	const { circuit } = buildCircuit(buildPlan(readText("", "plan").tree).plan);
	return {
		...circuit,
		points: Array.from({ length: count }, (_, index) => ({
			kind: "splice",
			index,
			name: `p${index}`,
			enclosure,
			role: "hot",
			connector: "lever",
			ports: 9,
			rating: undefined,
			smallest: undefined,
			largest: undefined,
			said: true,
			span,
		})),
		conductors: wires.map(([from, to], index): Conductor => {
			const end = (point: number) =>
				({
					point,
					state: "landed",
					enclosure,
					termination: "solid",
					marked: undefined,
					at: undefined,
					said: true,
					span,
				}) as const;
			return {
				index,
				name: `w${index}`,
				colour: "black",
				role: "hot",
				gauge: awg(12),
				material: "copper",
				stranded: false,
				insulation: 60,
				length: undefined,
				sort: "core",
				cable: undefined,
				ends: [end(from), end(to)],
				span,
			};
		}),
		links: contacts.map(
			({ between, ...contact }, index): Link => ({
				index,
				between,
				part: "k",
				nature: "contact",
				contact,
				modes: undefined,
				protection: undefined,
				span,
			}),
		),
	};
}
