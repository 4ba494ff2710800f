// What every sheet of a plan says about the plan: its title, system and rules, its modes and accepted deviations, its findings.
import type { NumberedFinding } from "../../base/finding.ts";
import type { Circuit } from "../../circuit/circuit.ts";
import type { SheetContent } from "./sheet-content.ts";

/** The part of a sheet's content that follows from the plan alone. */
export type PlanFurniture = Pick<
	SheetContent,
	"description" | "project" | "facts" | "paper" | "region" | "notes" | "findings"
>;

/** That part, with the findings under the numbers they have in the list of `check`. */
export function planFurniture(circuit: Circuit, findings: readonly NumberedFinding[]): PlanFurniture {
	const { plan } = circuit;
	const file = plan.file.split("/").at(-1) ?? plan.file;
	return {
		description: describeCircuit(circuit),
		project: plan.title === "" ? file : plan.title,
		facts: [
			{ name: "System", value: systemText(circuit) },
			{ name: "Rules", value: `${regionNames[plan.settings.region]}, ${plan.settings.rules}` },
			{ name: "Plan", value: file },
			{ name: "Checked by", value: "" },
		],
		paper: plan.settings.paper,
		region: plan.settings.region,
		notes: [
			...plan.settings.notes,
			...circuit.modes.map((mode) => `Mode ${mode.summary}.`),
			...plan.acceptances.map(
				({ rule, at, reason }) => `Accepted: ${rule}${at === undefined ? "" : ` at ${at}`}, because ${reason}`,
			),
		],
		findings: findings.map(({ number, level, title }) => ({ number, level, title })),
	};
}

/** What is drawn, in words: sources, panels and circuits with what is on them. */
function describeCircuit(circuit: Circuit): string {
	const sources = circuit.sources.map(({ name, volts }) => `${name} (${volts} V)`);
	const panels = circuit.parts.filter((part) => part.face.traits.includes("panel")).map(({ name }) => name);
	const runs = circuit.plan.runs
		.filter((run) => run.sort === "circuit")
		.map((run) => `${run.name}: ${run.hops.map((hop) => hop.to.thing).join(", ")}`);
	return [listing("Sources", sources, ", "), listing("Panels", panels, ", "), listing("Circuits", runs, "; ")]
		.filter((sentence) => sentence !== "")
		.join(" ");
}

function listing(heading: string, names: readonly string[], between: string): string {
	return names.length === 0 ? "" : `${heading}: ${names.join(between)}.`;
}

/** `120 V AC, 30 A`: of the first source, which the panel is usually fed by. */
function systemText(circuit: Circuit): string {
	const source = circuit.sources[0];
	if (source === undefined) return "no source";
	const limit = source.limit === undefined ? "" : `, ${Math.round(source.limit)} A`;
	return `${source.volts} V ${source.system.toUpperCase()}${limit}`;
}

const regionNames = { us: "US", iec: "IEC" } as const;
