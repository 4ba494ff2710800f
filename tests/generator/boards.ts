// Panels with their breakers and circuits, and panels behind them where one has no room for all.

import { Branch, pickKind, type Stretch } from "./branch.ts";
import { drawSort, type Sort, writeSort } from "./circuit-sorts.ts";
import { kindsFor, type Part } from "./kind-parts.ts";
import type { Line } from "./lines.ts";
import { writeTwoHalves } from "./outlets.ts";
import type { Site } from "./site.ts";
import type { Wish } from "./wish.ts";
import type { Facts } from "./words.ts";

/** What a panel is fed by. */
export interface Feed {
	/** `shore`, `inv.out`, `LC.1`. */
	readonly from: string;
	/** What protects the feed, in amperes. */
	readonly amperes: number;
	readonly legs: 1 | 2;
	/** Set where a residual-current device ahead of it opens at 30 mA. */
	readonly isProtected?: boolean;
	/** Set where it comes ashore into a boat. */
	readonly isAfloat?: boolean;
	/** What else is said of the panel: how neutral and case stand. */
	readonly more?: Facts;
	/** Lines below the panel, such as a bonding screw. */
	readonly below?: readonly Line[];
}

/** Circuits that one panel takes before another is put behind it. */
const mostCircuits = 12;

/** A panel with circuits until no device is left, and every panel behind it. */
export function writeBoard(site: Site, feed: Feed, isFirst = true): Line[] {
	const board = new Board(site, feed, isFirst);
	const behind: Line[] = [];
	while (site.left > 0 && board.circuits < mostCircuits - (isFirst ? 2 : 0)) board.writeCircuit();
	// Beyond the first panel there is room for as many more as are needed, all fed from the first.
	while (isFirst && site.left > 0) behind.push(...board.writeSubpanel());
	return [...board.finish(), ...behind];
}

class Board {
	circuits = 0;
	private readonly site: Site;
	private readonly feed: Feed;
	private readonly name: string;
	/** Whether slots are declared below the panel; else every circuit takes the next free one. */
	private readonly declares: boolean;
	private readonly slots: Line[] = [];
	private readonly lines: Line[] = [];
	private readonly taken = new Set<number>();
	/** The second half of a slot that has one half-size breaker in it. */
	private half: string | undefined;
	/** What opens on a leak: the main, a device at the head of a group of slots, or what each circuit has of its own. */
	private readonly guard: "main" | "group" | "circuits";
	/** The slots behind the device at the head of a group, and what it is called. */
	private readonly group: { readonly name: string; readonly slots: Line[] };

	/** Whether the main opens all of a boat on a leak that people are not protected by: shore power in North America. */
	private readonly watchesShore: boolean;

	constructor(site: Site, feed: Feed, isFirst: boolean) {
		this.site = site;
		this.feed = feed;
		this.watchesShore = isFirst && site.wish.region === "us" && site.wish.rules === "boat";
		const isMetric = site.wish.region === "iec";
		this.guard = site.chance.weigh([
			[3, "circuits"],
			[isMetric ? 2 : 0, "main"],
			[isMetric ? 2 : 0, "group"],
		]);
		this.group = { name: site.names.fresh("R"), slots: [] };
		this.name = site.names.fresh(site.chance.pick(["LC", "DB", "P"]));
		this.declares = site.chance.maybe(0.6);
	}

