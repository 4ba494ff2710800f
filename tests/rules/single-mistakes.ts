// Makes single mistakes in a correct plan: the wiring of one box written out as `at` lines, with one thing in it wrong.
import type { Circuit, Conductor } from "../../src/circuit/circuit.ts";
import { type CheckResult, checkPlan } from "../../src/pipeline.ts";

/** One mistake: what was done, and what a check of it says. */
export interface Mistake {
	readonly sort: "exchanged" | "off" | "moved" | "jumper";
	readonly what: string;
	readonly findings: CheckResult["findings"];
}

/** The plan with the wiring of one box written out as it is. */
export function writeOut(text: string, circuit: Circuit, box: string): string {
	return `${text}${tellBox(circuit, endsIn(circuit, box), box)}`;
}

/**
 * Every exchange of two ends in one box, every end taken off or put on another terminal or joint of its box, and every jumper
 * between two of them, but for those that change nothing.
 */
export function singleMistakes(text: string): readonly Mistake[] {
	const { circuit } = checkPlan(text, "plan").analysis;
	const healthy = describeNets(circuit);
	const mistakes = circuit.enclosures.flatMap(({ name }) => {
		const ends = endsIn(circuit, name);
		const spots = spotsIn(circuit, name);
		const exchanges = ends.flatMap((one, index) =>
			ends.slice(index + 1).flatMap((other) =>
				one.at === other.at
					? []
					: [
							{
								sort: "exchanged" as const,
								what: `${one.name} and ${other.name} exchanged in ${name}`,
								ends: ends.map((end) =>
									end === one ? { ...end, at: other.at } : end === other ? { ...end, at: one.at } : end,
								),
							},
						],
			),
		);
		const offs = ends
			.filter((end) => end.at !== undefined && end.terminal === undefined)
			.map((one) => ({
				sort: "off" as const,
				what: `${one.name} off in ${name}`,
				ends: ends.map((end) => (end === one ? { ...end, at: undefined, isLoose: true } : end)),
			}));
		const moves = ends
			.filter((end) => end.at !== undefined && end.terminal === undefined)
			.flatMap((one) =>
				spots
					.filter((spot) => spot !== one.at)
					.map((spot) => ({
						sort: "moved" as const,
						what: `${one.name} moved to ${nameOf(circuit, spot)} in ${name}`,
						ends: ends.map((end) => (end === one ? { ...end, at: spot } : end)),
					})),
			);
		const terminals = spots.filter((spot) => !isSplice(circuit, spot));
		const jumpers = terminals.flatMap((one, index) =>
			terminals.slice(index + 1).map((other) => {
				const names = `${nameOf(circuit, one)}, ${nameOf(circuit, other)}`;
				return {
					sort: "jumper" as const,
					what: `jumper ${names}`,
					text: `${text}at ${name}\n  link ${names} by 12 AWG black\n`,
				};
			}),
		);
		const changes = [...exchanges, ...offs, ...moves].map(({ sort, what, ends: changed }) => ({
			sort,
			what,
			text: `${text}${tellBox(circuit, changed, name)}`,
		}));
		return [...changes, ...jumpers];
	});
	return mistakes.flatMap(({ sort, what, text: wrong }) => {
		const { findings, analysis } = checkPlan(wrong, "plan");
		return describeNets(analysis.circuit) === healthy ? [] : [{ sort, what, findings }];
	});
}

/** A wire's end in a box: a core's, or that of a pigtail whose other end is on `terminal`. */
export interface WireEnd {
	readonly name: string;
	/** The point it is on; undefined for one that is capped or loose. */
	readonly at: number | undefined;
	readonly terminal?: number;
	readonly isLoose: boolean;
}

export function endsIn(circuit: Circuit, box: string): readonly WireEnd[] {
	return circuit.conductors.flatMap((conductor): WireEnd[] => {
		if (conductor.sort === "core")
			return conductor.ends
				.filter((end) => end.enclosure.name === box)
				.map((end) => ({ name: conductor.name, at: end.point, isLoose: end.state === "loose" }));
		const [first, second] = conductor.ends;
		const isPigtail = first.enclosure.name === box && isSplice(circuit, second.point);
		return isPigtail && first.point !== undefined
			? [{ name: circuit.points[first.point]?.name ?? "", at: second.point, terminal: first.point, isLoose: false }]
			: [];
	});
}

