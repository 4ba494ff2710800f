// Tells the whole circuit in words, box by box, as a person follows it: what comes in, what is joined, what lands where.
import type { Analysis } from "../analysis/analysis.ts";
import { formatGauge } from "../base/gauge.ts";
import { formatQuantity } from "../base/quantity.ts";
import type { Cable, Circuit, Conductor, Enclosure, Part, Point } from "../circuit/circuit.ts";
import { type Energised, findEnergised } from "./energised.ts";

/** The account of a circuit as plain text, one paragraph a box; `said` and `inferred` tell who decided a landing. */
export function tellCircuit(analysis: Analysis): string {
	const { circuit } = analysis;
	const { plan } = circuit;
	const energised = findEnergised(analysis);
	const head = [
		plan.title === "" ? plan.file : plan.title,
		`  region ${plan.settings.region}, rules for a ${plan.settings.rules}, ${plan.settings.ambient} °C`,
		...(circuit.modes.length === 0
			? ["  no source, so nothing is ever live"]
			: circuit.modes.flatMap((mode) => [
					`  mode ${mode.name}: ${mode.summary}`,
					...tellEnergised(energised.get(mode.name)),
				])),
	];
	const reader = new BoxReader(circuit);
	return `${[head.join("\n"), ...circuit.enclosures.map((enclosure) => reader.tell(enclosure))].join("\n\n")}\n`;
}

function tellEnergised(energised: Energised | undefined): string[] {
	if (energised === undefined) return [];
	const { live, dead } = energised;
	return [
		...(live.length === 0 ? [] : [`    energised: ${live.join(", ")}`]),
		...(dead.length === 0 ? [] : [`    dead: ${dead.join(", ")}`]),
	];
}

/** The circuit a line a box: its devices, and the cables that come and go. */
export function listBoxes(circuit: Circuit): string {
	return circuit.enclosures
		.map((enclosure) => {
			const devices = circuit.parts.filter((part) => part.enclosure === enclosure).map((part) => part.face.text);
			const comes = circuit.cables
				.filter((cable) => cable.to === enclosure)
				.map((cable) => `${cable.tag} from ${cable.from.name}`);
			const goes = circuit.cables
				.filter((cable) => cable.from === enclosure)
				.map((cable) => `${cable.tag} to ${cable.to.name}`);
			return `${enclosure.name}: ${[...devices, ...comes, ...goes].join("; ")}\n`;
		})
		.join("");
}

class BoxReader {
	private readonly circuit: Circuit;
	private readonly landed = new Map<number, { conductor: Conductor; said: boolean; made: string }[]>();
	private readonly cables = new Map<Enclosure, Cable[]>();
	private readonly parts = new Map<Enclosure, Part[]>();
	private readonly splices = new Map<Enclosure, Point[]>();
	private readonly free = new Map<Enclosure, string[]>();

	constructor(circuit: Circuit) {
		this.circuit = circuit;
		for (const conductor of circuit.conductors)
			for (const end of conductor.ends) {
				const made = end.marked === undefined ? end.termination : `${end.termination}, marked ${end.marked}`;
				if (end.point !== undefined) add(this.landed, end.point, { conductor, said: end.said, made });
				else
					add(
						this.free,
						end.enclosure,
						`${tellConductor(conductor)} is ${end.state} (${end.said ? "said" : "inferred"})`,
					);
			}
		for (const cable of circuit.cables) for (const box of new Set([cable.from, cable.to])) add(this.cables, box, cable);
		for (const part of circuit.parts) add(this.parts, part.enclosure, part);
		for (const point of circuit.points) if (point.kind === "splice") add(this.splices, point.enclosure, point);
	}

	tell(enclosure: Enclosure): string {
		const lines = [this.tellBox(enclosure)];
		for (const cable of this.cables.get(enclosure) ?? []) lines.push(`  ${tellCable(cable, enclosure)}`);
		for (const part of this.parts.get(enclosure) ?? []) lines.push(...this.tellPart(part));
		for (const splice of this.splices.get(enclosure) ?? []) lines.push(`  ${this.tellSplice(splice)}`);
		if (enclosure.body !== undefined)
			lines.push(`  its metal: ${this.tellLanded(enclosure.body) || this.tellTies(enclosure.body)}`);
		for (const text of this.free.get(enclosure) ?? []) lines.push(`  ${text}`);
		return lines.join("\n");
	}

