// Why a mistake that no rule finds does no harm. Only what is proven here, beside the rules' silence, counts as harmless.
import { analyse } from "../analysis/analysis.ts";
import { sortOfRole } from "../analysis/poles.ts";
import type { Circuit, Conductor, GroundFaultDevice, Link, Part } from "../circuit/circuit.ts";
import { deviceDistance } from "../handbook/dc-protection.ts";
import { groundFaultPlacesFor } from "../handbook/ground-fault-places.ts";
import { receptacleRatings } from "../handbook/receptacles.ts";
import { isSoundBond } from "./bonds.ts";
import { isJoinedInBoxes } from "./box-joints.ts";
import { judgeColours } from "./colours.ts";
import { type Differences, differencesOf, isRecolouredOnly, isRewiredOnly } from "./differences.ts";
import { isInterchanged } from "./interchange.ts";
import { areProtected, comesBackElsewhere, endsOnDevice, isNearItsFuses, mayCarry } from "./limits.ts";
import { isJoint, joinedPoints } from "./nets.ts";
import { servicesOf } from "./services.ts";

/**
 * The reason why a circuit with a slip in it, in which no rule finds a limit broken, is as good as the one before; undefined where
 * none is known.
 */
export function findHarmless(before: Circuit, wrong: Circuit): string | undefined {
	const found = differencesOf(before, wrong);
	if (isRewiredOnly(found)) return judgeWiring(before, wrong, found);
	if (isRecolouredOnly(found)) return judgeColours(wrong, found.recoloured);
	if (found.moved.length + found.added.length + found.removed.length + found.recoloured.length > 0) return undefined;
	if (found.isResaid) return undefined;
	if (found.plain.length > 0) return judgePlain(before, wrong, found.plain);
	if (found.isOther) return judgeProtection(before, wrong);
	if (found.isRelinked) return judgeLegs(before, wrong);
	if (found.faces.length > 0) return judgeFaces(wrong, found.faces);
	const isSmaller = found.rerated.every(({ device, before: rating }) => (device.rating ?? rating) < rating);
	if (found.rerated.length > 0 && isSmaller)
		return "it opens sooner than it must, and carries what is known to hang on it";
	return judgeSizes(wrong, found);
}

function judgeWiring(before: Circuit, wrong: Circuit, found: Differences): string | undefined {
	const { moved, added, removed } = found;
	if (isJoinedInBoxes(before, wrong)) return "in the box it is joined with the same as before";
	if (moved.length + added.length === 0 && removed.every(({ ends }) => ends.some(({ point }) => point === undefined)))
		return "it was a spare: its other end is on nothing";
	if (removed.length > 0)
		return moved.length + added.length === 0 && removed.every((wire) => comesBackElsewhere(before, wrong, wire))
			? "what came back by it comes back by another lead that bears it"
			: undefined;
	if (moved.length === 0 && added.every((jumper) => leadsNowhere(before, jumper)))
		return "nothing that the plan tells of feeds one of the two, and nothing else joins them";
	if ([...moved.map(([wire]) => wire), ...added].every(({ role }) => role === "neutral") && isPastSwitch(before, wrong))
		return "a switch still opens the hot, and nothing asks that the neutral opens with it";
	if (added.length === 0) {
		if (isInterchanged(before, wrong, "told apart"))
			return "what was exchanged is alike: either way round it is the same circuit";
		if (servicesOf(before).volts === servicesOf(wrong).volts && isInterchanged(before, wrong, "alike"))
			return "either leg will do: every load has the volts it had";
	}
	// What a neutral or a ground does is more than to serve loads.
	if (![...moved.map(([wire]) => wire), ...added].every(({ role }) => sortOfRole(role) === "hot")) return undefined;
	const [now, then] = [servicesOf(wrong), servicesOf(before)];
	if (added.length === 0 && now.tell("nothing") === then.tell("nothing"))
		return "every load is served through the same devices at the same volts";
	if (now.tell("switches") === then.tell("switches"))
		return "only what a switch governs is another; every wire keeps its protection";
	return judgeProtection(before, wrong);
}

/** Whether all is joined as before but that the neutral contact of a plain switch which opens a hot as well is joined past. */
function isPastSwitch(before: Circuit, wrong: Circuit): boolean {
	const own = before.links.filter((link) => isNeutralOfSwitch(before, link, before.links));
	if (own.length === 0) return false;
	const [then, now] = [before, wrong].map((circuit) =>
		joinedPoints(circuit.points.length, function* () {
			for (const { ends } of circuit.conductors) yield [ends[0].point, ends[1].point];
			for (const link of circuit.links) if (isJoint(circuit, link)) yield link.between;
			for (const { between } of own) yield between;
		}),
	);
	return then !== undefined && now !== undefined && then.every((net, point) => net === now[point]);
}

/** Whether a jumper goes to a point that nothing live reaches, nor the ground, in any mode. */
function leadsNowhere(before: Circuit, { ends }: Conductor): boolean {
	const { states } = analyse(before);
	return ends.some(
		({ point }) =>
			point !== undefined &&
			states.every(({ poles, direct }) => poles.countAt(point) === 0 && (direct?.poles.countAt(point) ?? 0) === 0),
	);
}

