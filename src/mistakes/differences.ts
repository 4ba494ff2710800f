// What a slip changed in a circuit, sorted by what can be said against it.
import type { Circuit, Conductor, GroundFaultDevice, Part, Protection } from "../circuit/circuit.ts";

/** Everything that is otherwise than before. */
export interface Differences {
	/** Conductors whose ends are on other points, as before and as now. */
	readonly moved: readonly (readonly [before: Conductor, now: Conductor])[];
	readonly added: readonly Conductor[];
	readonly removed: readonly Conductor[];
	/** Conductors of another size, length or colour, as now. */
	readonly resized: readonly Conductor[];
	readonly recoloured: readonly Conductor[];
	readonly isRelinked: boolean;
	/** Protective devices of another rating, as now, with the rating before. */
	readonly rerated: readonly { readonly device: Protection; readonly before: number }[];
	/** Parts whose face says something else, as now. */
	readonly faces: readonly Part[];
	/** Ground-fault devices that are plain ones now. */
	readonly plain: readonly GroundFaultDevice[];
	/** The plan says something else of a part. */
	readonly isResaid: boolean;
	/** Something not named here. */
	readonly isOther: boolean;
}

/** Compares a circuit with the one it was made from: what was not touched is the same object in both. */
export function differencesOf(before: Circuit, now: Circuit): Differences {
	const pairs = now.conductors.flatMap((conductor) => {
		const index = before.conductorByName.get(conductor.name);
		const old = index === undefined ? undefined : before.conductors[index];
		return old === undefined || old === conductor ? [] : [[old, conductor] as const];
	});
	return {
		moved: pairs.filter(([old, wire]) => wire.ends.some(({ point }, which) => point !== old.ends[which]?.point)),
		added: now.conductors.filter(({ name }) => !before.conductorByName.has(name)),
		removed: before.conductors.filter(({ name }) => !now.conductorByName.has(name)),
		resized: pairs.flatMap(([old, wire]) => (old.gauge !== wire.gauge || old.length !== wire.length ? [wire] : [])),
		recoloured: pairs.flatMap(([old, wire]) =>
			old.colour !== wire.colour || wire.ends.some(({ marked }, which) => marked !== old.ends[which]?.marked)
				? [wire]
				: [],
		),
		isRelinked: before.links !== now.links,
		rerated: now.protections.flatMap((device, index) => {
			const old = before.protections[index];
			return old === undefined || old === device || old.rating === undefined ? [] : [{ device, before: old.rating }];
		}),
		faces: now.parts.filter((part, index) => part !== before.parts[index]),
		plain: before.groundFaults.filter((device) => !now.groundFaults.includes(device)),
		isOther: before.protections.length !== now.protections.length || before.loads !== now.loads,
		isResaid: before.plan !== now.plan,
	};
}

/** Whether wires were moved, added or taken away, and nothing else is otherwise. */
export function isRewiredOnly(found: Differences): boolean {
	return found.recoloured.length === 0 && isAllElseAsBefore(found);
}

/** Whether wires have other colours, and nothing else is otherwise. */
export function isRecolouredOnly(found: Differences): boolean {
	return found.moved.length + found.added.length + found.removed.length === 0 && isAllElseAsBefore(found);
}

/** Whether nothing but wires and their colours is otherwise. */
function isAllElseAsBefore(found: Differences): boolean {
	return (
		found.resized.length + found.rerated.length + found.faces.length + found.plain.length === 0 &&
		!found.isRelinked &&
		!found.isResaid &&
		!found.isOther
	);
}
