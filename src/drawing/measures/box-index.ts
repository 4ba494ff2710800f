// Finds what lies near a box without looking at everything: things in squares of the sheet.
import { type Box, boxesMeet } from "../bounds.ts";

/** Things by where they are. */
export class BoxIndex<Thing> {
	private readonly squares = new Map<number, { readonly box: Box; readonly thing: Thing }[]>();

	/** Adds a thing that occupies `box`. */
	add(box: Box, thing: Thing): void {
		const entry = { box, thing };
		for (const square of squaresOf(box)) {
			const there = this.squares.get(square);
			if (there === undefined) this.squares.set(square, [entry]);
			else there.push(entry);
		}
	}

	/** The things whose boxes share more than an edge with `box`, each once, in the order they were added to a square. */
	meeting(box: Box): Thing[] {
		const found = new Set<Thing>();
		for (const square of squaresOf(box))
			for (const entry of this.squares.get(square) ?? []) if (boxesMeet(entry.box, box)) found.add(entry.thing);
		return [...found];
	}
}

function* squaresOf(box: Box): Generator<number> {
	const lastRow = Math.floor((box.y + box.height) / side);
	const lastColumn = Math.floor((box.x + box.width) / side);
	for (let row = Math.floor(box.y / side); row <= lastRow; row++)
		for (let column = Math.floor(box.x / side); column <= lastColumn; column++) yield row * wide + column;
}

const side = 80;
/** More columns than any sheet has. */
const wide = 100_000;
