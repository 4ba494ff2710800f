// Why a mistake that no rule finds does no harm. Only what is proven here, beside the rules' silence, counts as harmless.
import { sortOfRole } from "../analysis/poles.ts";
import type { Circuit, Conductor, Part } from "../circuit/circuit.ts";
import { deviceDistance } from "../handbook/dc-protection.ts";
import { isJoinedInBoxes } from "./box-joints.ts";
import { type Differences, differencesOf, isRewiredOnly } from "./differences.ts";
import { isInterchanged } from "./interchange.ts";
import { areProtected } from "./limits.ts";
import { servicesOf } from "./services.ts";

/**
 * The reason why a circuit with a slip in it, in which no rule finds a limit broken, is as good as the one before; undefined where
 * none is known.
 */
export function findHarmless(before: Circuit, wrong: Circuit): string | undefined {
	const found = differencesOf(before, wrong);
	if (isRewiredOnly(found)) return judgeWiring(before, wrong, found);
	if (found.moved.length + found.added.length + found.removed.length + found.recoloured.length > 0 || found.isOther)
		return undefined;
	if (found.isRelinked) return judgeLegs(before, wrong, found);
	if (found.plain.length > 0) return undefined;
	if (found.faces.length > 0) return judgeFaces(wrong, found.faces);
	const isSmaller = found.rerated.every(({ device, before: rating }) => (device.rating ?? rating) < rating);
	if (found.rerated.length > 0 && isSmaller)
		return "it opens sooner than it must, and carries what is known to hang on it";
	return judgeSizes(wrong, found);
}

function judgeWiring(before: Circuit, wrong: Circuit, found: Differences): string | undefined {
	if (isJoinedInBoxes(before, found)) return "in the box it is joined with the same as before";
	if (found.added.length + found.removed.length > 0) return undefined;
	if (isInterchanged(before, wrong, "told apart"))
		return "what was exchanged is alike: either way round it is the same circuit";
	if (servicesOf(before).volts !== servicesOf(wrong).volts) return undefined;
	if (isInterchanged(before, wrong, "alike")) return "either leg will do: every load has the volts it had";
	// What a neutral or a ground does is more than to serve loads.
	if (!found.moved.every(([{ role }]) => sortOfRole(role) === "hot")) return undefined;
	if (servicesOf(before).told === servicesOf(wrong).told)
		return "every load is served through the same devices at the same volts";
	if (servicesOf(before).toldUnswitched === servicesOf(wrong).toldUnswitched)
		return "only what a switch governs is another; every wire keeps its protection";
	return undefined;
}

function judgeLegs(
	before: Circuit,
	wrong: Circuit,
	{ rerated, faces, plain, resized }: Differences,
): string | undefined {
	if (rerated.length + faces.length + plain.length + resized.length > 0) return undefined;
	const isServed = servicesOf(before).volts === servicesOf(wrong).volts;
	return isServed && isInterchanged(before, wrong, "alike")
		? "either leg will do: every load has the volts it had"
		: undefined;
}

/** A smaller device than is usual does where nothing that draws more can hang on it. */
function judgeFaces(wrong: Circuit, faces: readonly Part[]): string | undefined {
	const isEnough = faces.every(({ name, face, points }) => {
		const devices = points.flatMap((point) =>
			servicesOf(wrong)
				.devicesBefore(point)
				.filter(({ part }) => part !== name),
		);
		return devices.some(({ rating }) => rating !== undefined && rating <= (face.rating ?? 0));
	});
	return isEnough ? "the device before it opens at no more than it may carry" : undefined;
}

function judgeSizes(wrong: Circuit, { resized, rerated }: Differences): string | undefined {
	const parts = new Set(rerated.map(({ device }) => device.part));
	const behind =
		parts.size === 0
			? resized
			: wrong.conductors.filter(({ ends }) =>
					ends.some(
						({ point }) =>
							point !== undefined &&
							servicesOf(wrong)
								.devicesBefore(point)
								.some(({ part }) => parts.has(part)),
					),
				);
	const [leads, wires] = [behind.filter(isFuseLead), behind.filter((wire) => !isFuseLead(wire))];
	if (!areProtected(wrong, wires)) return undefined;
	return leads.length === 0
		? "every wire still carries what the device before it lets through"
		: "the fuse is still near enough to the post for a lead in a sheath of its own";

	/** A lead from a battery to its fuse, no longer than it may be. */
	function isFuseLead({ ends, length, role }: Conductor): boolean {
		if (
			role !== "positive" ||
			length === undefined ||
			length > deviceDistance("sheathed, at a battery terminal").metres
		)
			return false;
		return ends.some(({ point }) => point !== undefined && servicesOf(wrong).devicesBefore(point).length === 0);
	}
}
