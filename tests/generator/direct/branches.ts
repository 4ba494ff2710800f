// Circuits of direct current: switched lights, dimmers, pumps on float switches, outlets, relays with their coils, joints, converters.
import type { Kind } from "../../../src/kinds/kind.ts";
import { takes } from "../branch.ts";
import { kindsFor } from "../kind-parts.ts";
import { dimmable } from "../lights.ts";
import type { Line } from "../lines.ts";
import { endFacts } from "../outlets.ts";
import { writeOwnDirectLoad } from "../own-parts.ts";
import type { DirectBranch } from "./direct-branch.ts";
import { Block } from "./fuse-blocks.ts";

/** One circuit on a block, or two where one switches the other; stops where no more than `until` devices are left. */
export function writeBranch(block: Block, until: number): void {
	const { site } = block.side;
	const left = site.left - until;
	const write = site.chance.weigh<(block: Block, left: number) => void>([
		[left > 1 ? 5 : 0, switchedLights],
		[left > 1 ? 1 : 0, dimmedLights],
		[left > 1 ? 2 : 0, automaticLoad],
		[3, outlets],
		[3, singleLoad],
		[left > 2 ? 1 : 0, relayed],
		[left > 2 ? 0.6 : 0, changedOver],
		[left > 1 ? 1.5 : 0, jointed],
		[left > 1 && block.volts > 12 ? 2 : 0, stepped],
		[0.2, later],
		[0.4, ownLoad],
	]);
	write(block, left);
}

const small = [3, 5, 5, 7.5, 10];
const large = [10, 15, 20];

function lightKind({ side: { site } }: Block): Kind {
	return site.chance.pick(kindsFor("load").filter(({ name }) => name === "light" || name === "fan"));
}

/** So many loads of a sort one behind the other, or in a row. */
function inRow(branch: DirectBranch, lines: Line[], kind: Kind, count: number): string {
	const { chance } = branch.side.site;
	if (count > 1 && chance.maybe(0.5)) return branch.load(lines, kind, "l", 6, count);
	let name = "";
	for (let number = 0; number < count; number++) name = branch.load(lines, kind, "l", 12);
	return name;
}

function plainSwitch({ side: { site } }: Block): Kind {
	return site.chance.pick(kindsFor("switch").filter((kind) => takes(kind, "ways")));
}

function switchedLights(block: Block, left: number): void {
	const { chance } = block.side.site;
	const branch = block.branch(small);
	const rating = chance.pick([undefined, 10, 15, 20].filter((one) => one === undefined || one >= branch.amperes));
	const name = branch.hop(branch.lines, {
		kind: chance.maybe(0.85) ? plainSwitch(block) : chance.pick(kindsFor("disconnect")),
		letter: "s",
		facts: { rating },
	});
	inRow(branch, branch.lines, lightKind(block), Math.min(chance.count(1, 6), left - 1));
	// What is fed ahead of the switch has one of its own.
	if (left > 8 && chance.maybe(0.3))
		branch.branchOff(branch.lines, `${name}.line`, (lines) => {
			branch.hop(lines, { kind: plainSwitch(block), letter: "s" });
			inRow(branch, lines, lightKind(block), 1);
		});
	block.circuits.push(branch.finish());
}

function dimmedLights(block: Block, left: number): void {
	const { chance } = block.side.site;
	const branch = block.branch(small);
	branch.hop(branch.lines, {
		kind: chance.pick(kindsFor("dimmer")),
		letter: "dim",
		facts: {
			rating: chance.pick([undefined, 10, 15].filter((one) => one === undefined || one >= branch.amperes)),
			negative: chance.maybe(0.5) || undefined,
		},
	});
	inRow(branch, branch.lines, dimmable(), Math.min(chance.count(1, 4), left - 1));
	block.circuits.push(branch.finish());
}

/** A pump, a fan or a heater that a float switch or a thermostat puts on. */
function automaticLoad(block: Block): void {
	const { chance } = block.side.site;
	const branch = block.branch(large);
	branch.hop(branch.lines, {
		kind: chance.pick(kindsFor("switch").filter((kind) => !takes(kind, "ways"))),
		letter: "fs",
		facts: { rating: chance.pick([undefined, 20]) },
	});
	branch.load(branch.lines, anyLoad(block), "p", 120);
	block.circuits.push(branch.finish());
}

function anyLoad({ side: { site }, volts }: Block): Kind {
	// An outlet for 12 V is one wherever it is.
	return site.chance.pick([...kindsFor("load"), ...(volts === 12 ? kindsFor("direct load") : [])]);
}

function outlets(block: Block, left: number): void {
	const { chance } = block.side.site;
	const branch = block.branch(large);
	const kind = chance.pick([
		...kindsFor("load").filter(({ name }) => name === "usb-outlet"),
		...(block.volts === 12 ? kindsFor("direct load") : []),
	]);
	for (let number = Math.min(chance.count(1, 3), left); number > 0; number--) branch.load(branch.lines, kind, "u", 45);
	block.circuits.push(branch.finish());
}