/** Points of a box on which an end can be put: of a bar the first free port. */
export function spotsIn(circuit: Circuit, box: string): readonly number[] {
	const taken = new Set(circuit.conductors.flatMap(({ ends }) => ends.map((end) => end.point)));
	return circuit.points
		.filter(({ enclosure }) => enclosure.name === box)
		.filter((point) => {
			if (point.kind !== "terminal") return true;
			if (point.capacity === 0 || point.clamp === "lead") return false;
			const part = circuit.partByName.get(point.part);
			const isBar = part?.face.traits.some((trait) => trait === "neutral-bar" || trait === "ground-bar") === true;
			return !isBar || part?.points.find((port) => !taken.has(port)) === point.index;
		})
		.map((point) => point.index);
}

/** The wiring of a box as an `at` block. */
export function tellBox(circuit: Circuit, ends: readonly WireEnd[], box: string): string {
	const lines = ends
		.filter((end) => end.terminal === undefined && !isSplice(circuit, end.at))
		.map(
			(end) =>
				`${end.name} ${end.at === undefined ? (end.isLoose ? "loose" : "capped") : `on ${nameOf(circuit, end.at)}`}`,
		);
	const joints = circuit.points
		.filter((point) => point.kind === "splice" && point.enclosure.name === box)
		.map((splice) => ends.filter((end) => end.at === splice.index))
		.flatMap((members) =>
			members.length > 1
				? [`join ${members.map((end) => end.name).join(", ")}`]
				: members.filter((end) => end.terminal === undefined).map((end) => `${end.name} capped`),
		);
	const links = ends
		.filter((end) => end.terminal !== undefined && end.at !== undefined && !isSplice(circuit, end.at))
		.map(
			(end) =>
				`link ${end.name}, ${nameOf(circuit, end.at ?? 0)} by 12 AWG ${circuit.points[end.terminal ?? 0]?.role === "ground" ? "green" : "black"}`,
		);
	const all = [...lines, ...joints, ...links];
	return all.length === 0 ? "" : `at ${box}\n${all.map((line) => `  ${line}\n`).join("")}`;
}

function isSplice(circuit: Circuit, point: number | undefined): boolean {
	return point !== undefined && circuit.points[point]?.kind === "splice";
}

function nameOf(circuit: Circuit, point: number): string {
	return circuit.points[point]?.name ?? "";
}

/**
 * The circuit as it works: which terminals are always joined. Ports of a bar are one, and so are the two sides of a contact
 * that only opens and closes; which wire joins them does not matter, what its colour is does.
 */
function describeNets(circuit: Circuit): string {
	const nets = new Map<number, Set<number>>(circuit.points.map(({ index }) => [index, new Set([index])]));
	const join = (one: number, other: number): void => {
		const [first, second] = [nets.get(one), nets.get(other)];
		if (first === undefined || second === undefined || first === second) return;
		for (const point of second) {
			first.add(point);
			nets.set(point, first);
		}
	};
	for (const { ends } of circuit.conductors)
		if (ends[0].point !== undefined && ends[1].point !== undefined) join(ends[0].point, ends[1].point);
	for (const link of circuit.links) if (link.nature === "solid" && link.modes === undefined) join(...link.between);
	const told = [...new Set(nets.values())].map((net) => {
		const terminals = [...net].flatMap((index) => describePoint(circuit, index)).toSorted();
		const colours = circuit.conductors.filter((conductor) => touches(conductor, net)).map(({ colour }) => colour);
		return `${terminals.join(" ")} (${[...new Set(colours)].toSorted().join(" ")})`;
	});
	return told.toSorted().join("\n");
}

function touches({ ends, sort }: Conductor, net: ReadonlySet<number>): boolean {
	return sort === "core" && ends.some(({ point }) => point !== undefined && net.has(point));
}

function describePoint(circuit: Circuit, index: number): string[] {
	const point = circuit.points[index];
	if (point === undefined || point.kind === "splice") return [];
	if (point.kind === "body") return [point.name];
	const part = circuit.partByName.get(point.part);
	const traits = part?.face.traits ?? [];
	if (traits.includes("neutral-bar") || traits.includes("ground-bar"))
		return point.terminal === "1" ? [point.part] : [];
	if (!traits.includes("switch") && !traits.includes("disconnect")) return [point.name];
	// Which of its two terminals is fed makes no difference to a contact that only opens and closes.
	const contacts = circuit.links.filter((link) => link.part === point.part && link.between.includes(index));
	const [only] = contacts;
	const isPlain =
		only !== undefined && contacts.length === 1 && only.contact?.closed.length === 1 && pairsWith(circuit, only);
	return [isPlain ? `${point.part}.contact.${only.index}` : point.name];
}

/** Whether both terminals of a contact are on no other contact. */
function pairsWith(circuit: Circuit, contact: Circuit["links"][number]): boolean {
	return !circuit.links.some(
		(link) => link !== contact && link.between.some((point) => contact.between.includes(point)),
	);
}
