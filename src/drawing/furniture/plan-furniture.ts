// What every sheet of a plan says about the plan: its title, system and rules, its modes, its findings.
import type { NumberedFinding } from "../../base/finding.ts";
import type { Circuit, Source } from "../../circuit/circuit.ts";
import type { System } from "../../kinds/kind.ts";
import { voltsText } from "../volts-text.ts";
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
		notes: [...plan.settings.notes, ...circuit.modes.map(({ name, summary }) => `Mode ${name}: ${summary}.`)],
		findings: findings.map(({ number, level, title, accepted }) => ({
			number,
			level,
			title,
			...(accepted === undefined ? {} : { accepted }),
		})),
	};
}

/** What is drawn, in words: sources, panels and circuits with what is on them. */
function describeCircuit(circuit: Circuit): string {
	const sources = circuit.sources.map((source) => `${source.name} (${voltsText(source)})`);
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

/** `120/240 V AC, 50 A · 12 V DC`: of the first source of each system, which a panel is usually fed by. */
function systemText(circuit: Circuit): string {
	const first = (system: System): string[] => {
		const source = circuit.sources.find((candidate) => candidate.system === system);
		if (source === undefined) return [];
		const limit = source.limit === undefined ? "" : `, ${Math.round(source.limit)} A`;
		const whole = system === "dc" ? { ...source, volts: seriesVolts(circuit, source) } : source;
		return [`${voltsText(whole)} ${system.toUpperCase()}${limit}`];
	};
	const systems = [...first("ac"), ...first("dc")];
	return systems.length === 0 ? "no source" : systems.join(" · ");
}

/** The volts of a battery with those in series with it: the negative of each is joined to the positive of the next. */
function seriesVolts({ sources, conductors }: Circuit, first: Source): number {
	const follows = (one: Source, next: Source): boolean =>
		conductors.some(
			({ ends: [from, to] }) => isLead(one, next, from.point, to.point) || isLead(one, next, to.point, from.point),
		);
	const string = new Set([first]);
	for (const one of string)
		for (const next of sources)
			if (next.sort === "battery" && !string.has(next) && (follows(one, next) || follows(next, one))) string.add(next);
	return Math.round([...string].reduce((sum, { volts }) => sum + volts, 0) * 10) / 10;
}

/** Whether a conductor from one point to another leads from the negative of one battery to the positive of the next. */
function isLead(one: Source, next: Source, from: number | undefined, to: number | undefined): boolean {
	return from !== undefined && from === one.neutral && to !== undefined && next.hot.includes(to);
}

const regionNames = { us: "US", iec: "IEC" } as const;
