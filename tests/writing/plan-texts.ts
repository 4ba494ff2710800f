// Plan texts for properties: every sample and starter, every whole plan of the reference page, and plans by chance.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { randomPlan } from "../drawing/wiring/random-plan.ts";

const root = join(import.meta.dirname, "../..");

/** A plan by its name. */
export interface NamedPlan {
	readonly name: string;
	readonly text: string;
}

/** The finished and the faulty samples, and the starters. */
export const finishedPlans: readonly NamedPlan[] = ["samples", "seeds"].flatMap((folder) =>
	readdirSync(join(root, folder))
		.filter((name) => name.endsWith(".ferrule"))
		.map((name) => ({ name: `${folder}/${name}`, text: readFileSync(join(root, folder, name), "utf8") })),
);

/** What the reference page shows, with and without meaning, right and wrong. */
export const shownPlans: readonly NamedPlan[] = [
	...readFileSync(join(root, "grammar/reference.md"), "utf8").matchAll(/^```ferrule (\S+)\n([\s\S]*?)^```$/gm),
].map(([, info = "", text = ""], index) => ({ name: `reference ${index + 1} ${info}`, text }));

/** `count` plans by chance: a third as the trade wires them, a third with landings by hand, right and wrong, a third with rings. */
export function chancePlans(count: number): readonly NamedPlan[] {
	return Array.from({ length: count }, (_, seed) => ({
		name: `plan ${seed}`,
		text: randomPlan(seed, { asBuilt: seed % 3 > 0, rings: seed % 3 === 2 }),
	}));
}
