// Circuits of lights: a switch first in line, loops from the light to its switch, three-way pairs with four-ways between, dimmers.

import { certain } from "../../src/base/certain.ts";
import type { Kind } from "../../src/kinds/kind.ts";
import { type Branch, pickKind, type Stretch, takes } from "./branch.ts";
import { blueprintOf, kindsFor } from "./kind-parts.ts";
import { writeOutlets } from "./outlets.ts";
import type { Site } from "./site.ts";
import type { Facts } from "./words.ts";

/** Lights and how they are switched; so many lights at most. */
export function writeLights(branch: Branch, stretch: Stretch, count: number): void {
	const { site } = branch;
	const sort = site.chance.weigh<(branch: Branch, stretch: Stretch, count: number) => void>([
		[5, switchFirst],
		[2, looped],
		[site.left > 2 ? 3 : 0, fromSeveralPlaces],
		[site.left > 2 ? 1 : 0, lightBetween],
		[1, dimmed],
	]);
	sort(branch, stretch, Math.max(1, Math.min(count, site.left - 1)));
}

/** So many lights one behind the other, in a row at times. */
export function writeRow(
	branch: Branch,
	stretch: Stretch,
	count: number,
	left: readonly string[] = [],
	kind = lightKind(branch.site),
): void {
	const { site } = branch;
	if (count > 1 && site.chance.maybe(0.4)) {
		const row = { kind, facts: { power: branch.drawPower(kind, 0.2, count, 20) }, row: count, letter: "l", left };
		branch.hop(stretch, row);
		return;
	}
	for (let number = 0; number < count; number++)
		branch.hop(stretch, {
			kind,
			facts: ratedFacts(branch, kind),
			letter: "l",
			left: number === 0 ? left : [],
			maySeparate: left.length === 0,
		});
}

/** Some plates print amperes. */
function ratedFacts(branch: Branch, kind: Kind): Facts {
	const { chance, volts } = branch.site;
	const power = branch.drawPower(kind, 0.2);
	const current = Math.floor((power / volts) * 100) / 100;
	return current >= 0.01 && chance.maybe(0.1) ? { current } : { power };
}

/** What a dimmer is made for: a fan behind it hums and runs hot. */
export function dimmable(): Kind {
	return certain(
		kindsFor("load").find((kind) => blueprintOf(kind).face.traits.includes("light")),
		"a light",
	);
}

function lightKind(site: Site) {
	return site.chance.pick(kindsFor("load").filter(({ name }) => name === "light" || name === "fan"));
}

function switchFirst(branch: Branch, stretch: Stretch, count: number): void {
	const { site } = branch;
	const { chance, wish } = site;
	const kind = chance.maybe(0.8) ? pickKind(site, "switch", "poles") : chance.pick(kindsFor("switch"));
	const name = branch.hop(stretch, {
		kind,
		facts: {
			rating: chance.pick([undefined, wish.region === "us" ? 15 : 16]),
			poles: !takes(kind, "poles")
				? undefined
				: chance.weigh([
						[6, undefined],
						[1, "single-pole"],
						[1, "two-pole"],
					]),
		},
		letter: "s",
	});
	writeRow(branch, stretch, count);
	// What is fed ahead of the switch stays live.
	if (chance.maybe(0.3))
		branch.branchOff(stretch, `${name}.line`, stretch.isProtected, (side) =>
			writeOutlets(branch, side, chance.count(1, 2), 2),
		);
}

function dimmed(branch: Branch, stretch: Stretch, count: number): void {
	const { chance } = branch.site;
	branch.hop(stretch, {
		kind: chance.pick(kindsFor("dimmer")),
		facts: { rating: chance.pick([undefined, 15]) },
		letter: "s",
	});
	writeRow(branch, stretch, count, [], dimmable());
}

/** Power at the light: a cable goes on to the switch and back, its neutral core marked as the hot it is. */
function looped(branch: Branch, stretch: Stretch, count: number): void {
	const { site } = branch;
	const kind = lightKind(site);
	const light = branch.hop(stretch, { kind, facts: { power: branch.drawPower(kind, 0.2) }, letter: "l" });
	branch.hop(stretch, { kind: pickKind(site, "switch", "ways"), letter: "s", left: [marked(site)] });
	if (site.chance.maybe(0.4))
		branch.branchOff(stretch, `${light}.switched`, stretch.isProtected, (side) =>
			writeRow(branch, side, Math.max(1, Math.min(count, site.left))),
		);
	if (site.chance.maybe(0.3))
		branch.branchOff(stretch, light, stretch.isProtected, (side) => writeOutlets(branch, side, 1, 2));
}

/** A switch at each end of the travellers and any number between them; the light behind the last. */
function fromSeveralPlaces(branch: Branch, stretch: Stretch, count: number): void {
	const { site, cables } = branch;
	const kind = pickKind(site, "switch", "ways");
	const [end, between] = site.wish.region === "us" ? ["three-way", "four-way"] : ["two-way", "intermediate"];
	const withHot = cables.withThirdHot !== undefined && site.chance.maybe(0.2);
	const travellers =
		withHot && cables.withThirdHot !== undefined ? cables.withThirdHot : site.use(cables, cables.withSecondHot);
	branch.hop(stretch, { kind, facts: { ways: end }, letter: "s" });
	const more = site.left > 4 && site.chance.maybe(0.4) ? site.chance.count(1, 2) : 0;
	for (let number = 0; number < more; number++)
		branch.hop(stretch, {
			kind,
			facts: { ways: between },
			letter: "s",
			left: number === 0 ? [`by ${travellers}`] : [],
		});
	const last = branch.hop(stretch, {
		kind,
		facts: { ways: end },
		letter: "s",
		left: more === 0 ? [`by ${travellers}`] : [],
	});
	writeRow(branch, stretch, count, [`by ${cables.plain}`]);
	// Black brought the hot past the switches: what hangs there is always live.
	if (withHot && site.left > 0)
		branch.branchOff(stretch, `${last}.line`, stretch.isProtected, (side) => writeOutlets(branch, side, 1, 2));
}

/** Three-way switches on both sides of the light. */
function lightBetween(branch: Branch, stretch: Stretch): void {
	const { site, cables } = branch;
	const kind = pickKind(site, "switch", "ways");
	const end = site.wish.region === "us" ? "three-way" : "two-way";
	branch.hop(stretch, { kind, facts: { ways: end }, letter: "s" });
	const light = lightKind(site);
	branch.hop(stretch, {
		kind: light,
		facts: { power: branch.drawPower(light, 0.2) },
		letter: "l",
		left: [`by ${site.use(cables, cables.withSecondHot)}`],
	});
	branch.hop(stretch, { kind, facts: { ways: end }, letter: "s", left: [marked(site)] });
}

/** The core that is a neutral elsewhere, marked at both ends with the colour of a hot. */
function marked(site: Site): string {
	return site.wish.region === "us" ? "white marked black at both ends" : "blue marked brown at both ends";
}
