// Chooses how the inside of an enclosure is laid out, by what is in it.
import type { BoxContent } from "./box-content.ts";
import { layOutFree } from "./box-free-layout.ts";
import { planLane } from "./box-lane.ts";
import { layOutLane } from "./box-lane-layout.ts";
import type { BoxPlan } from "./box-plan.ts";
import { addComing, comingWidth } from "./coming-plates.ts";
import { layOutPanel } from "./panel-layout.ts";
import { layOutTransfer } from "./transfer-layout.ts";

/** The inside of any enclosure: a panel's or a device's on its rows where the shape fits, else rows with devices beside them. */
export function layOutBox(content: BoxContent, leastWidth: number): BoxPlan {
	return addComing(content, layOutPresent(content, Math.max(leastWidth, comingWidth(content))));
}

/** What is there already. */
function layOutPresent(content: BoxContent, leastWidth: number): BoxPlan {
	if (content.enclosure.sort === "panel") {
		const panel = layOutPanel(content, leastWidth);
		if (panel !== undefined) return panel;
	}
	const transfer = layOutTransfer(content, leastWidth);
	if (transfer !== undefined) return transfer;
	const lane = planLane(content);
	return lane === undefined ? layOutFree(content, leastWidth) : layOutLane(content, lane, leastWidth);
}
