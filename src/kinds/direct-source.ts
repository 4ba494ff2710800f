// What sources of direct current share: two posts, and where conductors meet them.
import { stud } from "./in-line.ts";
import type { Blueprint, Said, SideSpec, SourceSpec, TerminalSpec } from "./kind.ts";

/** Its terminals `+` and `-`, the sides by the same names, and its enclosure. */
export function twoPostSource(
	said: Said,
): Pick<Blueprint, "enclosure" | "onward"> & Required<Pick<Blueprint, "terminals" | "sides">> {
	return {
		terminals: [stud(said, "+", "positive", "+"), stud(said, "-", "negative", "-")],
		sides: [
			{ name: "+", knots: { positive: "+", negative: "-" }, lone: { knot: "+", role: "positive" } },
			{ name: "-", knots: { negative: "-" }, lone: { knot: "-", role: "negative" } },
		],
		onward: "+",
		enclosure: { sort: "equipment", metal: false },
	};
}

/** A source between two posts that gives no more than `limit` amperes, where that is said, so that nothing it feeds needs a device for its sake. */
export function limitedSource(
	volts: number,
	limit: number | undefined,
	{ sort = "other", posts = ["+", "-"] }: { sort?: "other" | "solar"; posts?: readonly [string, string] } = {},
): SourceSpec {
	const [positive, negative] = posts;
	return {
		sort,
		system: "dc",
		volts,
		hot: [positive],
		neutral: negative,
		...(limit === undefined ? {} : { limit }),
		bonding: "floating",
		supplyProtects: true,
	};
}

/** What takes direct current on `in` and gives it on `out`: its terminals, sides and enclosure. */
export function inAndOut(
	said: Said,
): Pick<Blueprint, "enclosure" | "onward"> & Required<Pick<Blueprint, "terminals" | "sides">> {
	return {
		terminals: [...twoPosts(said, "in"), ...twoPosts(said, "out")],
		sides: [pairSide("in"), pairSide("out"), ...loneSides("in"), ...loneSides("out")],
		onward: "out",
		enclosure: { sort: "equipment", metal: false },
	};
}

/** Positive and negative of one side of a device for direct current. */
function twoPosts(said: Said, side: "in" | "out"): TerminalSpec[] {
	const at = side === "in" ? ("line" as const) : ("load" as const);
	return [
		{ ...stud(said, `${side}.+`, "positive", `${side}+`), side: at },
		{ ...stud(said, `${side}.-`, "negative", `${side}-`), side: at },
	];
}

/** Where a pair meets such a side. */
function pairSide(side: "in" | "out"): SideSpec {
	return { name: side, system: "dc", knots: { positive: `${side}+`, negative: `${side}-` } };
}

/** Where conductors that run by themselves meet it: `in.+`, `in.-`. */
function loneSides(side: "in" | "out"): SideSpec[] {
	return [
		{
			name: `${side}.+`,
			system: "dc",
			knots: { positive: `${side}+`, negative: `${side}-` },
			lone: { knot: `${side}+`, role: "positive" },
		},
		{ name: `${side}.-`, system: "dc", knots: { negative: `${side}-` }, lone: { knot: `${side}-`, role: "negative" } },
	];
}
