// What fills the bank: solar strings on a controller, an engine with its own battery and starter, a charger on the mains.
import type { Facts } from "../words.ts";
import type { Bank } from "./bank.ts";
import type { DirectSide, Poles } from "./direct-side.ts";

/** The lead from the bank to what fills it: the battery gives all it has, so the fuse stands at its side. */
function filled(side: DirectSide, { plus, minus }: Poles, amperes: number, to: string, isAtBattery = false): void {
	const fuse = fuseFor(amperes * 1.25);
	const cable = side.wires.pair({ fuse, amperes, metres: 3 });
	side.feed("fill", `${plus}, ${minus}`, cable, [
		side.fuse(fuse, "bolted", isAtBattery).line,
		side.arrive(to, side.length(0.5, 3)),
	]);
}

/** The most that one thing may give to the bank, for its fuses to carry it for hours. */
function most({ own }: DirectSide): number {
	return own * 0.8;
}

/** The next fuse that is made. */
export function fuseFor(amperes: number): number {
	const made = [15, 20, 30, 40, 50, 60, 80, 100, 125, 150, 175, 200, 225, 250, 300, 350, 400];
	return made.find((rating) => rating >= amperes) ?? 400;
}

/** The leads of a starter are as thick as for such a fuse, though they have none. */
export const crankingFuse = 200;

/** Modules in series and strings in parallel, a disconnect, and the controller. */
export function writeSolar(side: DirectSide, bank: Bank): void {
	const { site } = side;
	const { chance, bankVolts } = site;
	const open = chance.pick([20, 22.3, 38, 45]);
	const least = Math.ceil((bankVolts * 1.4) / open);
	const series = least + (chance.maybe(0.4) ? 1 : 0);
	// From three strings on each has a fuse, and none is made for more volts than these on the coldest day.
	const parallel = chance.weigh([
		[5, 1],
		[2, 2],
		[open * series <= 100 ? 1 : 0, 3],
	]);
	const short = chance.pick([5.9, 6.9, 10.5]);
	const module: Facts = { power: chance.pick([undefined, Math.round(open * short * 0.8)]), open, short };
	const amperes = Math.ceil((open * series * short * parallel * 0.85) / bankVolts);
	// A controller gives no more than its rating, however much the sun offers.
	const ratings = [10, 15, 20, 30, 40, 50, 60, 85, 100].filter((rating) => rating <= most(side));
	const given = ratings.find((rating) => rating >= amperes) ?? ratings.at(-1) ?? 10;
	const controller = side.declare("solar controller", "sun", {
		rating: given,
		voltage: bankVolts === 12 && chance.maybe(0.4) ? undefined : bankVolts,
		limit: [50, 75, 100, 150, 250, 450].find((limit) => limit >= open * series * 1.25),
	});
	const lead = side.wires.two({ fuse: 20 });
	const strings = Array.from({ length: parallel }, (): Poles => {
		const names = Array.from({ length: series }, () => side.declare("solar module", "m", module));
		for (const [index, name] of names.slice(1).entries())
			side.feed("link", `${names[index] ?? ""}.-`, lead.minus, [side.arrive(`${name}.+`, side.length(0.2, 0.8))]);
		return { plus: `${names[0] ?? ""}.+`, minus: `${names.at(-1) ?? ""}.-` };
	});
	const all = strings.length === 1 ? strings[0] : gathered(side, strings, lead, open * series * 1.25);
	const fuse = fuseFor(short * parallel * 1.56);
	const cable = side.wires.pair({ fuse, amperes: short * parallel, metres: 6 });
	const off = side.hop("disconnect", "D", { rating: chance.pick([60, 100]) }, side.length(1, 5));
	side.feed("sun", `${all?.plus ?? ""}, ${all?.minus ?? ""}`, cable, [
		off.line,
		side.arrive(`${controller}.in`, side.length(0.4, 3)),
	]);
	filled(side, bank, given, `${controller}.out`);
}

