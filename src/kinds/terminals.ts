// The terminals that most devices share, so that a kind's file says only what is its own.
import { awg, type Gauge, squareMillimetres } from "../base/gauge.ts";
import type { Region, Role, Said, SideSpec, TerminalSpec } from "./kind.ts";

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
	const isMetric = region === "iec";
	const { also = [] } = extra;
	return terminal(name, role, knot, screwSizes[region], {
		clamp: isMetric ? "cage" : "screw",
		screw: isMetric ? undefined : screw,
		...extra,
		also: isMetric && !name.includes(".") ? [...also, letters[role]] : also,
	});
}

/** Letters of terminals in IEC countries (IEC 60445, recalled). */
const letters = {
	hot: "L",
	hot2: "L2",
	hot3: "L3",
	neutral: "N",
	ground: "PE",
	positive: "+",
	negative: "-",
} as const;

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
	return amperes > 20
		? { ...screw, clamp: "cage", largest: region === "us" ? awg(4) : squareMillimetres(25), aluminium: region === "us" }
		: screw;
}

/** A pressure terminal of a panel, breaker or power device: 14 AWG to `largest`, one conductor of either metal unless said otherwise. */
export function cage(
	region: Region,
	name: string,
	role: Role,
	knot: string | undefined,
	extra: Extra = {},
): TerminalSpec {
	return terminal(name, role, knot, cageSizes[region], { aluminium: region === "us", ...extra });
}

/** A terminal for one conductor in a cage where nothing else is said. Written out, so that all terminals are of one shape: they are many. */
function terminal(
	name: string,
	role: Role,
	knot: string | undefined,
	{ smallest, largest }: Sizes,
	extra: Extra,
): TerminalSpec {
	return {
		name,
		also: extra.also,
		role,
		side: extra.side,
		clamp: extra.clamp ?? "cage",
		capacity: extra.capacity ?? 1,
		smallest: extra.smallest ?? smallest,
		largest: extra.largest ?? largest,
		screw: extra.screw,
		knot,
		aluminium: extra.aluminium,
		gathers: extra.gathers,
	};
}

/** A side at which every core goes on to the box's own knot of its role. */
export function passSide(name: string): SideSpec {
	return { name, knots: { hot: "^hot", hot2: "^hot2", neutral: "^neutral", ground: "^ground" } };
}

/** A side at which every core goes on, whatever system it is of. */
export function passAll(name: string): SideSpec {
	const side = passSide(name);
	return { ...side, knots: { ...side.knots, hot3: "^hot3", positive: "^positive", negative: "^negative" } };
}

/** The side of what a switch loop leaves that is switched with it: what hangs there goes on and off with the thing itself. */
export const switchedSide: SideSpec = {
	name: "switched",
	knots: { hot: "switched", neutral: "^neutral", ground: "^ground" },
};

/** The knot of the neutral bar that a part of a panel hangs on: the panel's, or that of the device it stands behind. */
export function neutralKnot(said: Said): string {
	return said.behind === undefined ? "neutral" : `neutral:${said.behind}`;
}

/** The side from which a cable goes on with the second hot that has come in, and leaves the first. */
export const secondSide: SideSpec = {
	name: "second",
	knots: { hot: "^hot2", neutral: "^neutral", ground: "^ground" },
};

interface Sizes {
	readonly smallest: Gauge;
	readonly largest: Gauge;
}
const screwSizes: Readonly<Record<Region, Sizes>> = {
	us: { smallest: awg(14), largest: awg(10) },
	iec: { smallest: squareMillimetres(1), largest: squareMillimetres(6) },
};
const cageSizes: Readonly<Record<Region, Sizes>> = {
	us: { smallest: awg(14), largest: awg(4) },
	iec: { smallest: squareMillimetres(1), largest: squareMillimetres(25) },
};
