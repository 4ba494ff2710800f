// Where a plan's mains come from, and the first panel behind it.
import type { SourceSort } from "../../src/kinds/kind.ts";
import { type Feed, writeBoard } from "./boards.ts";
import { cablesFor } from "./cables.ts";
import { blueprintOf, kindsFor } from "./kind-parts.ts";
import type { Line } from "./lines.ts";
import type { Site } from "./site.ts";
import type { Facts } from "./words.ts";

/** The sources, the panels, and every circuit. */
export function writeMains(site: Site): Line[] {
	switch (site.wish.supply) {
		case "shore":
			return fromShore(site);
		case "two legs":
			return fromTwoLegs(site);
		case "generator":
			return fromGenerator(site);
		case "inverter":
			return fromInverter(site);
		case "inverter-charger":
			return fromInverterCharger(site);
		case "transfer":
			return fromTransfer(site);
	}
}

function fromShore(site: Site): Line[] {
	const amperes = drawInlet(site);
	const earthing = site.wish.region === "iec" ? site.chance.pick([undefined, "TN", "TN-S", "TN-C-S", "TT"]) : undefined;
	const facts = { rating: amperes, voltage: sayVolts(site), earthing };
	if (standsStill(site) && site.chance.maybe(0.3)) return fromUtility(site, amperes, facts);
	const source = declare(site, "shore", "shore", facts);
	// A panel made for two legs does for a supply with one.
	const isBridged = site.wish.region === "us" && site.chance.maybe(0.15);
	const more = isBridged ? { more: { legs: 2, bridge: "bridged legs" } } : {};
	const isAfloat = site.wish.rules === "boat";
	return [source.line, ...writeBoard(site, { from: source.name, amperes, legs: 1, isAfloat, ...more })];
}

function standsStill({ wish }: Site): boolean {
	return wish.rules === "building";
}

/** The service of a building; where it brings no ground, the first panel bonds. */
function fromUtility(site: Site, amperes: number, facts: Facts): Line[] {
	const hasNoGround = facts.earthing === undefined && site.chance.maybe(0.3);
	const source = declare(site, "utility", "grid", { ...facts, ...(hasNoGround ? { ground: false } : {}) });
	const legs = facts.legs === undefined ? 1 : 2;
	const below = hasNoGround ? { below: [{ text: "bonding screw" }] } : {};
	return [source.line, ...writeBoard(site, { from: source.name, amperes, legs, ...below })];
}

function fromTwoLegs(site: Site): Line[] {
	const { chance } = site;
	const amperes = chance.pick([30, 50]);
	if (standsStill(site) && chance.maybe(0.4)) return fromUtility(site, amperes, { rating: amperes, legs: [120, 240] });
	const source = chance.maybe(0.25)
		? declare(site, "generator", "gen", { rating: amperes, legs: [120, 240], bonding: "bonds neutral to frame" })
		: declare(site, "shore", "pole", { rating: amperes, legs: [120, 240] });
	return [source.line, ...writeBoard(site, { from: source.name, amperes, legs: 2 })];
}

/** A generator bonds its neutral itself, or floats and the panel of a building bonds it. */
function fromGenerator(site: Site): Line[] {
	const { chance, wish } = site;
	const amperes = drawInlet(site);
	const bondsInPanel = wish.rules === "building" && chance.maybe(0.3);
	const source = declare(site, "generator", "gen", {
		power: amperes * site.volts,
		rating: amperes,
		voltage: sayVolts(site),
		bonding: bondsInPanel ? chance.pick([undefined, "floating"]) : "bonds neutral to frame",
	});
	const feed: Feed = { from: source.name, amperes, legs: 1 };
	if (!bondsInPanel) return [source.line, ...writeBoard(site, feed)];
	const word = chance.pick(["bonding screw", "bonding strap"]);
	return [
		source.line,
		...writeBoard(
			site,
			chance.maybe(0.5)
				? { ...feed, below: [{ text: word }] }
				: { ...feed, more: chance.pick<Facts>([{ bond: word }, { bonded: true }]) },
		),
	];
}

function fromInverter(site: Site): Line[] {
	const amperes = drawInlet(site);
	const facts = machineFacts(site, amperes);
	const source = declare(site, "inverter", "inv", facts);
	wireMachine(site, source.name, facts);
	return [source.line, ...writeBoard(site, { from: source.name, amperes, legs: 1 })];
}

