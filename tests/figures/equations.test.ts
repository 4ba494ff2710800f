// The equations themselves, on every plan: what comes to a point leaves it, every conductor obeys Ohm's law, no way without
// resistance has volts across it, and power in is power out. Small ones are solved again by plain dense elimination.
import { describe, expect, test } from "vitest";
import type { Steady } from "../../src/figures/steady-state.ts";
import { generatePlan } from "../generator/generate-plan.ts";
import { solveDense } from "./dense.ts";
import { samples, steadiesOf } from "./plan-states.ts";

/** Amperes that all sources give together. */
function givenBy({ sources }: Steady): number {
	return sources.reduce((sum, { legs }) => sum + legs.reduce((all, leg) => all + Math.abs(leg), 0), 0);
}

/** The largest sum of what comes to a point and what leaves it, in amperes. */
function residualOf(steady: Steady): number {
	const { circuit, supplies } = steady;
	const sums = new Float64Array(circuit.points.length);
	const carry = (from: number, to: number, amperes: number): void => {
		sums[from] = (sums[from] ?? 0) - amperes;
		sums[to] = (sums[to] ?? 0) + amperes;
	};
	for (const { index, ends } of circuit.conductors) {
		const [from, to] = [ends[0].point, ends[1].point];
		if (from !== undefined && to !== undefined) carry(from, to, steady.amperesIn(index));
	}
	for (const { index, between } of circuit.links) carry(between[0], between[1], steady.amperesThrough(index));
	for (const { load, drawn, across } of steady.loads) {
		const [from, to] = load.between;
		const isUpright = steady.voltsAt(from) - steady.voltsAt(to) >= 0 === across >= 0;
		carry(from, to, isUpright ? drawn : -drawn);
	}
	const given = new Map(steady.sources.map((source) => [source.source, source]));
	const legOf = new Map<unknown, number>();
	for (const { source, plus, minus, volts } of supplies.supplies) {
		const leg = legOf.get(source) ?? 0;
		legOf.set(source, leg + 1);
		const amperes = given.get(source)?.legs[leg] ?? 0;
		carry(minus, plus, volts < 0 && source.system === "ac" ? -amperes : amperes);
	}
	for (const { source, plus, minus } of supplies.chargers) carry(minus, plus, given.get(source)?.given ?? 0);
	return sums.reduce((most, sum) => Math.max(most, Math.abs(sum)), 0);
}

function holdEquations(steady: Steady): void {
	const { net, loads, sources, lost } = steady;
	const scale = Math.max(1, givenBy(steady));
	expect(residualOf(steady)).toBeLessThanOrEqual(1e-9 * scale);
	for (const { from, to, siemens, by } of net.resistors)
		if (by.kind === "conductor")
			expect(
				Math.abs((steady.voltsAt(from) - steady.voltsAt(to)) * siemens - steady.amperesIn(by.index)),
			).toBeLessThanOrEqual(1e-9 * scale);
	for (const { from, to, by } of net.bridges) {
		const held = by.kind === "supply" ? by.supply.volts : 0;
		expect(Math.abs(steady.voltsAt(from) - steady.voltsAt(to) - held)).toBeLessThanOrEqual(1e-9);
	}
	const given = sources.reduce((sum, { power }) => sum + power, 0);
	const used = loads.reduce((sum, load) => sum + load.used, 0);
	expect(Math.abs(given - used - lost)).toBeLessThanOrEqual(1e-8 * Math.max(1, Math.abs(given)) * 10);
	for (const load of loads) {
		expect(Number.isFinite(load.across) && Number.isFinite(load.drawn)).toBe(true);
		if (load.nature === "power") expect(load.across * load.drawn).toBeCloseTo(load.used, 6);
	}
}

/** The volts of every point by dense elimination, with what the loads draw taken as found: rows for points, then for ways without resistance. */
function solveAgain({ net, flows, circuit, voltsAt }: Steady): readonly number[] {
	const points = circuit.points.length;
	// Ways without resistance that close a ring say nothing new, and would leave what flows round in it open.
	const parents = Array.from({ length: points }, (_, at) => at);
	const find = (at: number): number => (parents[at] === at ? at : find(parents[at] ?? at));
	const bridges = net.bridges.filter(({ from, to }) => {
		const [one, other] = [find(from), find(to)];
		parents[one] = other;
		return one !== other;
	});
	const count = points + bridges.length;
	const matrix = Array.from({ length: count }, () => new Array<number>(count).fill(0));
	const right = new Array<number>(count).fill(0);
	const add = (row: number, column: number, value: number): void => {
		const line = matrix[row];
		if (line !== undefined) line[column] = (line[column] ?? 0) + value;
	};
	const push = (row: number, value: number): void => {
		right[row] = (right[row] ?? 0) + value;
	};
	for (const { from, to, siemens, rise } of net.resistors)
		for (const [here, there, sign] of [
			[from, to, 1],
			[to, from, -1],
		] as const) {
			add(here, here, siemens);
			add(here, there, -siemens);
			push(here, sign * siemens * rise);
		}
	bridges.forEach(({ from, to, by }, at) => {
		const row = points + at;
		add(from, row, 1);
		add(to, row, -1);
		add(row, from, 1);
		add(row, to, -1);
		right[row] = by.kind === "supply" ? by.supply.volts : 0;
	});
	for (const { from, to, nature, amount } of flows) {
		const across = voltsAt(from) - voltsAt(to);
		const amperes = nature === "current" || amount === 0 ? amount : amount / across;
		push(from, -amperes);
		push(to, amperes);
	}
	// Each part that hangs together is held at 0 at one point, in place of that point's own sum, which follows from the others.
	for (const zero of new Set(net.zeroOf)) {
		matrix[zero] = Array.from({ length: count }, (_, column) => (column === zero ? 1 : 0));
		right[zero] = 0;
	}
	return solveDense(matrix, right);
}

const generated = Array.from({ length: 200 }, (_, at) => 500 + at);

describe("samples and starters", () => {
	test.each(samples)("%s", (_, text) => {
		for (const steady of steadiesOf(text)) holdEquations(steady);
	});
});

test.each([0, 1, 2, 3])("fifty generated plans, part %i", (part) => {
	for (const seed of generated.slice(part * 50, part * 50 + 50))
		for (const steady of steadiesOf(generatePlan(seed).text)) holdEquations(steady);
});

test("dense elimination of the same equations gives the same volts", () => {
	let compared = 0;
	const texts = [...samples.map(([, text]) => text), ...generated.slice(0, 60).map((seed) => generatePlan(seed).text)];
	for (const text of texts)
		for (const steady of steadiesOf(text)) {
			if (steady.net.bridges.length + steady.circuit.points.length > 260) continue;
			solveAgain(steady)
				.slice(0, steady.circuit.points.length)
				.forEach((volts, point) => {
					expect(Math.abs(volts - steady.voltsAt(point))).toBeLessThanOrEqual(1e-8 * Math.max(1, Math.abs(volts)));
					compared++;
				});
		}
	expect(compared).toBeGreaterThan(2000);
});
