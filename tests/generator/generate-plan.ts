// The text of a right plan, drawn from a wish: what a careful builder would write, in one of the many ways to write it.
import { writeDirect } from "./direct/direct-plan.ts";
import type { Line } from "./lines.ts";
import { layoutOf, writeLines } from "./lines.ts";
import { Site } from "./site.ts";
import { writeMains } from "./sources.ts";
import { type Wish, wishFor } from "./wish.ts";

/** A generated plan, and what it was to be. */
export interface GeneratedPlan {
	readonly wish: Wish;
	readonly text: string;
	/** The files it uses, by their paths; none where that was not asked for. */
	readonly files: ReadonlyMap<string, string>;
	/** The kinds that occur, and `kind: attribute` for what is said of them. */
	readonly said: ReadonlySet<string>;
}

/** Plan number `seed`; size and mix are drawn from it where they are not said. The same call gives the same text. */
export function generatePlan(seed: number, said: Partial<Wish> = {}): GeneratedPlan {
	const wish = wishFor(seed, said);
	const site = new Site(wish);
	const { chance } = site;
	const wired = writeSides(site);
	const settings = chance.shuffle([
		...(wish.region === "iec" || chance.maybe(0.5) ? [`region ${wish.region}`] : []),
		...(wish.rules === "camper" && chance.maybe(0.5) ? [] : [`rules ${wish.rules}`]),
		...(chance.maybe(0.2) ? ["splices always"] : []),
		...(chance.maybe(0.2) ? [`joints ${chance.pick(["lever", "push-in", "twist-on", "crimp"])}`] : []),
		...(chance.maybe(0.2) ? [chance.pick(["ambient 25 C", "ambient 68 F"])] : []),
		...(chance.maybe(0.1) ? ['note "Isolate every source and prove dead."'] : []),
	]);
	const shared = share(site);
	const title = `plan "Generated plan ${seed}"${chance.maybe(0.2) ? " notation 1" : ""}`;
	const lines: Line[] = [
		...(chance.maybe(0.4)
			? [
					{
						text: `// ${wish.devices} devices, ${wish.sides === "dc" ? "no mains" : wish.supply}, from chance alone. Not for building.`,
					},
				]
			: []),
		{ text: title, below: settings.map((text) => ({ text })) },
		...shared.lines,
		...site.places.map(({ statement }) => ({ text: statement })),
		...wired,
		...site.standing,
		...site.landings,
	];
	return { wish, text: writeLines(lines, layoutOf(chance)), files: shared.files, said: site.words.said };
}

/** The builder's own cables and parts: in the plan, or in two files of which one uses the other. */
function share(site: Site): { readonly lines: readonly Line[]; readonly files: ReadonlyMap<string, string> } {
	const cables = [...site.ownCables].map((text): Line => ({ text }));
	if (!site.wish.usesFiles) return { lines: [...cables, ...site.ownParts], files: new Map() };
	const layout = layoutOf(site.chance);
	const files = new Map([
		["own/cables.ferrule", writeLines([{ text: "// Cables that are at hand." }, ...cables], layout)],
		["own/parts.ferrule", writeLines([{ text: 'use "cables.ferrule"' }, ...site.ownParts], layout)],
	]);
	return { lines: site.chance.shuffle([...files.keys()].map((path) => ({ text: `use "${path}"` }))), files };
}

/** Both sides, or one; of the devices each has its share. */
function writeSides(site: Site): Line[] {
	const { chance, wish } = site;
	if (wish.sides === "ac") return writeMains(site);
	if (wish.sides === "dc") return writeDirect(site);
	const direct = Math.max(1, Math.floor(wish.devices * chance.pick([0.3, 0.5, 0.7])));
	site.left -= direct;
	const mains = writeMains(site);
	site.left += direct;
	return [...mains, ...writeDirect(site)];
}
