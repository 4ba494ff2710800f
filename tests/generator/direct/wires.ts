// Wires for direct current as a careful builder takes them: thick enough for the fuse ahead and for the volts lost on the way.
import { awg } from "../../../src/base/gauge.ts";
import type { Site } from "../site.ts";

/** One size: its words, its copper in square millimetres, and the largest fuse ahead of it, at 75 and at 105 °C insulation. */
interface Size {
	readonly words: string;
	readonly area: number;
	readonly fuse75: number;
	readonly fuse105: number;
}

/** Fuses well within 33 CFR 183.425 Table 5 in an engine space; thin ones by NFPA 70 Table 551.10(E)(1) (recalled). */
const american: readonly Size[] = [
	["16", 16, 8, 8],
	["14", 14, 15, 15],
	["12", 12, 20, 20],
	["10", 10, 30, 30],
	["8", 8, 40, 60],
	["6", 6, 70, 100],
	["4", 4, 90, 125],
	["2", 2, 125, 175],
	["1/0", 0, 150, 225],
	["2/0", -1, 200, 300],
	["4/0", -3, 250, 400],
].map(([label = "", number = 0, fuse75 = 0, fuse105 = 0]) => ({
	words: `${label} AWG`,
	area: awg(Number(number)).mm2,
	fuse75: Number(fuse75),
	fuse105: Number(fuse105),
}));

/** The same by the next thinner American size, with no rating above what it carries (common practice). */
const metric: readonly Size[] = [
	[1.5, 8, 8],
	[2.5, 15, 15],
	[4, 20, 20],
	[6, 30, 30],
	[10, 40, 60],
	[16, 70, 100],
	[25, 90, 125],
	[35, 125, 175],
	[50, 125, 200],
	[70, 175, 250],
	[95, 225, 300],
	[120, 250, 350],
].map(([area = 0, fuse75 = 0, fuse105 = 0]) => ({ words: `${area} mm2`, area, fuse75, fuse105 }));

/** What runs through a wire: the fuse ahead, and what is drawn how far from it. */
export interface Carried {
	readonly fuse: number;
	readonly amperes?: number;
	/** One way, in metres. */
	readonly metres?: number;
	/** Between its poles; those of the bank if not said. */
	readonly volts?: number;
}

/** The wires of one plan. */
export class Wires {
	private readonly site: Site;
	private readonly sizes: readonly Size[];
	private thickest = 0;

	constructor(site: Site) {
		this.site = site;
		this.sizes = site.wish.region === "us" ? american : metric;
	}

	/** Positive and negative side by side. */
	pair(carried: Carried): string {
		const { site } = this;
		const size = this.sizeFor(carried, (one) => one.fuse105);
		if (site.wish.rules === "boat") return `duplex ${size.words}`;
		if (!site.chance.maybe(0.08)) return `pair ${size.words}`;
		return site.ownCable(`105 C stranded red positive black negative ${size.words}`);
	}

	/** One conductor by itself. */
	single(pole: "+" | "-", carried: Carried): string {
		const { plus, minus } = this.two(carried);
		return pole === "+" ? plus : minus;
	}

	/** Two conductors by themselves that are alike but for their colours. */
	two(carried: Carried): { readonly plus: string; readonly minus: string } {
		const isHot = carried.fuse > 250 || this.site.chance.maybe(0.6);
		const size = this.sizeFor(carried, (one) => (isHot ? one.fuse105 : one.fuse75));
		const bears = isHot ? " 105 C" : "";
		return { plus: `single ${size.words} red${bears}`, minus: `single ${size.words} ${this.negative}${bears}` };
	}

	/** A bonding conductor as thick as what is behind so large a fuse, and as thick as any lead of the plan. */
	bond(fuse: number): string {
		const [fitting, { thickest }] = [this.sizeFor({ fuse: Math.min(fuse, 250) }, (one) => one.fuse75), this];
		const size = this.sizes.find(({ area }) => area >= Math.max(thickest, fitting.area)) ?? fitting;
		return `single ${size.words} ${this.site.wish.region === "us" ? "green" : "green-yellow"}`;
	}

	/** Yellow on boats, so that it is never taken for a hot. */
	private get negative(): string {
		return this.site.wish.rules === "boat" ? "yellow" : "black";
	}

	private sizeFor(
		{ fuse, amperes = 0, metres = 0, volts = this.site.bankVolts }: Carried,
		largest: (size: Size) => number,
	): Size {
		const area = (2 * metres * amperes * copperOhms) / (volts * mostLost);
		const fitting = this.sizes.find((size) => largest(size) >= fuse && size.area >= area);
		this.thickest = Math.max(this.thickest, fitting?.area ?? 0);
		if (fitting !== undefined) return fitting;
		throw new Error(`no wire for ${fuse} A, ${amperes} A over ${metres} m`);
	}
}

/** Square millimetres of the thickest wire that goes under the screws of a light. */
const thickestUnderScrew = 5.2;
/** Amperes times metres that such a wire bears, by the volts between its poles. */
export function reachOf(volts: number): number {
	return (thickestUnderScrew * volts * mostLost) / (2 * copperOhms);
}

/** Ohms of one metre of copper of one square millimetre, warm. */
const copperOhms = 0.02;
/** The share of the volts that may be lost on the way (ABYC E-11 for what matters, recalled). */
const mostLost = 0.03;
