// Circuits of fixed loads: alone or several, behind a disconnect, on two hot legs.
import { type Branch, pickKind, type Stretch, takes } from "./branch.ts";
import { kindsFor } from "./kind-parts.ts";
import type { Site } from "./site.ts";
import type { Facts } from "./words.ts";

/** A load alone on its circuit, with its disconnect before it at times. */
export function writeFixedLoad(branch: Branch, stretch: Stretch): void {
	const { site } = branch;
	if (site.left > 1 && site.chance.maybe(0.5)) writeDisconnect(branch, stretch, {});
	const { kind, plate } = site.next(fixedLoads);
	const runsLong = site.chance.maybe(0.4);
	const power = branch.drawPower(kind, runsLong ? 0.78 : 0.95);
	const rated = ratedFacts(site, plate, power);
	const dedicated = site.chance.maybe(0.3) || undefined;
	const facts = { ...rated, continuous: runsLong || undefined, dedicated };
	branch.hop(stretch, { kind, facts, letter: "h", maySeparate: true });
}

/** Some plates print amperes or volt-amperes. */
function ratedFacts({ volts }: Site, plate: string, power: number): Facts {
	if (plate === "apparent power") return { "apparent power": power };
	const current = Math.floor((power / volts) * 100) / 100;
	return plate === "current" && current >= 0.1 ? { current } : { power };
}

/** Every kind of fixed load, in each of the ways to rate it; one after the other is written. */
const fixedLoads = (["power", "power", "current", "apparent power"] as const).flatMap((plate) =>
	kindsFor("load")
		.filter((kind) => takes(kind, plate) && takes(kind, "continuous"))
		.map((kind) => ({ kind, plate })),
);

/** Every kind that two hots can feed, in each of the ways to feed it; one after the other is written. */
const twoLegLoads = (["with neutral", "without neutral", "said without neutral"] as const).flatMap((feed) =>
	kindsFor("load")
		.filter((load) => takes(load, "legs") && takes(load, "voltage") && takes(load, "neutral"))
		.map((kind) => ({ kind, feed })),
);

/** A load for two hots, with or without a neutral, behind a two-pole breaker. */
export function writeTwoLegLoad(branch: Branch, stretch: Stretch): void {
	const { site, cables } = branch;
	const { chance } = site;
	const { kind, feed } = site.next(twoLegLoads);
	const withNeutral = feed === "with neutral";
	const bothHot = withNeutral ? [] : ["white marked red at both ends"];
	const left = [...(withNeutral ? [`by ${site.use(cables, cables.withSecondHot)}`] : []), ...bothHot];
	if (chance.maybe(0.12)) {
		const outlet = pickKind(site, "outlet", "rating", "voltage", "legs");
		const volts: Facts = withNeutral ? { legs: [120, 240] } : { voltage: 240 };
		branch.hop(stretch, { kind: outlet, facts: { rating: branch.amperes, ...volts }, letter: "d", left });
		return;
	}
	if (!withNeutral && site.left > 1 && chance.maybe(0.5)) writeDisconnect(branch, stretch, { voltage: 240 }, left);
	else if (!withNeutral && site.left > 1 && chance.maybe(0.4)) {
		const facts = { rating: branch.amperes, poles: "two-pole", voltage: 240 };
		branch.hop(stretch, { kind: pickKind(site, "switch", "poles", "voltage"), facts, left, letter: "s" });
	}
	const neutral = feed === "said without neutral" ? false : undefined;
	const volts: Facts = withNeutral ? { legs: [120, 240] } : { voltage: 240, neutral };
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