	private tellBox(enclosure: Enclosure): string {
		const label = enclosure.label === enclosure.name ? "" : ` "${enclosure.label}"`;
		const facts = [
			{ panel: "panel", equipment: "equipment", box: "box", open: "no box" }[enclosure.sort],
			...(enclosure.metal ? ["metal"] : []),
			...(enclosure.volume === undefined ? [] : [`${enclosure.volume.written} ${enclosure.volume.unit}`]),
			...tellFittings(enclosure),
			...(enclosure.place === undefined ? [] : [`in ${enclosure.place.label}`]),
		];
		return `${enclosure.name}${label}: ${facts.join(", ")}`;
	}

	private tellPart(part: Part): string[] {
		const wired = part.points.flatMap((point) => {
			const found = this.circuit.points[point];
			const landed = this.tellLanded(point);
			if (found?.kind !== "terminal" || (landed === "" && isQuiet(part, found.clamp))) return [];
			return [
				`    ${found.name}${found.screw === undefined ? "" : ` (${found.screw})`} <- ${landed === "" ? "nothing" : landed}`,
			];
		});
		const { text, room } = part.face;
		const takes = room === undefined ? "" : `, takes ${formatQuantity(room)} of the box`;
		const stage = part.coming ? ", not on yet" : "";
		return [`  ${part.name}: ${text}${takes}${stage}`, ...wired];
	}

	private tellSplice(splice: Point): string {
		if (splice.kind !== "splice") return "";
		const members = this.landed.get(splice.index) ?? [];
		const free = splice.ports - members.length;
		const ports = free > 0 ? `${free} free` : free === 0 ? "none free" : `${-free} too many`;
		const { rating, smallest, largest } = splice;
		const takes =
			smallest === undefined || largest === undefined ? "" : `, ${formatGauge(smallest)} to ${formatGauge(largest)}`;
		const carries = rating === undefined ? "" : `, ${rating} A`;
		return `${splice.name}: ${splice.connector} connector${carries}${takes}, ${splice.ports} ports, ${ports}: ${this.tellLanded(splice.index)}`;
	}

	private tellLanded(point: number): string {
		return (this.landed.get(point) ?? [])
			.map(({ conductor, said, made }) => `${tellConductor(conductor)} (${made}, ${said ? "said" : "inferred"})`)
			.join("; ");
	}

	/** What a metal case is joined to without a wire: the ground bar screwed to it, the machine's own ground terminal. */
	private tellTies(point: number): string {
		const ties = this.circuit.links.flatMap((link) => {
			const [one, other] = link.between;
			const far = one === point ? other : other === point ? one : undefined;
			return far === undefined ? [] : [this.circuit.points[far]?.name ?? ""];
		});
		return ties.length === 0 ? "joined to nothing" : `joined to ${ties.join(" and ")}`;
	}
}

/** What was said of a box: `2 gangs`, `clamps inside`, `blank cover`, `no partition`. */
function tellFittings({ fittings }: Enclosure): string[] {
	const { gangs, clamps, cover, partition } = fittings ?? {};
	return [
		...(gangs === undefined ? [] : [`${gangs} ${gangs === 1 ? "gang" : "gangs"}`]),
		...(clamps === undefined ? [] : [clamps === "none" ? "no clamps" : `clamps ${clamps}`]),
		...(cover === undefined ? [] : [cover === "none" ? "no cover" : `${cover} cover`]),
		...(partition === undefined ? [] : [partition ? "a partition" : "no partition"]),
	];
}

/** Bar ports and plug-on contacts with nothing on them are not worth a line. */
function isQuiet(part: Part, clamp: string): boolean {
	return (
		clamp === "stab" ||
		part.face.traits.some((trait) => trait === "neutral-bar" || trait === "ground-bar" || trait === "panel")
	);
}

const roleWords: ReadonlyMap<string, string> = new Map([
	["hot2", "second hot"],
	["hot3", "third hot"],
]);

function tellConductor(conductor: Conductor): string {
	const kind = conductor.sort === "core" ? "" : `${conductor.sort} `;
	const role = roleWords.get(conductor.role) ?? conductor.role;
	return `${kind}${conductor.name}, ${conductor.colour}, ${formatGauge(conductor.gauge)}, ${role}`;
}

function tellCable(cable: Cable, enclosure: Enclosure): string {
	const leaving = cable.from === enclosure;
	const far = leaving ? cable.to : cable.from;
	const known = cable.lengthText === "" ? "length not known" : cable.lengthText;
	const length = cable.slack === undefined ? known : `${known} and ${formatQuantity(cable.slack)} of slack at each end`;
	return `${leaving ? "goes" : "comes"} ${cable.tag}: ${cable.make}, ${length}, ${leaving ? "to" : "from"} ${far.name}`;
}

function add<Key, Value>(map: Map<Key, Value[]>, key: Key, value: Value): void {
	const list = map.get(key);
	if (list === undefined) map.set(key, [value]);
	else list.push(value);
}
