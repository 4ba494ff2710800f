// The lower edge of what is already placed, along the lanes' direction: how far down something new must stand to be clear of it.

/** An upright rectangle of a lane: along it from `from` to `to`, across it from `top` to `bottom`. */
export interface Tract {
	readonly from: number;
	readonly to: number;
	readonly top: number;
	readonly bottom: number;
}

/** Steps from left to right, each with the lowest point of what stands there. */
export class Skyline {
	private readonly steps: Step[] = [];

	/** Adds what has been placed, `du` further along and `dy` further down. */
	add(tracts: readonly Tract[], du: number, dy: number): void {
		for (const tract of tracts) this.addStep(tract.from + du, tract.to + du, tract.bottom + dy);
	}

	/** The least shift down at which all tracts, `du` further along, are `gap` clear of what stands; -Infinity where nothing does. */
	clearance(tracts: readonly Tract[], du: number, gap: number): number {
		let shift = Number.NEGATIVE_INFINITY;
		for (const tract of tracts)
			shift = Math.max(shift, this.bottomOver(tract.from + du - gap, tract.to + du + gap) + gap - tract.top);
		return shift;
	}

	private bottomOver(from: number, to: number): number {
		let bottom = Number.NEGATIVE_INFINITY;
		for (const step of this.steps) {
			if (step.from >= to) break;
			if (step.to > from) bottom = Math.max(bottom, step.bottom);
		}
		return bottom;
	}

	private addStep(from: number, to: number, bottom: number): void {
		const { steps } = this;
		let first = 0;
		while (first < steps.length && (steps[first]?.to ?? to) <= from) first++;
		const renewed: Step[] = [];
		let at = from;
		let behind = first;
		for (let step = steps[behind]; step !== undefined && step.from < to; step = steps[++behind]) {
			if (step.from < from) renewed.push({ from: step.from, to: from, bottom: step.bottom });
			const start = Math.max(step.from, from);
			if (start > at) renewed.push({ from: at, to: start, bottom });
			const end = Math.min(step.to, to);
			renewed.push({ from: start, to: end, bottom: Math.max(step.bottom, bottom) });
			at = end;
			if (step.to > to) renewed.push({ from: to, to: step.to, bottom: step.bottom });
		}
		if (at < to) renewed.push({ from: at, to, bottom });
		steps.splice(first, behind - first, ...renewed);
	}
}

interface Step {
	readonly from: number;
	readonly to: number;
	readonly bottom: number;
}

/** The tracts of a long lane as one, for whose sake no time is lost. */
export function boundLong(tracts: readonly Tract[]): readonly Tract[] {
	if (tracts.length <= mostTracts) return tracts;
	const [first] = tracts;
	if (first === undefined) return tracts;
	let { from, to, top, bottom } = first;
	for (const tract of tracts) {
		from = Math.min(from, tract.from);
		to = Math.max(to, tract.to);
		top = Math.min(top, tract.top);
		bottom = Math.max(bottom, tract.bottom);
	}
	return [{ from, to, top, bottom }];
}

const mostTracts = 120;
