// A solved mode as a netlist for a general circuit simulator, and what the simulator makes of it.
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Steady } from "../../src/figures/steady-state.ts";

/** What a simulator found: volts of each point that something hangs on, amperes in conductors and links. */
export interface Simulated {
	readonly volts: ReadonlyMap<number, number>;
	readonly conductors: ReadonlyMap<number, number>;
	readonly links: ReadonlyMap<number, number>;
}

/** Ohms of what has none: little enough to lose nothing, enough to tell what flows. */
const none = 1e-9;

/** The netlist of a solved mode: what was wired and asked for, nothing of what was found. */
export function netlistOf({ net, flows, circuit }: Steady): string {
	const grounded = new Set(net.zeroOf);
	const node = (point: number): string => (grounded.has(point) ? "0" : `p${point}`);
	const used = new Set<number>();
	const lines: string[] = [];
	const resistor = (name: string, from: string, to: string, ohms: number): void => {
		lines.push(`R${name} ${from} ${to} ${ohms.toExponential(15)}`);
	};
	const tie = (from: number, to: number): void => {
		used.add(from);
		used.add(to);
	};
	let sources = 0;
	const source = (plus: number, minus: number, volts: number, ohms: number): void => {
		const name = sources++;
		lines.push(`V${name} s${name} ${node(minus)} ${volts.toExponential(15)}`);
		resistor(`s${name}`, `s${name}`, node(plus), ohms);
	};
	net.resistors.forEach(({ from, to, siemens, by }, at) => {
		tie(from, to);
		if (by.kind === "supply") source(from, to, by.supply.volts, 1 / siemens);
		else resistor(by.kind === "conductor" ? `c${by.index}` : `d${at}`, node(from), node(to), 1 / siemens);
	});
	for (const { from, to, by } of net.bridges) {
		tie(from, to);
		if (by.kind === "supply") source(from, to, by.supply.volts, none);
		else resistor(`${by.kind === "conductor" ? "c" : "l"}${by.index}`, node(from), node(to), none);
	}
	flows.forEach(({ from, to, nature, amount, quiet }, at) => {
		tie(from, to);
		if (amount === 0) return;
		const across = `v(${node(from)},${node(to)})`;
		// The simulator begins at no volts at all; far from the answer a power is taken for a resistance.
		const least = Math.abs(quiet) / 4;
		if (nature === "current") lines.push(`I${at} ${node(from)} ${node(to)} ${amount.toExponential(15)}`);
		else
			lines.push(
				`B${at} ${node(from)} ${node(to)} I = abs(${across}) > ${least} ? ${amount.toExponential(15)} / ${across} : ${(amount / least ** 2).toExponential(15)} * ${across}`,
			);
	});
	return [
		`* ${circuit.points.length} points`,
		...lines,
		".options reltol=1e-6 vntol=1e-6 abstol=1e-6 gmin=1e-15 itl1=500 savecurrents",
		".end",
		"",
	].join("\n");
}

/** Has the simulator solve modes, one after the other; throws where it is not installed or does not come to an end. */
export function simulate(steadies: readonly Steady[]): readonly Simulated[] {
	const folder = mkdtempSync(join(tmpdir(), "ferrule-netlist-"));
	try {
		const calls = steadies.map((steady, at) => {
			writeFileSync(join(folder, `net${at}.cir`), netlistOf(steady));
			return `source net${at}.cir\nop\nwrite net${at}.raw all\ndestroy all\nremcirc\n`;
		});
		const script = `* all of them\n.control\nset filetype=ascii\n${calls.join("")}quit 0\n.endc\n.end\n`;
		writeFileSync(join(folder, "run.cir"), script);
		const result = spawnSync("ngspice", ["-b", "run.cir"], { cwd: folder, encoding: "utf8", timeout: 120_000 });
		if (result.error !== undefined)
			throw new Error(
				`NOTHING WAS COMPARED: ngspice cannot be started (${result.error.message}). Install the package ngspice.`,
			);
		if (result.status !== 0) throw new Error(`ngspice ended with ${result.status}: ${result.stderr}`);
		return steadies.map((_, at) => readRaw(readFileSync(join(folder, `net${at}.raw`), "utf8")));
	} finally {
		rmSync(folder, { recursive: true });
	}
}

/** The figures of an operating point as the simulator writes them. */
function readRaw(text: string): Simulated {
	const [head = "", body = ""] = text.split(/^Values:$/m);
	const names = (head.split(/^Variables:$/m)[1] ?? "")
		.trim()
		.split("\n")
		.map((line) => line.trim().split(/\s+/)[1] ?? "");
	const values = body.trim().split(/\s+/).slice(1).map(Number);
	const read = {
		volts: new Map<number, number>(),
		conductors: new Map<number, number>(),
		links: new Map<number, number>(),
	};
	names.forEach((name, at) => {
		const value = values[at] ?? Number.NaN;
		const [, point] = /^(?:v\()?p(\d+)\)?$/i.exec(name) ?? [];
		const [, sort, index] = /^(?:i\()?@r([cl])(\d+)\[i\]\)?$/i.exec(name) ?? [];
		if (point !== undefined) read.volts.set(Number(point), value);
		if (index !== undefined) (sort === "c" ? read.conductors : read.links).set(Number(index), value);
	});
	return read;
}
