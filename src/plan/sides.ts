// The side of a thing that a hop meets.
import { didYouMean } from "../base/nearest.ts";
import { startSentence, withArticle } from "../base/wording.ts";
import type { SideSpec } from "../kinds/kind.ts";
import type { HopEnd, Thing } from "./plan.ts";

/** As said, else where a chain goes on, or where it arrives. */
export function sideAt(thing: Thing, end: HopEnd, way: "onward" | "arrival"): SideSpec | undefined {
	const { sides, onward } = thing.blueprint;
	const usual = way === "onward" ? onward : sides[0]?.name;
	return sides.find((side) => side.name === (end.side ?? usual)) ?? sideOfTerminal(thing, end.side);
}

/** A terminal that a conductor by itself is led to by name, `shore.ground`; undefined where it is not the only one of its knot. */
export function sideOfTerminal({ blueprint: { terminals } }: Thing, name: string | undefined): SideSpec | undefined {
	const terminal = terminals.find((spec) => spec.name === name || (name !== undefined && spec.also?.includes(name)));
	const knot = terminal?.knot;
	if (terminal === undefined || knot === undefined) return undefined;
	if (terminals.some((other) => other !== terminal && other.knot === knot)) return undefined;
	const { name: own, role } = terminal;
	return { name: own, knots: { [role]: knot }, lone: terminal.inherits === true ? { knot } : { knot, role } };
}

/** What a name behind the dot of a thing can be; a port of a bar or stud is chosen where its wires are landed. */
export function tellSides({ name, kind, blueprint: { sides, terminals } }: Thing, said: string | undefined): string {
	const names = sides.map((side) => side.name);
	if (said !== undefined && terminals.some((terminal) => terminal.name === said))
		return `A run goes to ${name}; which terminal it lands on is said below \`at ${name}\`: \`CONDUCTOR on ${name}.${said}\`.`;
	return `${said === undefined ? "" : didYouMean(said, names)} ${startSentence(withArticle(kind.name))} has: ${names.join(", ")}.`.trim();
}

/** The names of the two posts of a side for a pair, `half.out.+` and `half.out.-`; undefined where it has none. */
export function postsAt(thing: Thing | undefined, { side }: HopEnd): readonly string[] | undefined {
	const names = ["+", "-"].map((pole) => `${side ?? thing?.blueprint.onward}.${pole}`);
	const hasPosts = names.every((name) => thing?.blueprint.sides.some((known) => known.name === name));
	return hasPosts ? names.map((name) => `${thing?.name}.${name}`) : undefined;
}
