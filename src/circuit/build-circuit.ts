// From what the builder said to every single conductor: devices, cables, landings as built, the rest by convention, modes.
import type { Finding } from "../base/finding.ts";
import { planFinding } from "../plan/codes.ts";
import { foldName } from "../plan/names.ts";
import type { Plan } from "../plan/plan.ts";
import { landAsBuilt } from "./as-built.ts";
import { pullCables } from "./cables.ts";
import type { Circuit } from "./circuit.ts";
import { type Equipment, placeDevices } from "./devices.ts";
import { Draft } from "./draft.ts";
import { groundAtBonds } from "./grounds-at-bonds.ts";
import { tieKnots } from "./knots.ts";
import { linksByMode, type ModePlan, planModes } from "./modes.ts";

/** The circuit of a plan, and what of its landings could not be taken up. Never throws for a plan of the plan room. */
export function buildCircuit(plan: Plan): { readonly circuit: Circuit; readonly findings: readonly Finding[] } {
	const findings: Finding[] = [];
	const draft = new Draft(plan);
	const equipment = placeDevices(draft, findings);
	pullCables(draft);
	landAsBuilt(draft, findings);
	tieKnots(draft);
	const modePlan = planModes({
		plan: draft.plan,
		conductors: draft.conductors,
		links: draft.links,
		sources: equipment.sources,
		switchovers: equipment.switchovers,
		get pointByName() {
			return draft.pointNames.byName;
		},
	});
	const circuit = seal(draft, equipment, modePlan);
	const [first] = plan.things;
	if (first === undefined)
		findings.push(
			planFinding("plan-empty", {
				title: "Nothing here can be wired",
				span: { file: plan.file, line: 1, column: 1, endColumn: 1 },
			}),
		);
	if (circuit.sources.length === 0 && first !== undefined)
		findings.push(
			planFinding("source-missing", {
				title: "Nothing in this plan gives power",
				span: first.span,
				label: "fed by nothing",
			}),
		);
	if (modePlan.leftOut !== undefined && first !== undefined)
		findings.push(
			planFinding("modes-too-many", {
				title: `There are too many source modes; ${modePlan.leftOut} and those after it are not judged`,
				span: draft.plan.thingByName.get(foldName(modePlan.leftOut))?.span ?? first.span,
			}),
		);
	return { circuit, findings };
}

function seal(draft: Draft, equipment: Equipment, modePlan: ModePlan): Circuit {
	const names = draft.pointNames;
	return {
		plan: draft.plan,
		enclosures: draft.enclosures,
		parts: draft.parts,
		points: draft.points,
		// What a draft knows beyond a circuit, its knots, is of no use to anyone after this.
		conductors: draft.conductors,
		cables: draft.cables,
		links: linksByMode(draft.links, modePlan),
		loads: equipment.loads,
		sources: groundAtBonds(draft, equipment.sources),
		protections: equipment.protections,
		groundFaults: equipment.groundFaults,
		modes: modePlan.modes,
		switchovers: equipment.switchovers,
		get pointByName() {
			return names.byName;
		},
		conductorByName: draft.conductorByName,
		partByName: draft.partByName,
		enclosureByName: new Map(draft.enclosures.map((enclosure) => [enclosure.name, enclosure])),
		cableByTag: new Map(draft.cables.map((cable) => [cable.tag, cable])),
	};
}
