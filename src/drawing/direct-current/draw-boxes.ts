// Draws every node of the direct-current net, what hangs on it before itself, so that its terminals can stand as far apart as that needs.
import type { BoxDrawing } from "../wiring/sheet-box.ts";
import type { NetOrder } from "./columns.ts";
import type { DirectBox, Extent, SidedMeeting } from "./direct-box.ts";
import { drawNode } from "./draw-node.ts";
import type { DirectNet, DirectNode } from "./net.ts";

/** The box of each node, by its name. `sheetOf` names the wiring sheet that draws a box too; empty where none does. */
export function drawBoxes(
	drawing: BoxDrawing,
	{ nodes }: DirectNet,
	order: NetOrder,
	sheetOf: (box: string) => string,
): Map<string, DirectBox> {
	const byName = new Map(nodes.map((node) => [node.name, node]));
	const boxes = new Map<string, DirectBox>();
	const begun = new Set<string>();
	const sided = ({ meetings }: DirectNode): SidedMeeting[] =>
		meetings.map((meeting) => ({
			...meeting,
			side: order.sideOf(meeting.run, meeting.end),
			isOnward: order.sourceOf(meeting.run) === meeting.end,
		}));
	const farName = ({ run, end }: SidedMeeting): string => run.ends[end === 0 ? 1 : 0];
	const extentOf = (meeting: SidedMeeting, depth = 0): Extent => {
		const box = meeting.isOnward ? boxes.get(farName(meeting)) : undefined;
		const dock = box?.docks.find((one) => one.meeting.run === meeting.run && one.meeting.end !== meeting.end);
		// The studs of a bus follow what is joined to them, and so does all that hangs on it.
		if (box === undefined || dock === undefined || box.freeBelow !== undefined || depth > deepest) return nothing;
		// What works the coil of a relay that stands elsewhere leads away.
		if (dock.meeting.isControl && box.docks.some((one) => !one.meeting.isControl))
			return { ...nothing, reaches: new Set([farName(meeting)]) };
		let [above, below] = [dock.at.y, box.height - dock.at.y];
		const isPassage = box.docks.length === 2;
		const near = isPassage ? { above, below } : nothing.near;
		const reaches = new Set([farName(meeting)]);
		for (const next of box.docks) {
			if (!next.meeting.isOnward) continue;
			const reach = extentOf(next.meeting, depth + 1);
			above = Math.max(above, reach.above + dock.at.y - next.at.y);
			below = Math.max(below, reach.below + next.at.y - dock.at.y);
			for (const name of reach.reaches) reaches.add(name);
		}
		return { above, below, near, reaches };
	};
	// Drawn with a list, not by recursion: a chain of loads may be long.
	const waiting = nodes.toReversed();
	for (let node = waiting.pop(); node !== undefined; node = waiting.pop()) {
		if (boxes.has(node.name)) continue;
		const meetings = sided(node);
		const before = begun.has(node.name)
			? []
			: meetings
					.filter(({ isOnward }) => isOnward)
					.flatMap((meeting) => byName.get(farName(meeting)) ?? [])
					.filter(({ name }) => !boxes.has(name) && !begun.has(name));
		begun.add(node.name);
		if (before.length > 0) waiting.push(node, ...before);
		else
			boxes.set(
				node.name,
				drawNode(drawing, node, meetings, sheetOf, (meeting) => extentOf(meeting)),
			);
	}
	return boxes;
}

const nothing: Extent = { above: 0, below: 0, near: { above: 0, below: 0 }, reaches: new Set() };
/** Farther along a chain nothing moves the terminals it starts from. */
const deepest = 12;