/** One device fewer on the way does no harm where the next before it still suits every wire. */
function judgeProtection(before: Circuit, wrong: Circuit): string | undefined {
	const [then, now] = [servicesOf(before), servicesOf(wrong)];
	if (then.tell("protection") !== now.tell("protection")) return undefined;
	// Another device than the one that the label names is no device fewer.
	const isFewer = now.devicesOfLoads.every((devices, load) =>
		[...devices].every((device) => then.devicesOfLoads[load]?.has(device) === true),
	);
	if (!isFewer) return undefined;
	const hots = wrong.conductors.filter(
		({ role, index }) => sortOfRole(role) === "hot" && !isUnprotected(before, before.conductors[index]),
	);
	if (areProtected(wrong, hots)) return "the device before it still suits every wire";
	return hots.every((hot) => areProtected(wrong, [hot]) || isNearItsFuses(wrong, hot))
		? "the fuses behind it are near enough to the post for leads in a sheath"
		: undefined;
}

/** What had no device before the slip is no fault of it: a lead from a post to its fuse. */
function isUnprotected(before: Circuit, conductor: Conductor | undefined): boolean {
	return conductor !== undefined && !areProtected(before, [conductor]);
}

function judgeLegs(before: Circuit, wrong: Circuit): string | undefined {
	const isOpener = (link: Link): boolean =>
		wrong.links[link.index]?.nature === "solid" && isNeutralOfSwitch(before, link, wrong.links);
	if (before.links.every((link, index) => link === wrong.links[index] || isOpener(link)))
		return "it still opens the hot, and nothing asks that the neutral opens with it";
	const isServed = servicesOf(before).volts === servicesOf(wrong).volts;
	return isServed && isInterchanged(before, wrong, "alike")
		? "either leg will do: every load has the volts it had"
		: undefined;
}

/** Whether a link is the contact in the neutral of a plain switch that opens a hot besides. */
function isNeutralOfSwitch(before: Circuit, old: Link, now: readonly Link[]): boolean {
	const { part, contact, modes, protection } = old;
	const roleAt = (point: number): string => before.points[point]?.role ?? "ground";
	return (
		contact !== undefined &&
		protection === undefined &&
		modes === undefined &&
		![...before.groundFaults, ...before.protections].some((device) => device.part === part) &&
		old.between.every((point) => roleAt(point) === "neutral") &&
		now.some(
			(link) =>
				link.part === part && link.contact !== undefined && link.between.every((point) => roleAt(point) === "hot"),
		)
	);
}

/** A device that may carry less than before does where less comes, or where a table lets it stand. */
function judgeFaces(wrong: Circuit, faces: readonly Part[]): string | undefined {
	if (faces.every((part) => fitsCircuit(wrong, part))) return "such outlets fit their circuit by its table";
	return faces.every((part) => mayCarry(wrong, part)) ? "it may still carry all that can come through it" : undefined;
}

/** Whether an outlet of two or more has one of the ratings that the North American table gives for its circuit. */
function fitsCircuit(circuit: Circuit, { points, face: { rating, outlets = 0 } }: Part): boolean {
	if (circuit.plan.settings.region !== "us" || rating === undefined || outlets < 2) return false;
	const ahead = points.flatMap((point) =>
		servicesOf(circuit)
			.devicesBefore(point)
			.flatMap((device) => device.rating ?? []),
	);
	const row = receptacleRatings.rows.find((each) => each.circuit === Math.min(...ahead));
	return row?.receptacles.includes(rating) === true;
}

/** Ground-fault protection that nobody asks for, as the plan tells of its places, or that another device gives as well. */
function judgePlain(before: Circuit, wrong: Circuit, plain: readonly GroundFaultDevice[]): string | undefined {
	const { states } = analyse(wrong);
	const bare = plain.flatMap((device) => {
		const behind = new Set(servicesOf(before).loadsBehind(device.part));
		return before.loads.filter(
			(load) =>
				(load.part === device.part || behind.has(load)) &&
				!states.every(({ coverage }) => load.between.every((point) => coverage.isCovered(point, device.trip))),
		);
	});
	if (bare.length === 0) return "another device opens at as little leakage for all that hangs behind it";
	const { region, rules } = before.plan.settings;
	const isAsked = bare.some(({ part }) => {
		const found = before.partByName.get(part);
		const place = found?.enclosure.place;
		const isDry =
			place === undefined || (place.basin === undefined && [...place.traits].every((trait) => trait === "dry"));
		const sort = (["receptacle", "light"] as const).find((trait) => found?.face.traits.includes(trait));
		const asking = sort === undefined ? [] : groundFaultPlacesFor(region, rules, sort);
		return asking.some((row) => row.place === "everywhere" || !isDry);
	});
	return isAsked ? undefined : "nothing behind it stands where ground-fault protection is asked for";
}

function judgeSizes(wrong: Circuit, { resized, rerated }: Differences): string | undefined {
	if (rerated.length === 0 && resized.every((wire) => isSoundBond(wrong, wire)))
		return "it carries a fault only until the fuse opens, and is as thick as a bond has to be";
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

	/** A lead from a battery, or from a bus, to a device at its end that suits it, no longer than it may be. */
	function isFuseLead(conductor: Conductor): boolean {
		const { index, ends, length, role } = conductor;
		if (role !== "positive" || length === undefined) return false;
		if (length <= deviceDistance("sheathed or enclosed").metres && endsOnDevice(wrong, conductor)) return true;
		if (length > deviceDistance("sheathed, at a battery terminal").metres) return false;
		// Behind the fuses of several batteries no single device stands before it, and yet it is no lead to a fuse.
		const through = servicesOf(wrong).mostThrough(
			ends.map(({ point }) => point),
			({ by }) => by.kind === "conductor" && by.index === index,
		);
		return through === undefined;
	}
}
