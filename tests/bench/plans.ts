// Plans of any size for measurements: always the same text for the same number, with nothing wrong in them.

/** Devices on one circuit, and circuits in one panel. */
const perCircuit = 8;
const perPanel = 12;
/** Panels that one panel feeds at most. */
const perFeeder = 12;

/** A plan with this many devices in boxes, on panels that are fed from panels as far as it takes. */
export function planOf(devices: number): string {
	const circuits = Math.ceil(devices / perCircuit);
	const leaves = Math.ceil(circuits / perPanel);
	const lines = [
		'plan "A plan to measure by"',
		"  region us",
		"  rules building",
		"  box 32 cuin",
		"",
		'place hall "Hall"',
		"",
	];
	lines.push("inlet shore 50 A 120 V in hall");
	feedLeaves(lines, "shore", "P", 0, leaves, (leaf, panel) => {
		const first = leaf * perPanel;
		for (let circuit = first; circuit < Math.min(first + perPanel, circuits); circuit++) {
			const start = circuit * perCircuit;
			lines.push(...circuitOf(circuit, panel, start, Math.min(perCircuit, devices - start)));
		}
	});
	return `${lines.join("\n")}\n`;
}

/** A plan with this many sources, each with a panel and a receptacle of its own; a check judges sixteen modes and says so of the rest. */
export function planOfSources(sources: number): string {
	const lines = ['plan "Many sources"', "  region us", "  rules building", "  box 32 cuin", "", 'place hall "Hall"'];
	for (let source = 0; source < sources; source++)
		lines.push(
			"",
			`inlet s${source} 30 A 120 V in hall`,
			`panel P${source} main 30 A from s${source} by 10-2, 12 ft`,
			`circuit c${source} "Circuit ${source}" from P${source} breaker 20 A by 12-2`,
			`  9 ft to d${source}: receptacle in hall`,
		);
	return `${lines.join("\n")}\n`;
}

/** A plan of direct current: a battery, its bank, an inverter, and a fuse block with this many circuits of two lights each. */
export function planOfDirect(circuits: number): string {
	const lines = [
		'plan "Direct current to measure by"',
		"  region us",
		"battery house lithium 12.8 V 280 Ah, fault 5 kA",
		"inverter inv 2000 W 12 V / 120 V, bonds neutral when inverting",
		"feed bank-plus from house.+ by single 4/0 red",
		"  6 in to F1: fuse class-T 300 A interrupting 20 kA",
		"  1 ft to D1: disconnect 300 A",
		"  1 ft to plus: bus 600 A",
		"feed bank-minus from house.- by single 4/0 black",
		"  1 ft to SH: shunt 500 A",
		"  1 ft to minus: bus 600 A",
		"feed inv-plus from plus by single 2/0 red",
		"  6 in to F2: fuse class-T 250 A interrupting 20 kA",
		"  3 ft to inv.+",
		"feed inv-minus from minus by single 2/0 black",
		"  3 ft to inv.-",
		"fuse-block FB",
		...Array.from({ length: circuits }, (_, index) => `  slot ${index + 1}: fuse 10 A`),
		"feed small from plus, minus by pair 6 AWG",
		"  bolted to F3: fuse 60 A interrupting 10 kA",
		"  3 ft to FB",
	];
	for (let circuit = 1; circuit <= circuits; circuit++)
		lines.push(
			`circuit c${circuit} from FB.${circuit} by pair 14 AWG`,
			`  9 ft to a${circuit}: light 6 W`,
			`  4 ft to b${circuit}: light 6 W`,
		);
	return `${lines.join("\n")}\n`;
}

/** Declares a panel fed from `source`: one with circuits for a single leaf, one that feeds others for several. */
function feedLeaves(
	lines: string[],
	source: string,
	panel: string,
	first: number,
	count: number,
	fill: (leaf: number, panel: string) => void,
): void {
	lines.push(`panel ${panel} main 50 A, spaces 24 from ${source} by 6-2, 20 ft`);
	if (count === 1) return fill(first, panel);
	const parts = Math.min(perFeeder, count);
	for (let part = 0; part < parts; part++) lines.push(`  slot ${part + 1}: breaker 50 A`);
	for (let part = 0; part < parts; part++) {
		const from = Math.floor((count * part) / parts);
		const to = Math.floor((count * (part + 1)) / parts);
		feedLeaves(lines, `${panel}.${part + 1}`, `${panel}-${part + 1}`, first + from, to - from, fill);
	}
}

/** A circuit with its devices; four sorts take turns, so that every way of wiring is measured. */
function circuitOf(circuit: number, panel: string, start: number, devices: number): string[] {
	const name = (index: number): string => `d${start + index}`;
	const sort = circuit % 4;
	const lines = ["", `circuit c${circuit} "Circuit ${circuit}" from ${panel} breaker 20 A by 12-2`];
	for (let index = 0; index < devices; index++) {
		const length = 5 + ((start + index) % 7);
		// A second way on from the first device.
		if (sort === 3 && index === 4) lines.push(`  from ${name(0)}`);
		const indent = sort === 3 && index >= 4 ? "    " : "  ";
		lines.push(`${indent}${length} ft to ${name(index)}: ${deviceOf(sort, index)} "Device ${start + index}" in hall`);
	}
	return lines;
}

function deviceOf(sort: number, index: number): string {
	if (sort === 1 && index === 0) return "gfci";
	if (sort === 2) return index === 0 ? "switch" : "light 1 W";
	return "receptacle";
}
