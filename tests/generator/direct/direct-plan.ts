// The whole side of direct current: a bank on two buses, what fills it, what it feeds, and what it is bonded to.
import type { Line } from "../lines.ts";
import type { Site } from "../site.ts";
import { writeBank } from "./bank.ts";
import { call, writeContact } from "./branches.ts";
import { writeAlternator, writeChargers, writeEngine, writeSolar } from "./charging.ts";
import { DirectSide } from "./direct-side.ts";
import { writeEarth } from "./earths.ts";
import { Block, writeBlocks } from "./fuse-blocks.ts";
import { machineFuse, writeInverters, writeKept, writeWinch } from "./heavy-loads.ts";

/** Every statement of it; takes all devices that are left on the site. */
export function writeDirect(site: Site): Line[] {
	const { chance } = site;
	// What runs together of many loads is more than of few.
	const needed = Math.max(
		site.left > 60 ? 300 : site.left > 30 ? 200 : 0,
		...site.machines.map(({ power }) => machineFuse(power, site.bankVolts)),
	);
	const main = chance.pick(
		[100, 150, 200, 300, site.wish.region === "us" ? 400 : 350].filter((amperes) => amperes >= needed),
	);
	const side = new DirectSide(site, main);
	const bank = writeBank(side);
	writeInverters(side, bank);
	writeChargers(side, bank);
	const minuses = [bank.minus];
	if (chance.maybe(0.4)) writeSolar(side, bank);
	if (chance.maybe(0.25)) minuses.push(writeEngine(side, bank).minus);
	else if (chance.maybe(0.15)) writeAlternator(side, bank);
	if (site.left > 3 && bank.post !== "" && chance.maybe(0.25)) writeKept(side, bank);
	const contactor = site.left > 5 && chance.maybe(0.3) ? writeWinch(side, bank) : undefined;
	const calls = [...site.coils, ...(contactor === undefined ? [] : [contactor])];
	if (calls.length + site.calledByMains.length > 0) {
		const block = new Block(side, Math.min(60, main));
		for (const relay of calls) call(block, relay);
		for (const relay of site.calledByMains) writeContact(block, relay);
		block.write(bank, Math.max(0, site.left - 3));
	}
	writeBlocks(side, bank, 0);
	if (chance.maybe(0.6)) writeEarth(side, minuses);
	return side.lines;
}