	/** The panel's own lines, then its circuits. */
	finish(): Line[] {
		const { site, feed, name } = this;
		const { chance } = site;
		const needed = Math.max(0, ...this.taken);
		const facts: Facts = {
			...this.head(),
			...(needed > 12 || chance.maybe(0.3) ? { spaces: Math.min(84, needed + chance.count(0, 6)) || 2 } : {}),
			...(feed.legs === 2 ? (chance.maybe(0.7) ? { legs: 2 } : { voltages: [120, 240] }) : {}),
			// A screw joins the neutral bar to metal only.
			plastic: (feed.more === undefined && feed.below === undefined && chance.maybe(0.3)) || undefined,
			...feed.more,
		};
		const place = site.placeFor(true);
		const panel = site.spelling.list([
			site.words.attributes(pickKind(site, "board", "main"), facts),
			place === undefined ? "" : `in ${place.name}`,
		]);
		const below = [...this.slots, ...this.heads(), ...this.bars(), ...(feed.below ?? [])];
		const cables = site.cablesFor(feed.amperes);
		const cable = site.use(cables, feed.legs === 2 ? cables.withSecondHot : cables.plain);
		const length = site.spelling.length(chance.count(5, 80) / 10);
		const label = site.names.label();
		const word = chance.pick(["panel", "panel", "load-centre"]);
		site.words.said.add("panel");
		const run = site.names.fresh("feed");
		site.boards.push(`${name}.ground`);
		if (site.wish.sides === "both" && chance.maybe(0.6)) site.grounds.push(`${name}.ground`);
		const ahead = this.isolator();
		const written = chance.weigh<Line[]>([
			[
				ahead.length > 0 ? 0 : 2,
				[{ text: `${word} ${name} ${`${label} ${panel}`.trim()} from ${feed.from} by ${cable}, ${length}`, below }],
			],
			[
				1,
				[
					{ text: `${word} ${name} ${`${label} ${panel}`.trim()}`, below },
					{ text: `feed ${run} from ${feed.from} by ${cable}`, below: [...ahead, { length, text: `to ${name}` }] },
				],
			],
			[
				1,
				[
					{
						text: `feed ${run} from ${feed.from} by ${cable}`,
						below: [...ahead, { length, text: `to ${name}: ${word} ${`${label} ${panel}`.trim()}`, below }],
					},
				],
			],
		]);
		return [...written, ...this.lines];
	}

	/** One circuit of a sort that its panel can feed and the devices left allow, or two that share a receptacle. */
	writeCircuit(): void {
		const { chance } = this.site;
		const onTwoLegs = this.feed.legs === 2 && chance.maybe(0.6);
		const sort = onTwoLegs ? chance.pick<Sort>(["two legs", "two legs", "shared neutral"]) : drawSort(this.site);
		if (sort !== "two halves")
			return this.addCircuit(sort, onTwoLegs, (branch, stretch) => writeSort(branch, stretch, sort));
		let name = "";
		// One of the two may be protected and the other not, so the receptacle stands where neither has to be.
		this.addCircuit(sort, false, (branch, { lines }) => {
			name = writeTwoHalves(branch, { lines, isProtected: false });
		});
		const length = this.site.spelling.length(chance.count(5, 80) / 10);
		this.addCircuit(sort, false, (_, { lines }) => lines.push({ length, text: `to ${name}.upper` }));
	}

	private addCircuit(sort: Sort, onTwoLegs: boolean, write: (branch: Branch, stretch: Stretch) => void): void {
		const { site, feed } = this;
		const { chance, wish } = site;
		const amperes = this.drawRating(sort);
		const isBehind = feed.isProtected === true || this.guard === "main";
		const isGrouped = !isBehind && this.guard === "group" && chance.maybe(0.8);
		const isAsked = isBehind ? chance.maybe(0.1) : wish.region === "iec" || chance.maybe(0.25);
		const guards = isAsked && !isGrouped && sort !== "shared neutral";
		const branch = new Branch(site, amperes);
		const stretch: Stretch = { lines: [], isProtected: guards || isBehind || isGrouped };
		write(branch, stretch);
		const breaker = (isTwoPole: boolean): string => this.breakerWords(amperes, isTwoPole, guards);
		const name = site.names.fresh("c");
		const isTied = onTwoLegs && !guards && this.declares && stretch.lines[0]?.tag === undefined && chance.maybe(0.4);
		const from = isGrouped
			? this.takeGroupSlot(breaker(false))
			: isTied
				? this.takeTiedSlots(`${name}-1.${sort === "shared neutral" ? "red" : secondHot(stretch)}`, breaker)
				: this.takeSlot(breaker(onTwoLegs), onTwoLegs);
		const { cables } = branch;
		const cable = site.use(cables, sort === "shared neutral" ? cables.withSecondHot : cables.plain);
		const isRoughedIn = chance.maybe(wish.roughedIn);
		const words = [
			`circuit ${name}`,
			site.names.label(0.4),
			isRoughedIn ? "roughed in" : "",
			`from ${from} by ${cable}${site.names.remark()}`,
		];
		this.lines.push({ text: words.filter((word) => word !== "").join(" "), below: stretch.lines });
		this.circuits += 1;
		if (!isRoughedIn && chance.maybe(0.15)) site.landings.push(...landings(branch, name, stretch));
	}

	/** A panel fed from this one, behind a breaker of its own. */
	writeSubpanel(): Line[] {
		const { site, feed } = this;
		const legs = feed.legs === 2 && site.chance.maybe(0.5) ? 2 : 1;
		const amperes = Math.min(feed.amperes, site.wish.region === "us" ? 30 : 32);
		const slot = this.takeSlot(this.breakerWords(amperes, legs === 2, false), legs === 2, true);
		const isProtected = feed.isProtected === true || this.guard === "main";
		return writeBoard(site, { from: slot, amperes, legs, isProtected }, false);
	}

