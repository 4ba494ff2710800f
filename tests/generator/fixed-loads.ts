// Circuits of fixed loads: alone or several, behind a disconnect, on two hot legs.
import { type Branch, pickKind, type Stretch, takes } from "./branch.ts";
import { kindsFor } from "./kind-parts.ts";
import type { Site } from "./site.ts";
import type { Facts } from "./words.ts";

/** A load alone on its circuit, with its disconnect before it at times. */
export function writeFixedLoad(branch: Branch, stretch: Stretch): void {
	const { site } = branch;
	if (site.left > 1 && site.chance.maybe(0.5)) writeDisconnect(branch, stretch, {});
	const kind = loadKind(site);
	const runsLong = site.chance.maybe(0.4);
	const power = branch.drawPower(kind, runsLong ? 0.78 : 0.95);
	// Some plates print amperes.
	const rated: Facts =
		power > 100 && takes(kind, "current") && site.chance.maybe(0.2)
			? { current: Math.floor((power / site.volts) * 10) / 10 }
			: { power };
	branch.hop(stretch, { kind, facts: { ...rated, continuous: runsLong || undefined }, letter: "h", maySeparate: true });
}

/** A load for two hots, with or without a neutral, behind a two-pole breaker. */
export function writeTwoLegLoad(branch: Branch, stretch: Stretch): void {
	const { site, cables } = branch;
	const { chance } = site;
	const withNeutral = chance.maybe(0.35);
	const bothHot = withNeutral ? [] : ["white marked red at both ends"];
	const left = [...(withNeutral ? [`by ${site.use(cables, cables.withSecondHot)}`] : []), ...bothHot];
	if (chance.maybe(0.3)) {
		const kind = pickKind(site, "outlet", "rating", "voltage", "legs");
		const volts: Facts = withNeutral ? { legs: [120, 240] } : { voltage: 240 };
		branch.hop(stretch, { kind, facts: { rating: branch.amperes, ...volts }, letter: "d", left });
		return;
	}
	if (!withNeutral && site.left > 1 && chance.maybe(0.5)) writeDisconnect(branch, stretch, { voltage: 240 }, left);
	else if (!withNeutral && site.left > 1 && chance.maybe(0.4)) {
		const facts = { rating: branch.amperes, poles: "two-pole", voltage: 240 };
		branch.hop(stretch, { kind: pickKind(site, "switch", "poles", "voltage"), facts, left, letter: "s" });
	}
	const kind = chance.pick(kindsFor("load").filter((load) => takes(load, "legs") && takes(load, "voltage")));
	const volts: Facts = withNeutral
		? { legs: [120, 240] }
		: { voltage: 240, neutral: takes(kind, "neutral") && chance.maybe(0.7) ? false : undefined };
	branch.hop(stretch, {
		kind,
		facts: { power: chance.figure(300, branch.amperes * 200), ...volts },
		letter: "h",
		left,
	});
}

function writeDisconnect(branch: Branch, stretch: Stretch, more: Facts, left: readonly string[] = []): void {
	const { site } = branch;
	branch.hop(stretch, {
		kind: pickKind(site, "disconnect", "rating"),
		facts: {
			rating: site.chance.pick([30, 40, 60].filter((rating) => rating >= branch.amperes)),
			poles: site.chance.pick(
				more.voltage === undefined ? [undefined, "two-pole", "single-pole"] : [undefined, "two-pole"],
			),
			...more,
		},
		left,
		letter: "dis",
	});
}

function loadKind(site: Site) {
	return site.chance.pick(kindsFor("load").filter((kind) => takes(kind, "power") && takes(kind, "continuous")));
}
