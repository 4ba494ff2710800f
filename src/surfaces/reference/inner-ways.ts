// What happens inside a kind, in words: where each conductor of a cable lands, what joins its terminals, what it brings along.
import { listNames } from "../../base/wording.ts";
import type { Blueprint, LinkSpec, Role, SideSpec, When } from "../../kinds/kind.ts";
import type { Page } from "./page.ts";

type Slots = Page["slots"];

/** Where the conductors of a cable end up at each side, by what they are for. */
export function tellLandings(blueprint: Blueprint): Slots {
	const told = blueprint.sides.flatMap((side) => {
		const where = tellSide(blueprint, side);
		const alone = side.lone === undefined ? undefined : endOf(blueprint, side.lone.knot, "hot");
		const rows = [
			{ where, landings: tellKnots(blueprint, side.knots) },
			{ where: `${where}, with two hots`, landings: tellKnots(blueprint, side.withSecondHot) },
			{ where: `${where}, with three hots`, landings: tellKnots(blueprint, side.withThirdHot) },
		].filter(({ landings }) => landings !== "");
		if (rows.length > 0 || alone === undefined) return rows;
		return [{ where, landings: `a conductor by itself ${alone}` }];
	});
	return told.map(({ where, landings }, index) => ({
		word: index === 0 ? "lands" : "",
		text: `${where}: ${landings}`,
	}));
}

/** `hot on line; neutral and ground past it`; empty where nothing lands. */
function tellKnots(blueprint: Blueprint, knots: SideSpec["knots"] | undefined): string {
	const groups = new Map<string, Role[]>();
	for (const role of roles) {
		const end = endOf(blueprint, knots?.[role], role);
		if (end !== undefined) groups.set(end, [...(groups.get(end) ?? []), role]);
	}
	return [...groups]
		.map(
			([end, landing]) =>
				`${listNames(
					landing.map((role) => roleWords[role]),
					7,
				)} ${end}`,
		)
		.join("; ");
}

function tellSide({ sides, onward }: Blueprint, { name }: SideSpec): string {
	const isFirst = sides[0]?.name === name;
	if (sides.length === 1) return "any cable";
	if (name === onward) return isFirst ? `at ${name}, coming or going on` : `going on from ${name}`;
	return isFirst ? `coming to ${name}` : `at ${name}`;
}

/** `on line`, `past it`, `on the next free of 1 to 14`; undefined where a conductor is capped. */
function endOf({ terminals, brings, plugs }: Blueprint, knot: string | undefined, role: Role): string | undefined {
	if (knot === undefined) return undefined;
	const names = terminals.filter((terminal) => terminal.knot === knot).map(({ name }) => name);
	const [first] = names;
	if (first !== undefined)
		return names.length > 3 ? `on the next free of ${first} to ${names.at(-1)}` : `on ${listNames(names)}`;
	if (knot === "switched") return "with what its switch sends back";
	if (brings?.some(({ kind }) => kind === `${role}-bar`) === true) return `on its ${role} bar`;
	if (brings?.some(({ name }) => name === "main") === true) return "on its main";
	// What sits in a panel leaves to the panel's bars what it has no terminal for.
	return plugs === undefined ? "past it" : `on the ${role} bar`;
}

/** What joins its terminals, and when. */
export function tellLinks({ links = [], loads = [] }: Blueprint): Slots {
	const [only] = links;
	const isBar = links.length > 3 && links.every(({ nature, when }) => nature === "solid" && when === undefined);
	const told =
		isBar && only !== undefined
			? ["all its ports and studs are one piece of metal"]
			: [
					...links.map(tellLink),
					...loads.map((load) => `${listNames(load.between)}: ${load.outlet ? "an outlet" : "what uses power"}`),
				];
	return told.map((text, index) => ({ word: index === 0 ? "inside" : "", text }));
}

function tellLink({ between, nature, contact, when, protects }: LinkSpec): string {
	const ends = `${nameOf(between[0])} to ${nameOf(between[1])}`;
	const state = when === undefined ? "" : ` ${whenWords[when]}`;
	if (nature === "bond") return `${ends}: bonded${state}`;
	if (contact === undefined) return `${ends}: joined${state === "" ? " always" : state}`;
	const closed = contact.closed.map((position) => position + 1);
	const states = `closed in ${closed.length === 1 ? "state" : "states"} ${listNames(closed.map(String))} of ${contact.positions}`;
	return `${ends}: a contact, ${states}${protects === true ? ", that opens on too much current" : ""}`;
}

function nameOf(terminal: string): string {
	return terminal === "^case" ? "its case" : terminal;
}

/** What comes with it without being said, and what its slots take. */
export function tellBrought({ brings = [], face }: Blueprint, slotExample: string | undefined): Slots {
	const parts = brings.map(({ name, kind }) => `\`NAME.${name}\`, a ${kind}`);
	return [
		...(parts.length === 0 ? [] : [{ word: "brings", text: listNames(parts) }]),
		...(face.traits.includes("panel") && slotExample !== undefined
			? [
					{
						word: "slots",
						text: `said below it, \`${slotExample}\`; a circuit goes \`from NAME.${/slot (\w+)/.exec(slotExample)?.[1] ?? ""}\``,
					},
				]
			: []),
	];
}

const roles = ["hot", "hot2", "hot3", "neutral", "positive", "negative", "ground"] as const satisfies readonly Role[];

/** Roles in an apprentice's words. */
export const roleWords: Readonly<Record<Role, string>> = {
	hot: "hot",
	hot2: "second hot",
	hot3: "third hot",
	neutral: "neutral",
	ground: "ground",
	positive: "positive",
	negative: "negative",
};
const whenWords: Readonly<Record<When, string>> = {
	"input-live": "while its input is live",
	inverting: "while it inverts",
	"source-live": "while the supply behind it is there",
};
