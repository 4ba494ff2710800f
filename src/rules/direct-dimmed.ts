// What is fed through a dimmer for direct current and is not made for it: all but lights.
import type { Analysis, ModeState } from "../analysis/analysis.ts";
import { joinWhere } from "../analysis/joined-sets.ts";
import { isHot, notABond, sortOfRole } from "../analysis/poles.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import type { Part } from "../circuit/circuit.ts";

/** A finding for each such thing, whichever pole the dimmer stands in. */
export function findDimmed(
	{ circuit }: Analysis,
	{ direct }: ModeState,
	dimmers: ReadonlyMap<string, Part>,
	slots: Pick<Finding, "code" | "why" | "basis">,
): Finding[] {
	if (direct === undefined || direct.contradicted.length > 0) return [];
	const { network, poles } = direct;
	const undimmed = joinWhere(
		network,
		(edge) => notABond(edge) && (edge.by.kind === "conductor" || !dimmers.has(edge.by.link.part)),
	);
	const setsOf = (hot: boolean): ReadonlySet<number> =>
		new Set(
			poles.poles.flatMap((pole) => (isHot(pole.role) === hot ? pole.points.map((at) => undimmed.find(at)) : [])),
		);
	const [positives, negatives] = [setsOf(true), setsOf(false)];
	return circuit.loads.flatMap(({ part: name, between: [positive, negative] }): Finding[] => {
		const part = certain(circuit.partByName.get(name), name);
		if (circuit.points[positive]?.role !== "positive" || bearsDimming(part)) return [];
		const point = [positive, negative].find((candidate) => {
			const sort = sortOfRole(circuit.points[candidate]?.role ?? "positive");
			return (
				poles.sortsAt(candidate).has(sort) && !(sort === "hot" ? positives : negatives).has(undimmed.find(candidate))
			);
		});
		if (point === undefined) return [];
		const way = poles.reachOf(point, point === positive ? "hot" : "neutral");
		const on = way?.edgesTo(point).flatMap(({ by }) => (by.kind === "link" ? [by.link.part] : [])) ?? [];
		const dimmer = dimmers.get(on.findLast((at) => dimmers.has(at)) ?? "");
		if (dimmer === undefined) return [];
		return [
			finding({
				...slots,
				level: "error",
				title: `${name} is fed through the dimmer ${dimmer.name}`,
				span: part.span,
				label: "dimmed",
				also: [{ span: dimmer.span, label: dimmer.face.text }],
				marks: [name, dimmer.name],
				path: way?.pathTo(point) ?? [],
				why: "A dimmer chops its supply: what has electronics or a motor in it overheats, fails, or burns the dimmer.",
				help: `Feed ${name} from ahead of ${dimmer.name}, such as \`from ${dimmer.name}.line\`.`,
				key: `${slots.code}@${name}`,
			}),
		];
	});
}

/** A light; and a load or a part of the builder's own, of which nobody says what it is. */
function bearsDimming({ face: { traits }, kind }: Part): boolean {
	return traits.includes("light") || !chopped.has(kind);
}

/** Kinds with electronics or a motor in them. */
const chopped: ReadonlySet<string> = new Set([
	"usb-outlet",
	"outlet-12v",
	"fridge",
	"pump",
	"fan",
	"converter",
	"dc-dc",
	"solar-controller",
	"inverter",
	"inverter-charger",
	"relay",
	"contactor",
]);