/** Strings that meet on two buses; from three on each has a fuse of its own. */
function gathered(
	side: DirectSide,
	strings: readonly Poles[],
	lead: { plus: string; minus: string },
	volts: number,
): Poles {
	let [plus, minus] = ["", ""];
	for (const [index, string] of strings.entries()) {
		const fuse = strings.length > 2 ? [side.stringFuse(20, volts)] : [];
		if (index === 0) {
			const [top, bottom] = [
				side.hop("bus", "roof", { rating: 100 }, side.length(0.5, 3)),
				side.hop("bus", "roof", { rating: 100 }, side.length(0.5, 3)),
			];
			[plus, minus] = [top.name, bottom.name];
			side.feed("up", string.plus, lead.plus, [...fuse, top.line]);
			side.feed("down", string.minus, lead.minus, [bottom.line]);
		} else {
			side.feed("up", string.plus, lead.plus, [...fuse, side.arrive(plus, side.length(0.5, 3))]);
			side.feed("down", string.minus, lead.minus, [side.arrive(minus, side.length(0.5, 3))]);
		}
	}
	return { plus, minus };
}

/** An engine: its battery and starter, its alternator, and a charger from there to the bank. */
export function writeEngine(side: DirectSide, bank: Bank): { readonly minus: string } {
	const { site, wires } = side;
	const { chance, bankVolts } = site;
	const battery = side.declare("battery", "EB", {
		voltage: 12,
		chemistry: chance.pick(["flooded", "agm"]),
		capacity: chance.pick([undefined, 60, 100]),
		fault: chance.pick([undefined, 2000, 3000]),
	});
	const current = chance.pick([150, 200]);
	const starter: Facts = { current, voltage: chance.maybe(0.5) ? 12 : undefined };
	const crank = wires.two({ fuse: crankingFuse });
	const bus = side.hop("bus", "ep", { rating: 300 }, "within 6 in");
	const off = chance.maybe(0.5) ? [side.hop("disconnect", "D", { rating: 300 }, side.length(0.3, 0.8)).line] : [];
	if (chance.maybe(0.5)) {
		const name = side.declare("starter", "st", starter);
		side.feed("crank", `${battery}.+`, crank.plus, [bus.line, ...off, side.arrive(`${name}.+`, side.length(0.5, 1.5))]);
		side.feed("back", `${battery}.-`, crank.minus, [side.arrive(`${name}.-`, side.length(0.5, 1.5))]);
	} else {
		const last = side.hop("starter", "st", starter, side.length(0.5, 1.5));
		side.feed("crank", `${battery}.+`, crank.plus, [bus.line, ...off, last.line]);
		side.feed("back", `${battery}.-`, crank.minus, [side.arrive(`${last.name}.-`, side.length(0.5, 1.5))]);
	}
	const engine = { plus: bus.name, minus: `${battery}.-` };
	const rating = chance.pick([60, 80]);
	const alternator = side.declare("alternator", "alt", { rating, voltage: chance.pick([undefined, 14]) });
	filled(side, engine, rating, `${alternator}.+`, true);
	const given = chance.pick([10, 20, 30].filter((amperes) => amperes <= most(side)));
	const step = side.declare("converter", "step", {
		rating: given,
		voltages: bankVolts === 12 && chance.maybe(0.2) ? undefined : [12, bankVolts],
		isolated: chance.maybe(0.15) || undefined,
	});
	filled(side, engine, (given * bankVolts) / 12 / 0.9, `${step}.in`, true);
	filled(side, bank, given, `${step}.out`);
	return { minus: engine.minus };
}

/** An alternator on the bank itself. */
export function writeAlternator(side: DirectSide, bank: Bank): void {
	const { chance, bankVolts } = side.site;
	const rating = chance.pick([30, 40, 60, 80].filter((amperes) => amperes <= most(side)));
	const voltage = bankVolts === 12 ? chance.pick([undefined, 14]) : (bankVolts * 14) / 12;
	const alternator = side.declare("alternator", "alt", { rating, voltage });
	filled(side, bank, rating, `${alternator}.+`);
}

/** The leads of the chargers that hang on circuits of the mains. */
export function writeChargers(side: DirectSide, bank: Bank): void {
	for (const { name, amperes } of side.site.chargers) filled(side, bank, amperes, `${name}.+`);
}