	/** On boats a galvanic isolator stands between shore and the first panel at times. */
	private isolator(): Line[] {
		const { site, feed } = this;
		if (feed.isAfloat !== true || !site.chance.maybe(0.4)) return [];
		// In North America one that fails must go on joining the ground (ABYC A-28, recalled).
		const isFailSafe = site.wish.region === "us";
		const words = site.words.thing(site.chance.pick(kindsFor("isolator")), {
			rating: Math.max(feed.amperes, 30),
			...(isFailSafe ? { "fail-safe": true } : {}),
		});
		return [{ length: site.spelling.length(0.6), text: `to ${site.names.fresh("GI")}: ${words}` }];
	}

	/** What the panel's main is. In campers and boats of IEC countries it opens the neutral too. */
	private head(): Facts {
		const { feed, guard } = this;
		const { chance, wish } = this.site;
		// What only switches carries all that is on at once.
		const largeEnough = 63;
		if (guard === "main")
			return chance.pick<Facts>([
				{ main: largeEnough, sort: "rcd", trip: 0.03 },
				{ main: feed.amperes, sort: "rcbo" },
				{ main: feed.amperes, trip: 0.03, type: "type A" },
			]);
		if (this.watchesShore)
			return { main: feed.amperes, trip: 0.03, ...(chance.maybe(0.5) ? { sort: "two-pole" } : {}) };
		if (!chance.maybe(0.8)) return { lugs: "lugs only" };
		// A main that opens late on a leak, for a fire, leaves what protects people to what stands behind it.
		if (guard === "circuits" && wish.region === "iec" && chance.maybe(0.3))
			return {
				main: largeEnough,
				sort: "rcd",
				trip: 0.3,
				...chance.pick<Facts>([{ selective: true }, { delay: 0.1 }]),
			};
		const sort = opensBothPoles(wish)
			? chance.pick(["two-pole", "switch"])
			: chance.maybe(0.1) && feed.legs === 1
				? "single-pole"
				: undefined;
		return { main: sort === "switch" ? largeEnough : feed.amperes, sort };
	}

	/** The device at the head of a group, with its slots below it. */
	private heads(): Line[] {
		const { site, feed, group } = this;
		if (group.slots.length === 0) return [];
		const facts: Facts = {
			rating: Math.max(feed.amperes, 25),
			trip: site.chance.maybe(0.7) ? 0.03 : undefined,
			type: site.chance.pick([undefined, "type A", "type B"]),
			poles: site.chance.maybe(0.3) ? "two-pole" : undefined,
		};
		const kind = site.chance.pick(kindsFor("ground-fault head"));
		return [{ text: `${group.name}: ${site.words.thing(kind, facts)}`, below: group.slots }];
	}

	/** A slot behind the device at the head of the group. */
	private takeGroupSlot(breaker: string): string {
		const number = this.nextFree(false);
		this.taken.add(number);
		this.group.slots.push({ text: `slot ${number}: ${breaker}` });
		return `${this.name}.${number}`;
	}

	private drawRating(sort: Sort): number {
		const { chance, wish } = this.site;
		const lighting =
			sort === "two halves" || sort === "lights" || sort === "outlets and lights" || sort === "half switched";
		const usual =
			wish.region === "us"
				? lighting
					? [15]
					: sort === "two legs"
						? [20, 30]
						: [15, 20]
				: lighting
					? [6, 10]
					: [10, 16];
		const fitting = usual.filter((rating) => rating <= this.feed.amperes);
		return chance.pick(fitting.length > 0 ? fitting : [this.feed.amperes]);
	}

	private breakerWords(amperes: number, isTwoPole: boolean, guards: boolean): string {
		const { site } = this;
		const { chance, wish } = site;
		if (!guards)
			return site.words.thing(pickKind(site, "breaker", "poles", "rating"), {
				rating: amperes,
				poles: isTwoPole || opensBothPoles(wish) ? "two-pole" : chance.maybe(0.1) ? "single-pole" : undefined,
			});
		const kind = pickKind(site, "ground-fault breaker", "poles", "trip");
		const trip = wish.region === "iec" ? chance.pick([0.03, undefined, 0.01]) : chance.pick([undefined, 0.005]);
		return site.words.thing(kind, { rating: amperes, trip, poles: isTwoPole ? "two-pole" : undefined });
	}

