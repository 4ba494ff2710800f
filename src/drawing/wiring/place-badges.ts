// Puts each finding's number beside the first of its marks that is drawn, on free ground.
import type { NumberedFinding } from "../../base/finding.ts";
import type { Circuit } from "../../circuit/circuit.ts";
import { type Box, boxHolds } from "../bounds.ts";
import { badgeMarks, badgeRadius } from "../furniture/badge.ts";
import type { Group, XY } from "../scene.ts";
import type { TakenBoxes } from "./taken-boxes.ts";

/** Where a name is drawn, and the ground its number should stay on. */
export interface Anchor {
	readonly at: XY;
	readonly within?: Box;
}

/** One group a finding, for those that mark something on this sheet. `anchors` tells where each name is drawn. */
export function placeBadges(
	circuit: Circuit,
	findings: readonly NumberedFinding[],
	anchors: ReadonlyMap<string, Anchor>,
	taken: TakenBoxes,
): Group[] {
	return findings.flatMap((finding): Group[] => {
		const anchor = finding.marks.flatMap((mark) => anchorsFor(circuit, mark, anchors))[0];
		if (anchor === undefined) return [];
		const at = freeSpot(anchor, taken);
		taken.take(boxAround(at));
		return [
			{
				name: `finding ${finding.number}`,
				sort: "object",
				label: `${finding.number}${finding.accepted === undefined ? "" : `, ${finding.level} accepted`}: ${finding.title}`,
				span: finding.span,
				marks: badgeMarks(finding.number, at, finding.level, finding.accepted !== undefined),
			},
		];
	});
}

/** Where a name is drawn; a point that is not drawn by itself stands for its part or its enclosure. */
function anchorsFor(circuit: Circuit, name: string, anchors: ReadonlyMap<string, Anchor>): Anchor[] {
	const point = circuit.points[circuit.pointByName.get(name) ?? -1];
	const conductor = circuit.conductors[circuit.conductorByName.get(name) ?? -1];
	const names = [
		name,
		...(point?.kind === "terminal" ? [point.part] : []),
		...(point === undefined ? [] : [point.enclosure.name]),
		...(conductor?.cable === undefined ? [] : [conductor.cable]),
		circuit.partByName.get(name)?.enclosure.name ?? "",
	];
	return names.flatMap((candidate) => anchors.get(candidate) ?? []);
}

/**
 * The free spot nearest to a place, looked for in rings: on the ground it belongs to if there is one not too far off, else on any.
 * Where all is taken the number stands on the place itself.
 */
function freeSpot({ at: anchor, within }: Anchor, taken: TakenBoxes): XY {
	let outside: XY | undefined;
	for (let ring = 15; ring <= farthest; ring += 7) {
		for (const turn of turns) {
			const at = { x: anchor.x + Math.round(ring * Math.cos(turn)), y: anchor.y + Math.round(ring * Math.sin(turn)) };
			const box = boxAround(at);
			const isHome = within === undefined || boxHolds(within, box);
			if ((isHome || outside === undefined) && taken.isFree(box)) {
				if (isHome) return at;
				outside = at;
			}
		}
		if (outside !== undefined && ring > farInside) return outside;
	}
	return outside ?? anchor;
}

function boxAround(at: XY): Box {
	const reach = badgeRadius + 1.5;
	return { x: at.x - reach, y: at.y - reach, width: 2 * reach, height: 2 * reach };
}

/** Up and right first, where nothing usually leaves from. */
const turns: readonly number[] = [-45, -90, 0, -135, 45, 180, 135, 90, -20, -70, -110, -160, 20, 160, 70, 110].map(
	(degrees) => (degrees * Math.PI) / 180,
);
const farthest = 140;
const farInside = 90;
