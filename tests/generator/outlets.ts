// Circuits of outlets: in a chain, branching, out of a junction box, two in one box, behind a ground-fault outlet first in line.
import { type Branch, pickKind, type Stretch } from "./branch.ts";
import { kindsFor } from "./kind-parts.ts";
import type { Line } from "./lines.ts";
import type { Site } from "./site.ts";
import type { Facts } from "./words.ts";

/** A chain of so many outlets at most, with branches off it. */
export function writeOutlets(branch: Branch, stretch: Stretch, count: number, depth = 0): void {
	const { site } = branch;
	const { chance } = site;
	const reached: { name: string; side: string; isProtected: boolean }[] = [];
	for (let left = Math.min(count, site.left); left > 0; left--) {
		if (left > 1 && chance.maybe(0.1)) {
			const devices = chance.count(1, Math.min(3, left));
			reached.push({ name: writeGang(branch, stretch, devices), side: "", isProtected: stretch.isProtected });
			left -= devices - 1;
			continue;
		}
		const before = stretch.isProtected;
		const name = writeOutlet(branch, stretch);
		reached.push({ name, side: "", isProtected: stretch.isProtected });
		if (!before && stretch.isProtected) reached.push({ name, side: ".line", isProtected: false });
	}
	if (depth > 1) return;
	for (let more = chance.maybe(0.3) ? chance.count(1, 2) : 0; more > 0 && reached.length > 0; more--) {
		const start = chance.pick(reached);
		branch.branchOff(stretch, `${start.name}${start.side}`, start.isProtected, (side) =>
			writeOutlets(branch, side, chance.count(1, 3), depth + 1),
		);
	}
}

/** One outlet on the circuit, or a ground-fault outlet that protects what follows. */
export function writeOutlet(branch: Branch, stretch: Stretch): string {
	const { site } = branch;
	const isGuard =
		!stretch.isProtected && site.chance.maybe(site.places.some((place) => place.asksGroundFault) ? 0.5 : 0.1);
	if (!isGuard) {
		const kind = pickKind(site, "outlet", "rating", "shape");
		const name = branch.hop(stretch, { kind, facts: outletFacts(branch), letter: "r", maySeparate: true });
		branch.last = { name, line: stretch.lines.at(-1) };
		return name;
	}
	// Its own outlets are protected too, wherever it is.
	stretch.isProtected = true;
	const kind = site.chance.pick(kindsFor("ground-fault outlet"));
	return branch.hop(stretch, { kind, facts: guardFacts(branch), letter: "g" });
}

/** What is said of a receptacle among several on the circuit: a rating that goes with the breaker, a shape. */
export function outletFacts(branch: Branch): Facts {
	const { chance, wish } = branch.site;
	const ratings =
		wish.region === "iec" ? [16, undefined] : branch.amperes === 20 ? [15, 20, undefined] : [15, undefined];
	return {
		rating: chance.pick(ratings),
		shape: chance.weigh([
			[6, undefined],
			[2, "duplex"],
			[wish.region === "iec" ? 1 : 0.3, wish.region === "iec" ? "single" : "duplex"],
		]),
	};
}

function guardFacts(branch: Branch): Facts {
	const { chance, wish } = branch.site;
	return {
		rating: wish.region === "iec" ? 16 : chance.pick(branch.amperes === 20 ? [20, 15, undefined] : [15]),
		trip: wish.region === "iec" ? chance.pick([0.01, 0.03]) : chance.pick([undefined, 0.005, 0.006]),
	};
}

/** Several outlets in one box. */
function writeGang(branch: Branch, stretch: Stretch, devices: number): string {
	const { site } = branch;
	const kind = pickKind(site, "outlet", "rating", "shape");
	const members = Array.from({ length: devices }, (): Line => {
		const what = `${site.words.thing(kind, outletFacts(branch))} ${site.names.label()}`.trim();
		return { text: `${site.names.fresh("r")}: ${what}` };
	});
	return branch.hop(stretch, {
		kind: pickKind(site, "box", "volume"),
		facts: boxFacts(site),
		letter: "k",
		below: members,
		hasNoBox: true,
	});
}

/** A junction box from which several stretches go on. */
export function writeJunction(branch: Branch, stretch: Stretch, write: (side: Stretch) => void): void {
	const { site } = branch;
	const kind = pickKind(site, "box", "volume");
	const name = branch.hop(stretch, { kind, facts: boxFacts(site), letter: "j", hasNoBox: true });
	// A box is no device.
	site.left += 1;
	for (let ways = site.chance.count(1, 3); ways > 0 && site.left > 0; ways--)
		branch.branchOff(stretch, name, stretch.isProtected, write);
}

/** Half of a receptacle behind a switch, the other half always live. */
export function writeHalfSwitched(branch: Branch, stretch: Stretch): void {
	const { site, cables } = branch;
	const kind = pickKind(site, "outlet", "shape", "hot tab");
	branch.hop(stretch, { kind: pickKind(site, "switch", "ways"), letter: "s" });
	branch.hop(stretch, {
		kind,
		facts: site.chance.pick<Facts>([{ shape: "split" }, { "hot tab": "no hot tab" }, { "hot tab": "no brass tab" }]),
		left: [`by ${site.use(cables, cables.withSecondHot)}`],
		letter: "r",
	});
}

/** A receptacle whose halves hang on two circuits; gives its name for the second of them. */
export function writeTwoHalves(branch: Branch, stretch: Stretch): string {
	const { chance, words } = branch.site;
	const kind = pickKind(branch.site, "outlet", "hot tab", "neutral tab");
	words.said.add(`${kind.name}: neutral tab`);
	const tabs = chance.maybe(0.5)
		? { "hot tab": "no hot tab", "neutral tab": "no neutral tab" }
		: { shape: "split", "neutral tab": "no silver tab" };
	return branch.hop(stretch, { kind, facts: tabs, letter: "r" });
}

/** One receptacle alone on its circuit, of the circuit's rating. */
export function writeDedicated(branch: Branch, stretch: Stretch): void {
	const { site } = branch;
	const kind = pickKind(site, "outlet", "rating", "dedicated");
	const rating = site.wish.region === "iec" && branch.amperes < 16 ? 16 : branch.amperes;
	branch.hop(stretch, {
		kind,
		facts: { rating, shape: "single", dedicated: site.chance.maybe(0.7) || undefined },
		letter: "d",
	});
}

/** A cable that waits in the wall, coiled up at times. */
export function writeLater(branch: Branch, stretch: Stretch): void {
	branch.hop(stretch, {
		kind: branch.site.chance.pick(kindsFor("end")),
		facts: endFacts(branch.site),
		letter: "e",
		hasNoBox: true,
	});
}

/** What is said of an end that waits. */
export function endFacts({ chance }: Site): Facts {
	return {
		state: chance.maybe(0.4) ? "capped" : undefined,
		coiled: chance.maybe(0.4) ? chance.count(5, 30) / 10 : undefined,
	};
}

function boxFacts(site: Site): Facts {
	return { volume: site.chance.maybe(0.7) ? (site.wish.region === "us" ? 42 * 16.387064 : 800) : undefined };
}
