// A fuse or breaker for direct current that stands too far from where its conductor begins.
import { deviceDistance } from "../handbook/dc-protection.ts";
import { citation } from "../handbook/provenance.ts";
import { findTooFar } from "./direct-protection.ts";
import { byEye } from "./meter-test.ts";
import type { Rule } from "./rule.ts";

export const protectionTooFar: Rule = {
	code: "protection-too-far",
	level: "error",
	what: "Between a battery or bus and the first fuse of a conductor lies more of it than the rules allow.",
	why: "Up to the fuse nothing opens: a short circuit on that stretch burns the conductor and what is near it.",
	help: "Move the fuse to where the conductor begins.",
	basis: `${citation(deviceDistance("anywhere").provenance)}; ${citation(deviceDistance("sheathed, at a battery terminal").provenance)}; ${citation(deviceDistance("low voltage of a vehicle").provenance)}`,
	meter: [byEye("measure with a tape along the conductor, from the post to the fuse")],
	applies: {
		regions: ["us", "iec"],
		rules: ["camper", "boat", "building"],
		differs:
			"On boats the distances of 33 CFR 183 and ABYC E-11 hold, longer in a sheath; elsewhere that of low-voltage wiring in vehicles.",
	},
	wrong: [
		`battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 6 AWG red
  5 ft to F1: fuse class-T 60 A
  2 ft to plus: bus 250 A
`,
		`plan "Punt"
  rules boat
battery house agm 12 V 100 Ah
feed plus from house.+ by single 6 AWG red
  8 ft to F1: fuse class-T 60 A
  2 ft to plus: bus 250 A
`,
	],
	right: [
		`battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 6 AWG red
  within 18 in to F1: fuse class-T 60 A
  2 ft to plus: bus 250 A
`,
		`plan "Punt"
  rules boat
battery house agm 12 V 100 Ah
feed plus from house.+ by single 6 AWG red
  within 7 in to F1: fuse class-T 60 A
  2 ft to plus: bus 250 A
`,
	],
	check: (analysis) => findTooFar(analysis, protectionTooFar.code),
};
