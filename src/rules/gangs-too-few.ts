// Boxes with more devices side by side than they have gangs for.
import type { Analysis } from "../analysis/analysis.ts";
import { type Finding, finding } from "../base/finding.ts";
import { groupBy } from "../base/group.ts";
import { listNames } from "../base/wording.ts";
import type { Enclosure, Part } from "../circuit/circuit.ts";
import { byEye } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const gangsTooFew: Rule = {
	code: "gangs-too-few",
	level: "error",
	what: "A box holds more devices side by side than it has gangs for.",
	why: "A device that does not fit is left hanging on its wires, or squeezed in until one of them is pinched.",
	help: "Use a box with a gang for each device.",
	basis: "common practice",
	meter: [byEye("look whether every device sits on its two screws")],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit den from LC breaker 15 A by 14-2
  9 ft to j1: box gangs 1
    r1: receptacle
    r2: receptacle
`,
	],
	right: [
		`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit den from LC breaker 15 A by 14-2
  9 ft to j1: box gangs 2, clamps inside, cover plastic
    r1: receptacle
    r2: receptacle
`,
	],
	check: ({ circuit }: Analysis) => {
		const ganged = circuit.parts.filter((part) => part.enclosure.fittings?.gangs !== undefined && isDevice(part));
		return [...groupBy(ganged, ({ enclosure }) => enclosure)].flatMap(([enclosure, devices]) => {
			const gangs = enclosure.fittings?.gangs;
			return gangs === undefined || devices.length <= gangs ? [] : [tell(enclosure, gangs, devices)];
		});
	},
};

/** What is screwed into a box by its yoke; what stands on a box covers it whole. */
function isDevice({ face }: Part): boolean {
	return face.traits.some((trait) => trait === "receptacle" || trait === "switch" || trait === "dimmer");
}

function tell({ name, span }: Enclosure, gangs: number, devices: readonly Part[]): Finding {
	const names = devices.map((device) => device.name);
	return finding({
		code: gangsTooFew.code,
		level: gangsTooFew.level,
		title: `${name} has ${gangs} ${gangs === 1 ? "gang" : "gangs"}, and ${listNames(names)} are in it`,
		span,
		label: `${devices.length} devices`,
		also: devices.filter((device) => device.name !== name).map((device) => ({ span: device.span, label: device.name })),
		marks: [name, ...names],
		figures: [{ name: "devices", found: devices.length, limit: gangs, unit: "", source: gangsTooFew.basis }],
		why: gangsTooFew.why,
		help: `Use a box with ${devices.length} gangs, or a box of its own for ${names.at(-1) ?? name}.`,
		basis: gangsTooFew.basis,
		key: `${gangsTooFew.code}@${name}`,
	});
}
