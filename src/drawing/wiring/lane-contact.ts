// The contact between the two edges of a device on the rows, and the height at which each of its terminals meets it.
import type { BoxContent } from "./box-content.ts";
import type { LanePlan, LanePort } from "./box-lane.ts";
import { contactOf, contactSymbol, type FaceSymbol } from "./face-symbols.ts";
import { travellerLetter } from "./terminal-letters.ts";

/** A contact as it stands on a plate. */
export interface LaneContact extends FaceSymbol {
	readonly turn: 0 | 180;
	/** The terminal that meets it at its middle, off its own row. */
	readonly common?: number;
}

/** The contact of a device whose terminals are on these rows; undefined where none can be shown. */
export function laneContact(content: BoxContent, plan: LanePlan): LaneContact | undefined {
	const { circuit } = content;
	const rows = plan.last - plan.first + 1;
	const [left, right] = [portsOn(plan, "left"), portsOn(plan, "right")];
	// What is drawn opens poles: never the ground.
	if (rows > 2 || plan.ports.some(({ point }) => circuit.points[point]?.role === "ground")) return undefined;
	const isTraveller = ({ point }: LanePort): boolean => {
		const terminal = circuit.points[point];
		return terminal?.kind === "terminal" && travellerLetter(terminal) !== undefined;
	};
	if (!plan.ports.some(isTraveller)) {
		const contact = contactOf(plan.device, rows, circuit.plan.settings.region);
		return contact === undefined ? undefined : { ...contact, turn: 0 };
	}
	if (left.length + right.length === 3 && rows === 2) {
		const [alone] = left.length === 1 ? left : right;
		const contact = contactSymbol("contact-switch-3way");
		if (alone === undefined || contact === undefined || !isCommon(content, alone.point)) return undefined;
		return { ...contact, turn: alone.side === "left" ? 0 : 180, common: alone.point };
	}
	const contact = left.length === 2 && right.length === 2 ? contactSymbol("contact-switch-4way") : undefined;
	return contact === undefined ? undefined : { ...contact, turn: 0 };
}

/** Whether contacts lead from a terminal to two others on its device. */
function isCommon(content: BoxContent, point: number): boolean {
	return content.links.filter(({ between }) => between.includes(point)).length === 2;
}

function portsOn(plan: LanePlan, side: "left" | "right"): LanePort[] {
	return plan.ports.filter((port) => port.side === side);
}
