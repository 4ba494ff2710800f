// The breakers of a panel: contact, slot and rating, screws on the edge that wires come to.

import type { Circuit, Part } from "../../circuit/circuit.ts";
import type { Region } from "../../kinds/kind.ts";
import { findSymbol } from "../../symbols/index.ts";
import { runsBehind } from "../runs-behind.ts";
import { shortenText, textWidth } from "../text-metrics.ts";
import type { BoxContent } from "./box-content.ts";
import type { Plate, PlateText, TerminalSpot } from "./box-plan.ts";
import { busStep, screwRadius, type } from "./dimensions.ts";
import { labelLines } from "./panel-labels.ts";
import type { PanelParts } from "./panel-parts.ts";
import type { PoleRows } from "./panel-rows.ts";

/** The width that all breakers of a panel have: the widest label's. */
export function poleWidth(circuit: Circuit, parts: PanelParts): number {
	const main = parts.main === undefined ? [] : [parts.main];
	const labels = [...parts.poles, ...main].flatMap((part) =>
		labelLines(part, circuit.plan.settings.region).map((label) => textWidth(label, noteBold) + 24),
	);
	const named = parts.poles.map(
		(part) => textWidth(circuitName(circuit, part), noteStyle) + ratingWidth(part, circuit.plan.settings.region) + 30,
	);
	return Math.ceil(Math.max(104, ...labels, ...named));
}

/** A breaker's plate with its left edge at `x`; its screws on the edge it faces with. */
export function placePole(
	content: BoxContent,
	pole: PoleRows,
	x: number,
	width: number,
	faces: "left" | "right",
): Plate {
	const { circuit } = content;
	const edge = faces === "left" ? x : x + width;
	const terminals = pole.targets.map((target): TerminalSpot => {
		const ys = target.screws.size === 0 ? [target.y] : [...target.screws.values()];
		return {
			point: target.point,
			screws: ys.map((y) => ({ x: edge, y })),
			letter: letterOf(circuit, pole.part, target.point),
			letterAt: {
				x: edge + (faces === "left" ? 1 : -1) * (screwRadius + 4),
				y: target.y + (faces === "left" ? 3.5 : -5),
			},
			anchor: faces === "left" ? "start" : "end",
		};
	});
	const isFuse = pole.part.face.oneLine === "fuse";
	const contact = isFuse ? "contact-fuse" : `contact-breaker-${circuit.plan.settings.region}`;
	// A head gives its neutral on beside its bus, so a contact there would seem to lead to the bus.
	const both = faces === "right" && opensNeutral(content, pole.part);
	const hots = pole.targets.filter((target) => {
		const point = circuit.points[target.point];
		return point?.kind === "terminal" && point.clamp !== "lead" && (point.role !== "neutral" || both);
	});
	const reach = (findSymbol(contact)?.box.width ?? 0) / 2;
	// In a main each contact ends at the leg of the bus that it feeds, the first at the one furthest in.
	const middleOf = (leg: number): number => (faces === "left" ? x + width - reach - 30 - leg * busStep : x + reach);
	const isBus = pole.part.face.traits.includes("panel");
	return {
		of: pole.part.name,
		box: { x, y: pole.top, width, height: pole.bottom - pole.top },
		terminals,
		symbols: isBus ? [] : hots.map(({ y }, leg) => ({ symbol: contact, at: { x: middleOf(leg), y } })),
		leads: isBus
			? []
			: hots.map(({ y }, leg) =>
					faces === "left"
						? [
								{ x: edge + screwRadius, y },
								{ x: middleOf(leg) - reach, y },
							]
						: [
								{ x: middleOf(leg) + reach, y },
								{ x: edge - screwRadius, y },
							],
				),
		texts: labelTexts(circuit, pole, x, width, faces),
	};
}

/** A neutral that a two-pole device opens has a contact; that of a ground-fault breaker is drawn as the wire it is to the hand. */
function opensNeutral({ circuit, links }: BoxContent, { name, face }: Part): boolean {
	const isNeutral = (point: number): boolean => circuit.points[point]?.role === "neutral";
	return (
		face.text.includes("two-pole") &&
		links.some(({ part, nature, between }) => part === name && nature === "contact" && between.every(isNeutral))
	);
}

function labelTexts(circuit: Circuit, pole: PoleRows, x: number, width: number, faces: "left" | "right"): PlateText[] {
	const lines = pole.part.face.traits.includes("panel")
		? ["lugs"]
		: labelLines(pole.part, circuit.plan.settings.region);
	// A head is named above its contacts, where the bus leaves it below.
	if (faces === "left")
		return lines
			.toReversed()
			.map((text, index) => ({ text, at: { x: x + 10, y: pole.top + 14 + index * 13 }, anchor: "start", bold: true }));
	const last = pole.bottom - 6;
	const name = circuitName(circuit, pole.part);
	const named: PlateText[] = name === "" ? [] : [{ text: name, at: { x: x + 8, y: last }, anchor: "start" }];
	const labels = lines.map(
		(text, index): PlateText => ({
			text,
			at: { x: x + width - 12, y: last - (lines.length - 1 - index) * 13 },
			anchor: "end",
			bold: true,
		}),
	);
	return [...named, ...labels];
}

/** The names of the circuits that hang on a breaker; what is too long is cut. */
function circuitName(circuit: Circuit, part: Part): string {
	const names = runsBehind(circuit.plan, part.name).map(({ name }) => name);
	return shortenText(names.join(", "), noteStyle, longestName);
}

function ratingWidth(part: Part, region: Region): number {
	return textWidth(labelLines(part, region).at(-1) ?? "", noteBold);
}

/** Load screws need no letter; the others say what they are. */
function letterOf(circuit: Circuit, part: Part, point: number): string {
	const terminal = circuit.points[point];
	if (terminal?.kind !== "terminal" || part.face.traits.includes("panel")) return "";
	if (terminal.clamp === "lead")
		return terminal.terminal === "tail" ? "tail" : terminal.side === "line" ? "N in" : "N out";
	return terminal.role === "neutral" ? "N" : "";
}

const noteStyle = { size: type.note } as const;
const noteBold = { size: type.note, bold: true } as const;
const longestName = 84;