function singleLoad(block: Block): void {
	const branch = block.branch(large);
	branch.load(branch.lines, anyLoad(block), "c", 200);
	block.circuits.push(branch.finish());
}

/** A load behind the contact of a relay, and a switch that puts its coil on, behind a fuse of its own. */
function relayed(block: Block): void {
	const { chance } = block.side.site;
	const branch = block.branch(large);
	const facts = { rating: chance.pick([30, 40, undefined]), ...coil(block) };
	const relay = branch.hop(branch.lines, { kind: chance.pick(kindsFor("relay")), letter: "K", facts });
	branch.load(branch.lines, anyLoad(block), "p", 200);
	block.circuits.push(branch.finish());
	call(block, relay);
}

/** A load behind the contact of a relay that stands by itself, and is called from elsewhere. */
export function writeContact(block: Block, relay: string): void {
	const branch = block.branch(large);
	branch.arrive(branch.lines, relay);
	branch.load(branch.lines, anyLoad(block), "p", 200);
	block.circuits.push(branch.finish());
}

/** A relay with a changeover contact: one load while its coil is on, another at rest. */
function changedOver(block: Block): void {
	const { chance } = block.side.site;
	const branch = block.branch(large);
	const relay = branch.hop(branch.lines, {
		kind: chance.pick(kindsFor("relay")),
		letter: "K",
		facts: { rating: chance.pick([30, 40]), changeover: true, ...coil(block) },
	});
	branch.load(branch.lines, lightKind(block), "l", 20);
	branch.branchOff(branch.lines, `${relay}.${chance.pick(["normally-closed", "NC"])}`, (lines) =>
		branch.load(lines, lightKind(block), "l", 20),
	);
	block.circuits.push(branch.finish());
	call(block, relay);
}

function coil({ volts, side: { site } }: Block) {
	return { coil: volts === 12 && site.chance.maybe(0.3) ? undefined : volts };
}

/** The run of a coil: a switch and what it calls. */
export function call(block: Block, relay: string): void {
	const branch = block.branch([3, 5]);
	branch.hop(branch.lines, { kind: plainSwitch(block), letter: "s" });
	branch.draw(0.2);
	branch.arrive(branch.lines, `${relay}.coil`);
	block.circuits.push(branch.finish());
}

/** A joint without a box, or a box, from which several stretches go on. */
function jointed(block: Block, left: number): void {
	const { chance } = block.side.site;
	const branch = block.branch(small);
	const isBox = chance.maybe(0.4);
	const name = branch.hop(branch.lines, {
		kind: chance.pick(kindsFor(isBox ? "box" : "joint")),
		letter: "j",
		facts: isBox
			? {}
			: {
					connector: chance.pick([undefined, "lever", "push-in", "crimp"]),
					ports: chance.pick([undefined, 5]),
					rating: chance.pick([undefined, 20, 24]),
					largest: chance.maybe(0.3) ? (block.side.site.wish.region === "us" ? "6 AWG" : "16 mm2") : undefined,
					smallest: chance.maybe(0.2) ? (block.side.site.wish.region === "us" ? "18 AWG" : "0.75 mm2") : undefined,
				},
		devices: 0,
	});
	for (let ways = Math.min(left, chance.count(1, 3)); ways > 0; ways--)
		branch.branchOff(branch.lines, name, (lines) => branch.load(lines, lightKind(block), "l", 10));
	block.circuits.push(branch.finish());
}

/** A converter to 12 V on the way, with a block of its own behind it. */
function stepped(block: Block, left: number): void {
	const { side, volts } = block;
	const { chance } = side.site;
	const branch = block.branch([15, 20]);
	// What it takes in is less than what it gives, by the volts.
	const amperes = chance.pick([10, 20].filter((given) => (given * 12) / 0.9 / volts <= branch.spare));
	branch.hop(branch.lines, {
		kind: chance.pick(kindsFor("converter")),
		letter: "cv",
		facts: { rating: amperes, voltages: [volts, 12], isolated: chance.maybe(0.2) || undefined },
		devices: 0,
	});
	branch.draw((amperes * 12) / 0.9 / volts);
	const behind = new Block(side, 20, 12);
	const wanted = Math.min(left, chance.count(1, 4));
	behind.hang(branch, side.site.left - wanted, 4);
	block.circuits.push(branch.finish(), ...behind.circuits);
}

/** A cable that waits in the wall. */
function later(block: Block): void {
	const branch = block.branch(small);
	const { site } = block.side;
	branch.hop(branch.lines, { kind: site.chance.pick(kindsFor("end")), letter: "e", facts: endFacts(site) });
	block.circuits.push(branch.finish());
}

function ownLoad(block: Block): void {
	const branch = block.branch(large);
	writeOwnDirectLoad(branch);
	block.circuits.push(branch.finish());
}