	/** Puts a breaker into a slot; gives what a circuit comes from. */
	private takeSlot(breaker: string, isTwoPole: boolean, mustDeclare = false): string {
		const { chance, names } = this.site;
		if (!isTwoPole && this.half !== undefined) {
			const slot = this.half;
			this.half = undefined;
			this.slots.push({ text: `slot ${slot}: ${breaker}` });
			return `${this.name}.${slot}`;
		}
		const number = this.nextFree(isTwoPole);
		this.taken.add(number);
		if (isTwoPole) this.taken.add(number + 2);
		if (!this.declares && !mustDeclare) return `${this.name}${chance.maybe(0.2) ? `.${number}` : ""} ${breaker}`;
		const isHalf = !isTwoPole && this.declares && chance.maybe(0.25);
		const slot = isHalf ? `${number}A` : `${number}`;
		if (isHalf) this.half = `${number}B`;
		this.slots.push({ text: `slot ${slot}: ${breaker} ${names.label(0.2)}`.trim() });
		return `${this.name}.${slot}`;
	}

	/** Two breakers one below the other, whose handles are tied; the second hot is said to land on the second of them. */
	private takeTiedSlots(core: string, breaker: (isTwoPole: boolean) => string): string {
		const number = this.nextFree(true);
		const [first, second] = [`${this.name}.${number}`, `${this.name}.${number + 2}`];
		this.taken.add(number);
		this.taken.add(number + 2);
		this.site.words.said.add("breaker: tied");
		this.slots.push(
			{ text: `slot ${number}: ${breaker(false)}` },
			{ text: `slot ${number + 2}: ${breaker(false)} tied ${this.site.chance.pick([first, `${number}`])}` },
		);
		this.lines.push({ text: `at ${this.name}`, below: [{ text: `${core} on ${second}.load` }] });
		return first;
	}

	private nextFree(isTwoPole: boolean): number {
		for (let number = 1; ; number++)
			if (!this.taken.has(number) && !(isTwoPole && this.taken.has(number + 2))) return number;
	}

	/** Bars with as many ports as land on them, said where there are many. */
	private bars(): Line[] {
		const { site } = this;
		const { chance } = site;
		const ports = this.taken.size + this.circuits + 4;
		const bars: readonly (readonly [Part, string])[] = [
			["neutral bar", "NB"],
			["ground bar", "GB"],
		];
		return bars.flatMap(([part, letter]): Line[] => {
			if (ports <= 13 && !chance.maybe(0.2)) return [];
			const isIsolated = part === "neutral bar" && this.feed.more === undefined && this.feed.below === undefined;
			const bond = isIsolated && chance.maybe(0.3) ? "isolated" : undefined;
			const what = site.words.thing(chance.pick(kindsFor(part)), { ports: Math.max(ports, 4), bond });
			return [{ text: `${site.names.fresh(letter)}: ${what}` }];
		});
	}
}

/** What is on the screws of the outlet at the end of a plain chain, said as the trade lands it. */
function landings({ site, last }: Branch, circuit: string, { lines }: Stretch): Line[] {
	const end = lines.at(-1);
	// Hops of a plain chain are numbered as they stand.
	if (
		end === undefined ||
		last?.line !== end ||
		lines.some(({ text, tag }) => text.startsWith("from ") || tag !== undefined)
	)
		return [];
	if (lines.some(({ text }) => text.includes(".."))) return [];
	const cores = site.wish.region === "iec" ? ["brown", "blue", "green-yellow"] : ["black", "white", "green"];
	// In a metal box the ground goes to the box too, by a pigtail of its own.
	const mayBeMetal = end.text.includes(" metal") || !end.text.includes(":");
	const screws = mayBeMetal ? ["hot", "neutral"] : ["hot", "neutral", "ground"];
	const said = screws.map((screw, index) => ({
		text: `${circuit}-${lines.length}.${cores[index] ?? ""} on ${last.name}.${screw}`,
	}));
	return [{ text: `at ${last.name}`, below: site.chance.shuffle(said).slice(0, site.chance.count(1, 3)) }];
}

/** The colour of the second hot on the first hop: red in a cable with two hots, else the white that is marked. */
function secondHot({ lines }: Stretch): string {
	return lines[0]?.text.includes("marked") === true ? "white" : "red";
}

/** In campers and boats of IEC countries what opens the hot opens the neutral with it. */
function opensBothPoles({ region, rules }: Wish): boolean {
	return region === "iec" && rules !== "building";
}
