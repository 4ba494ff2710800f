// The letters beside a terminal's screw: H N G by its use, 1 2 3 4 on what opens, as they are marked on devices.
import type { Circuit, Part, Terminal } from "../../circuit/circuit.ts";
import type { Region, Role } from "../../kinds/kind.ts";
import { shortenText } from "../text-metrics.ts";
import { type } from "./dimensions.ts";

/** The letter of a device's terminal; on a part of the builder's own, the name it goes by. */
export function terminalLetter(circuit: Circuit, device: Part, terminal: Terminal): string {
	if (device.face.named === true) return shortenText(terminal.terminal, letterStyle, longestName);
	const marked = relayLetters.get(terminal.terminal);
	if (marked !== undefined) return marked;
	const traveller = travellerLetter(terminal);
	if (traveller !== undefined) return traveller;
	const letters = roleLetters[circuit.plan.settings.region];
	if (device.face.traits.includes("transfer"))
		return `${/^[12](?=\.)/.exec(terminal.terminal)?.[0] ?? ""}${letters[terminal.role]}`;
	if (isOpener(device) && terminal.role !== "ground") return numberOf(circuit, device, terminal);
	const letter = letters[terminal.role];
	const sides = device.points.filter((point) => {
		const other = circuit.points[point];
		return other?.kind === "terminal" && other.side === terminal.side && hotRoles.has(other.role);
	});
	if (terminal.role === "hot" && sides.length > 1) return `${letter}1`;
	const neutrals = terminal.role === "neutral" ? neutralsBeside(circuit, device, terminal) : [];
	return neutrals.length > 1 ? `${letter}${neutrals.indexOf(terminal.index) + 1}` : letter;
}

/** The neutrals on one side of a device: two where the tab between its halves is broken off. */
function neutralsBeside(circuit: Circuit, device: Part, { side }: Terminal): readonly number[] {
	const isBar = device.face.traits.includes("neutral-bar");
	return device.points.filter((point) => {
		const other = circuit.points[point];
		return !isBar && other?.kind === "terminal" && other.side === side && other.role === "neutral";
	});
}

/** `C` for the common of a switch with travellers, `1` and `2` for those; undefined on every other terminal. */
export function travellerLetter({ terminal }: Terminal): string | undefined {
	return terminal === "common" ? "C" : travellerName.exec(terminal)?.[1];
}

/** `LINE` and `LOAD` where a device has both sides, `IN` and `OUT` on what passes power through or chooses it, else nothing. */
export function sideText(circuit: Circuit, device: Part, side: "line" | "load"): string | undefined {
	// The names of own terminals tell their sides better than these words.
	if (device.face.named === true) return undefined;
	const sides = new Set(device.points.map((point) => sideOf(circuit, point)));
	if (!sides.has("line") || !sides.has("load")) return undefined;
	if (device.face.traits.some((trait) => trait === "source" || trait === "transfer"))
		return side === "line" ? "IN" : "OUT";
	return side === "line" ? "LINE" : "LOAD";
}

/** The side of a terminal, where it has one. */
export function sideOf(circuit: Circuit, point: number): "line" | "load" | undefined {
	const found = circuit.points[point];
	return found?.kind === "terminal" ? found.side : undefined;
}

/** Whether a device's contacts are numbered: switches and disconnects. */
function isOpener(device: Part): boolean {
	return device.face.traits.some((trait) => trait === "switch" || trait === "disconnect");
}

/** Poles count 1-2, 3-4 from line to load, as contacts are numbered by the trade. */
function numberOf(circuit: Circuit, device: Part, terminal: Terminal): string {
	const side = terminal.side ?? "line";
	const alike = device.points.filter((point) => {
		const other = circuit.points[point];
		return other?.kind === "terminal" && other.role !== "ground" && (other.side ?? "line") === side;
	});
	const pole = Math.max(0, alike.indexOf(terminal.index));
	return String(pole * 2 + (side === "line" ? 1 : 2));
}

/** The ends of a relay's coil and its throws, as they are marked on it. */
const relayLetters: ReadonlyMap<string, string> = new Map([
	["A1", "A1"],
	["A2", "A2"],
	["normally-closed", "NC"],
	["normally-open", "NO"],
]);
const letterStyle = { size: type.letter, bold: true } as const;
/** A name is cut so that a plate with several stays small. */
const longestName = 84;
const travellerName = /^(?:traveller|line|load)\.([12])$/;
const hotRoles: ReadonlySet<Role> = new Set(["hot", "hot2", "hot3"]);
const roleLetters: Record<Region, Record<Role, string>> = {
	us: { hot: "H", hot2: "H2", hot3: "H3", neutral: "N", ground: "G", positive: "+", negative: "-" },
	iec: { hot: "L", hot2: "L2", hot3: "L3", neutral: "N", ground: "PE", positive: "+", negative: "-" },
};
