// A cabin with both sides for measurements: an inverter-charger between shore and load centre, a battery bank, a fuse block.

/** Devices on one circuit of the mains, and on one of direct current. */
const perCircuit = 8;
const perBranch = 4;

/** A plan with this many devices, two thirds of them on the mains; always the same text for the same number, with nothing wrong in it. */
export function cabinOf(devices: number): string {
	const direct = Math.floor(devices / 3);
	return `${[...head, ...mains(devices - direct), ...bank, ...branches(direct)].join("\n")}\n`;
}

const head = [
	'plan "A cabin to measure by"',
	"  region us",
	"  rules building",
	"  box 32 cuin",
	"",
	'place hall "Hall"',
	'place bench "Under-bench bay"',
	"",
	"inlet shore 50 A 120 V in hall",
	"battery house lithium 12.8 V 280 Ah, fault 5 kA in bench",
	"inverter-charger inv 3000 W 12 V / 120 V, pass-through 50 A, bonds neutral when inverting in bench",
	"panel LC main 50 A, spaces 24 in hall",
	"",
	"feed supply from shore by 6-2",
	"  12 ft to inv.in",
	"feed output from inv.out by 6-2",
	"  6 ft to LC",
];

const bank = [
	"",
	"feed bank-plus from house.+ by single 4/0 red",
	"  6 in to F1: fuse class-T 300 A interrupting 20 kA",
	"  1 ft to DS: disconnect 300 A",
	"  1 ft to plus: bus 600 A",
	"feed bank-minus from house.- by single 4/0 black",
	"  1 ft to SH: shunt 500 A",
	"  1 ft to minus: bus 600 A",
	"feed inv-plus from plus by single 4/0 red",
	"  6 in to F2: fuse class-T 300 A interrupting 20 kA",
	"  3 ft to inv.+",
	"feed inv-minus from minus by single 4/0 black",
	"  3 ft to inv.-",
	"chassis frame",
	"bond case from inv.case by single 4 AWG green",
	"  3 ft to frame",
];

function mains(devices: number): string[] {
	const lines: string[] = [];
	for (let start = 0, circuit = 0; start < devices; start += perCircuit, circuit++) {
		const isLights = circuit % 2 === 1;
		lines.push("", `circuit c${circuit} "Circuit ${circuit}" from LC breaker 20 A by 12-2`);
		for (let index = start; index < Math.min(start + perCircuit, devices); index++) {
			const kind = !isLights ? "receptacle" : index === start ? "switch" : "light 9 W";
			lines.push(`  ${5 + (index % 7)} ft to d${index}: ${kind} in hall`);
		}
	}
	return lines;
}

function branches(devices: number): string[] {
	const count = Math.ceil(devices / perBranch);
	const lines = ["", `fuse-block FB 100 A ways ${count} in bench`];
	for (let slot = 1; slot <= count; slot++) lines.push(`  slot ${slot}: fuse 10 A`);
	lines.push(
		"feed small from plus, minus by pair 8 AWG",
		"  bolted to F3: fuse 40 A interrupting 10 kA",
		"  3 ft to FB",
	);
	for (let branch = 0; branch < count; branch++) {
		lines.push("", `circuit b${branch} from FB.${branch + 1} by pair 14 AWG`);
		for (let index = branch * perBranch; index < Math.min((branch + 1) * perBranch, devices); index++)
			lines.push(`  ${4 + (index % 5)} ft to e${index}: light 6 W in hall`);
	}
	return lines;
}