function fromInverterCharger(site: Site): Line[] {
	const { chance } = site;
	const amperes = drawInlet(site);
	const shore = declare(site, "shore", "shore", { rating: amperes, voltage: sayVolts(site) });
	const facts = machineFacts(site, amperes);
	const machine = declare(site, "inverter-charger", "inv", {
		...facts,
		"pass-through": amperes,
		transfer: chance.pick([undefined, "transfers hot and neutral"]),
	});
	wireMachine(site, machine.name, facts);
	const cable = cablesFor(site.wish, chance, amperes).plain;
	const length = site.spelling.length(chance.count(5, 60) / 10);
	return [
		...chance.shuffle([shore.line, machine.line]),
		{
			text: `feed ${site.names.fresh("supply")} from ${shore.name} by ${cable}`,
			below: [{ length, text: `to ${machine.name}.in` }],
		},
		...writeBoard(site, { from: `${machine.name}.out`, amperes, legs: 1 }),
		...(chance.maybe(0.3)
			? [
					{ text: `mode parked: ${shore.name}` },
					{ text: `mode camping: ${machine.name}${chance.maybe(0.5) ? ` without ${shore.name}` : ""}` },
				]
			: []),
	];
}

/** Shore or a generator by choice, each bonded by itself, so that the neutral moves with the hots. */
function fromTransfer(site: Site): Line[] {
	const { chance, wish } = site;
	const amperes = 30;
	const twoLegs = wish.region === "us" && wish.rules !== "boat" && chance.maybe(0.4);
	const legs: Facts = twoLegs ? { legs: [120, 240] } : {};
	const shore = declare(site, "shore", "shore", { rating: amperes, ...legs });
	const generator = declare(site, "generator", "gen", {
		rating: amperes,
		bonding: chance.pick(["bonds neutral to frame", "bonding plug"]),
		...legs,
	});
	const name = site.names.fresh("TS");
	const [word = "", ...others] = site.words
		.thing(chance.pick(kindsFor("transfer")), {
			rating: chance.pick([30, 40, 50]),
			poles: chance.pick([undefined, twoLegs ? "three-pole" : "two-pole"]),
			centre: chance.pick([undefined, "centre off", "center off"]),
			automatic: chance.maybe(0.2) || undefined,
			plastic: chance.maybe(0.3) || undefined,
			...legs,
		})
		.split(" ");
	const cables = site.cablesFor(amperes);
	const run = (from: string, input: string): Line => ({
		text: `feed ${site.names.fresh("line")} from ${from} by ${site.use(cables, twoLegs ? cables.withSecondHot : cables.plain)}`,
		below: [{ length: site.spelling.length(chance.count(5, 60) / 10), text: `to ${name}.${input}` }],
	});
	return [
		...chance.shuffle([shore.line, generator.line, { text: `${word} ${name} ${others.join(" ")}` }]),
		run(shore.name, "1"),
		run(generator.name, "2"),
		...writeBoard(site, { from: name, amperes, legs: twoLegs ? 2 : 1 }),
	];
}

function machineFacts(site: Site, amperes: number): Facts {
	const { chance } = site;
	const power = Math.round((amperes * site.volts * chance.pick([0.8, 0.9, 1])) / 10) * 10;
	return {
		power,
		surge: chance.maybe(0.3) ? power * 2 : undefined,
		efficiency: chance.maybe(0.3) ? chance.count(85, 95) / 100 : undefined,
		voltages: chance.maybe(0.7) ? [site.bankFor(power), site.volts] : undefined,
		bonding: "bonds neutral when inverting",
	};
}

/** Its battery side waits for its wires where there is a bank, and its case for a bond at times. */
function wireMachine(site: Site, name: string, { power }: Facts): void {
	if (site.wish.sides !== "both" || typeof power !== "number") return;
	site.bankVolts = site.bankFor(power);
	site.machines.push({ name, power });
	if (site.chance.maybe(0.5)) site.cases.push(`${name}.case`);
}

/** The usual ratings of an inlet or of what stands for one. */
function drawInlet({ chance, wish }: Site): number {
	if (wish.region === "iec") return chance.pick([16, 16, 25, 32]);
	return wish.devices < 6 ? chance.pick([15, 20, 30]) : 30;
}

function sayVolts({ chance, volts }: Site): number | undefined {
	return chance.maybe(0.6) ? volts : undefined;
}

/** A source at the left edge. */
function declare(site: Site, sort: SourceSort, letter: string, facts: Facts): ReturnType<Site["declare"]> {
	const kinds = kindsFor("source").filter((candidate) => blueprintOf(candidate).source?.sort === sort);
	return site.declare(site.chance.pick(kinds), letter, facts);
}
