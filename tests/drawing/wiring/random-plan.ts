// Plans by chance, the same for the same number: circuits, boxes, branches, and wiring as built with all that can go wrong.

/** What a plan may hold. */
export interface PlanWish {
	/** Landings said with `at`, right and wrong. */
	readonly asBuilt: boolean;
	/** Chains that end in a box of another chain. */
	readonly rings?: boolean;
}

/** The text of plan number `seed`. */
export function randomPlan(seed: number, { asBuilt, rings = false }: PlanWish): string {
	const chance = chanceFrom(seed);
	const pick = <Item>(items: readonly Item[]): Item => items[Math.floor(chance() * items.length)] as Item;
	const maybe = (share: number): boolean => chance() < share;
	const count = (least: number, most: number): number => least + Math.floor(chance() * (most - least + 1));
	const legs = maybe(0.2);
	const lines = [
		`plan "Plan ${seed}"`,
		`  region ${maybe(0.25) ? "iec" : "us"}`,
		"  rules building",
		...(maybe(0.1) ? ["  splices always"] : []),
		'place hall "Hall by the door"',
		legs ? "inlet shore 50 A 120 V / 240 V" : "inlet shore 50 A",
	];
	const metric = lines.includes("  region iec");
	const cable = (): string => (metric ? pick(["3G2.5", "3G1.5 stranded"]) : pick(["12-2", "14-2", "12-2 stranded"]));
	const charger = !legs && maybe(0.3);
	if (charger)
		lines.push(
			`inverter-charger inv 2000 W ${metric ? "12 V / 230 V" : "12 V / 120 V"}, pass-through 30 A`,
			`feed supply from shore by ${metric ? "3G6" : "10-2"}`,
			"  12 ft to inv.in",
		);
	const circuits = count(1, 5);
	const bonded = maybe(0.2) ? " bonded" : "";
	const feed = metric ? "3G6" : legs ? "6-3" : "10-2";
	lines.push(
		`panel LC "Load centre" ${maybe(0.8) ? "main 50 A" : "lugs only"}${legs ? " legs 2" : ""}${bonded} spaces 24 from ${charger ? "inv.out" : "shore"} by ${feed}, 9 ft`,
	);
	for (let index = 0; index < circuits; index++)
		lines.push(`  slot ${index + 1}: ${maybe(0.2) ? "ground-fault-breaker" : "breaker"} 15 A`);
	const cores: { tag: string; from: string; to: string }[] = [];
	const boxes: string[] = [];
	let number = 0;
	const device = (): string =>
		pick([
			"receptacle",
			"receptacle",
			"receptacle split",
			"gfci",
			"switch",
			"light 9 W",
			"disconnect 20 A",
			"heater 900 W",
			"dimmer",
		]);
	const hop = (circuit: string, from: string, indent: string, run: { legs: number }): string => {
		const name = `x${number++}`;
		const facts = `${maybe(0.3) ? ", box 18 cuin metal" : ""}${maybe(0.2) ? " in hall" : ""}`;
		const what = pick(["device", "device", "device", "device", "box", "gang"]);
		const label = maybe(0.4)
			? ` "${pick(["Left", "By the window, under the long shelf", "Ω ☃ long label of some kind"])}"`
			: "";
		if (what === "device") lines.push(`${indent}${count(3, 20)} ft to ${name}: ${device()}${label}${facts}`);
		else {
			lines.push(`${indent}${count(3, 20)} ft to ${name}: box${maybe(0.5) ? " 34 cuin metal" : ""}${label}`);
			if (what === "gang")
				for (let part = count(1, 3); part > 0; part--) lines.push(`${indent}  x${number++}: ${device()}`);
		}
		cores.push({ tag: `${circuit}-${++run.legs}`, from, to: name });
		boxes.push(name);
		return name;
	};
	for (let index = 0; index < circuits; index++) {
		const circuit = `c${index}`;
		lines.push(`circuit ${circuit} from LC.${index + 1} by ${cable()}`);
		const run = { legs: 0 };
		const here: string[] = [];
		const before = [...boxes];
		for (let hops = count(1, 4); hops > 0; hops--) here.push(hop(circuit, here.at(-1) ?? "LC", "  ", run));
		if (rings && before.length > 0 && maybe(0.6)) lines.push(`  ${count(3, 20)} ft to ${pick(before)}`);
		for (let branches = maybe(0.35) ? count(1, 3) : 0; branches > 0; branches--) {
			const from = pick(here);
			lines.push(`  from ${from}`);
			let last = from;
			for (let hops = count(1, 2); hops > 0; hops--) last = hop(circuit, last, "    ", run);
		}
	}
	if (asBuilt) lines.push(...landings({ chance, pick, maybe, count }, metric, cores));
	return `${lines.join("\n")}\n`;
}

interface Luck {
	readonly chance: () => number;
	readonly pick: <Item>(items: readonly Item[]) => Item;
	readonly maybe: (share: number) => boolean;
	readonly count: (least: number, most: number) => number;
}

/** Landings in some of the boxes: under other screws, joined with others, loose, capped. */
function landings(luck: Luck, metric: boolean, cores: readonly { tag: string; from: string; to: string }[]): string[] {
	const colours = metric ? ["brown", "blue", "green-yellow"] : ["black", "white", "bare", "green"];
	const boxes = [...new Set(cores.flatMap(({ from, to }) => [from, to]))];
	const terminals = [
		"hot",
		"neutral",
		"ground",
		"line",
		"load",
		"line.hot",
		"load.hot",
		"line.neutral",
		"load.neutral",
	];
	return boxes.flatMap((box) => {
		if (!luck.maybe(0.5)) return [];
		const near = cores.filter(({ from, to }) => from === box || to === box).map(({ tag }) => tag);
		const core = (): string => `${luck.pick(near)}.${luck.pick(colours)}`;
		const point = (): string =>
			box === "LC"
				? luck.pick(["LC.neutral.3", "LC.ground.5", "LC.1.load", "LC.2.load", "LC.case", "LC.main.line"])
				: `${box}.${luck.pick(terminals)}`;
		const lines = [`at ${box}`];
		for (let left = luck.count(1, 4); left > 0; left--) {
			const sort = luck.pick(["on", "on", "on", "join", "loose", "capped", "link"]);
			if (sort === "on") lines.push(`  ${core()} on ${point()}`);
			if (sort === "join") lines.push(`  join ${core()}, ${core()}${luck.maybe(0.5) ? `, ${point()}` : ""}`);
			if (sort === "link") {
				const [one, other] = [point(), point()];
				if (one !== other) lines.push(`  link ${one}, ${other} by ${metric ? "2.5 mm2 blue" : "12 AWG white"}`);
			}
			if (sort === "loose" || sort === "capped") lines.push(`  ${core()} ${sort}`);
		}
		return lines;
	});
}

/** Even numbers from 0 to 1, always the same ones: a linear congruence with the constants of Numerical Recipes. */
function chanceFrom(seed: number): () => number {
	let state = (seed * 2654435761 + 12345) >>> 0;
	return () => {
		state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
		return state / 2 ** 32;
	};
}
