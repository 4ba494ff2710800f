// The terminals that most devices share, so that a kind's file says only what is its own.
import { awg, type Gauge, squareMillimetres } from "../base/gauge.ts";
import type { Region, Role, SideSpec, TerminalSpec } from "./kind.ts";

/** What is said of a terminal beyond its name, role and knot. */
type Extra = Partial<Omit<TerminalSpec, "name" | "role" | "knot">>;

/**
 * A plain binding screw of a device: brass for hot, silver for neutral, green for ground (common practice),
 * 14 to 10 AWG, one conductor a screw. In IEC countries it is a cage for 1 to 6 mm2.
 */
export function deviceScrew(
	region: Region,
	name: string,
	role: Role,
	knot: string | undefined,
	extra: Extra = {},
): TerminalSpec {
	const screw = role === "neutral" ? "silver" : role === "ground" ? "green" : "brass";
	const letters = {
		hot: "L",
		hot2: "L2",
		hot3: "L3",
		neutral: "N",
		ground: "PE",
		positive: "+",
		negative: "-",
	} as const;
	const also = [...(extra.also ?? []), ...(region === "iec" && !name.includes(".") ? [letters[role]] : [])];
	return {
		name,
		role,
		...(knot === undefined ? {} : { knot }),
		...sizes(region, awg(14), awg(10), 1, 6),
		capacity: 1,
		...(region === "us" ? { clamp: "screw", screw } : { clamp: "cage" }),
		...extra,
		also,
	};
}

/** A device's terminal by what it is rated for: a binding screw up to 20 A, a pressure terminal above (common practice). */
export function deviceTerminal(
	region: Region,
	amperes: number,
	name: string,
	role: Role,
	knot: string | undefined,
	extra: Extra = {},
): TerminalSpec {
	const screw = deviceScrew(region, name, role, knot, extra);
	return amperes > 20 ? { ...screw, clamp: "cage", largest: region === "us" ? awg(4) : squareMillimetres(25) } : screw;
}

/** A pressure terminal of a panel, breaker or power device: 14 AWG to `largest`, one conductor unless said otherwise. */
export function cage(
	region: Region,
	name: string,
	role: Role,
	knot: string | undefined,
	extra: Extra = {},
): TerminalSpec {
	return {
		name,
		role,
		...(knot === undefined ? {} : { knot }),
		...sizes(region, awg(14), awg(4), 1, 25),
		clamp: "cage",
		capacity: 1,
		...extra,
	};
}

/** A side at which every core goes on to the box's own knot of its role. */
export function passSide(name: string): SideSpec {
	return { name, knots: { hot: "^hot", hot2: "^hot2", neutral: "^neutral", ground: "^ground" } };
}

/** The side of what a switch loop leaves that is switched with it: what hangs there goes on and off with the thing itself. */
export const switchedSide: SideSpec = {
	name: "switched",
	knots: { hot: "switched", neutral: "^neutral", ground: "^ground" },
};

function sizes(
	region: Region,
	thin: Gauge,
	thick: Gauge,
	thinMetric: number,
	thickMetric: number,
): { smallest: Gauge; largest: Gauge } {
	return region === "us"
		? { smallest: thin, largest: thick }
		: { smallest: squareMillimetres(thinMetric), largest: squareMillimetres(thickMetric) };
}
