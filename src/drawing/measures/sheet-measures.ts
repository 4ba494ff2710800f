// Measures of the whole sheet: its shape, how much of it stands empty, and whether its things keep apart.
import { growBox } from "../bounds.ts";
import { emptyShare, largestEmpty } from "../occupancy.ts";
import type { Group } from "../scene.ts";
import { BoxIndex } from "./box-index.ts";
import { atLeast, atMost, countFaults, type Measure } from "./measure.ts";
import { type SheetFacts, tell } from "./sheet-facts.ts";

/** All measures of the sheet. */
export function sheetMeasures(facts: SheetFacts): Measure[] {
	return [
		...shape(facts),
		emptiness(facts),
		emptyPocket(facts),
		enclosureGap(facts),
		symbolsOnSymbols(facts),
		linesThroughSymbols(facts),
		groupNames(facts),
	];
}

/** Width to height of the space inside the frame. */
function shape({ frame }: SheetFacts): Measure[] {
	const aspect = frame.width / frame.height;
	return [
		atLeast("aspect of the drawing area, least", aspect, 1.2),
		atMost("aspect of the drawing area, most", aspect, 2.2),
	];
}

/** The part of the space inside the frame that stands empty; asked of sheets with more than five things on them. */
function emptiness(facts: SheetFacts): Measure {
	return atMost("empty share", thingsOn(facts) > 5 ? emptyShare(withoutFrame(facts), facts.frame) : 0, 0.45);
}

/** The largest rectangle with nothing in it, as a part of the space inside the frame; asked of sheets with three boxes or six symbols and more. */
function emptyPocket(facts: SheetFacts): Measure {
	const { frame } = facts;
	const least = facts.enclosures.length === 0 ? 6 : 3;
	const empty =
		thingsOn(facts) >= least ? largestEmpty(withoutFrame(facts), frame) : { x: 0, y: 0, width: 0, height: 0 };
	const where = `${empty.width} x ${empty.height} at ${Math.round(empty.x)}, ${Math.round(empty.y)}`;
	const share = (empty.width * empty.height) / (frame.width * frame.height);
	return atMost("largest empty rectangle", share, 1 / 6, [where]);
}

/** Boxes of a wiring sheet, symbols of a one-line sheet. */
function thingsOn({ enclosures, symbols }: SheetFacts): number {
	return enclosures.length === 0 ? symbols.length : enclosures.length;
}

function withoutFrame({ sheet }: SheetFacts): Group[] {
	return sheet.groups.filter((group) => group.name !== "frame");
}

function enclosureGap({ enclosures }: SheetFacts): Measure {
	let least = 30;
	let where = "";
	enclosures.forEach((one, index) => {
		for (const other of enclosures.slice(index + 1)) {
			const [first, second] = [one.mark, other.mark];
			const across = Math.max(second.x - first.x - first.width, first.x - second.x - second.width);
			const down = Math.max(second.y - first.y - first.height, first.y - second.y - second.height);
			const gap = Math.max(across, down);
			if (gap >= least - 0.01) continue;
			least = gap;
			where = `${tell(one)} beside ${tell(other)}`;
		}
	});
	return atLeast("gap between enclosures", least, 30, [where]);
}

function symbolsOnSymbols({ symbols }: SheetFacts): Measure {
	const where: string[] = [];
	const index = new BoxIndex<(typeof symbols)[number]>();
	for (const symbol of symbols) {
		const core = growBox(symbol.box, -1);
		for (const other of index.meeting(core)) where.push(`${tell(symbol.of)} on ${tell(other.of)}`);
		index.add(core, symbol);
	}
	return countFaults("symbol on symbol", where);
}

/** A line of a one-line diagram runs to a symbol and away from it, never through one. */
function linesThroughSymbols({ segments, symbols }: SheetFacts): Measure {
	const index = new BoxIndex<(typeof symbols)[number]>();
	for (const symbol of symbols) index.add(growBox(symbol.box, -4), symbol);
	const where = segments
		.filter(({ of }) => of.mark.kind === "line" && (of.mark.as === "conductor" || of.mark.as === "bus"))
		.flatMap(({ of, box }) => index.meeting(box).map((symbol) => `${tell(of)} through ${tell(symbol.of)}`));
	return countFaults("line through symbol", where);
}

/** Names that ids are made of: each once. */
function groupNames({ sheet }: SheetFacts): Measure {
	const seen = new Set<string>();
	const twice = sheet.groups.filter((group) => {
		const known = seen.has(group.name);
		seen.add(group.name);
		return known;
	});
	return countFaults(
		"group names used twice",
		twice.map((group) => group.name),
	);
}
