// What a kind looks like to the hand, read off the thing as it is built: its terminals by their names and screws, and its sides.
import { certain } from "../../base/certain.ts";
import { formatGauge } from "../../base/gauge.ts";
import { findUnit, type Quantity, quantity, unitsOf } from "../../base/quantity.ts";
import type { AttributeSpec, Blueprint, Kind, Said, TerminalSpec } from "../../kinds/kind.ts";
import { roleWords, tellBrought, tellLandings, tellLinks } from "./inner-ways.ts";
import type { Page } from "./page.ts";

type Slots = Page["slots"];

/** Terminals, sides and ways inside of a kind: first as nothing is said of it, then for each word that changes them. */
export function tellAnatomy(kind: Kind): Slots {
	const told = new Set<string>();
	const plain = new Set<string>();
	const slot = /^ *(slot 1.*)$/m.exec(kind.example)?.[1];
	return formsOf(kind).flatMap(({ words, ...form }) => {
		const blueprint = kind.build(said(form));
		const groups = [
			tellTerminals(blueprint),
			tellSides(blueprint),
			tellLandings(blueprint),
			tellLinks(blueprint),
			tellBrought(blueprint, slot),
		].filter((group) => group.length > 0);
		if (words === "") {
			for (const group of groups) plain.add(JSON.stringify(group));
			return groups.flat();
		}
		// Of a word only what it changes.
		const slots = groups.filter((group) => !plain.has(JSON.stringify(group))).flat();
		const text = JSON.stringify(slots);
		if (slots.length === 0 || told.has(text)) return [];
		told.add(text);
		return [{ word: "with", text: `${words}:` }, ...slots];
	});
}

/** What the lists and drawings call it where nothing is said of it. */
export function nameInLists(kind: Kind): string {
	return kind.build(said({ values: {}, system: systemOf(kind) })).face.text;
}

/** Whether the kind plugs into a slot, so that its name is that of the slot. */
export function hasSlot(kind: Kind): boolean {
	return kind.build(said({ values: {}, system: systemOf(kind) })).plugs !== undefined;
}

/** The words among an attribute's that change nothing: they say what holds in any case. */
export function isUsual(kind: Kind, attribute: AttributeSpec, word: string): boolean {
	if (attribute.takes !== "choice") return false;
	const others = attribute.words.filter((other) => other !== word);
	const looks = (value?: string) =>
		JSON.stringify(
			kind.build(said({ values: value === undefined ? {} : { [attribute.name]: value }, system: systemOf(kind) })),
		);
	return looks(word) === looks() && others.every((other) => looks(other) !== looks());
}

/** What may be said of a thing, in words and as values. */
interface Form {
	readonly words: string;
	readonly values: Readonly<Record<string, Value>>;
	readonly system: Said["system"];
	readonly slot?: NonNullable<Said["slot"]>;
}
type Value = string | number | boolean | Quantity | readonly [Quantity, Quantity];

const volt = certain(findUnit("V"), "the volt");

/** The kind with nothing said, with each single word said that it knows, and with each of these at 240 V. */
function formsOf(kind: Kind): Form[] {
	const system = systemOf(kind);
	const plain: Form = { words: "", values: {}, system };
	const single = [plain, ...kind.attributes.flatMap((attribute) => formsBy(attribute, system))];
	const voltage = kind.attributes.find(({ takes, name }) => takes === "quantity" && name === "voltage");
	const high = single.map(({ words, values }) => ({
		words: words === "" ? "240 V" : `${words}, 240 V`,
		values: { ...values, voltage: quantity(240, volt) },
		system,
	}));
	const place = (name: string, legs: readonly string[]): Form => ({ ...plain, words: name, slot: { name, legs } });
	const inSlots = kind.stands.includes("panel")
		? [place("1", ["bus.A"]), place("main", ["bus.A"])].map((form) => ({
				...form,
				words: placeWords[form.words] ?? "",
			}))
		: [];
	const direct: Form = { ...plain, words: "direct current", system: "dc" };
	const isEither = kind.system !== "dc" && kind.system !== "ac";
	return [...single, ...(voltage === undefined ? [] : high), ...inSlots, ...(isEither ? [direct] : [])];
}

/** The system it belongs to, where nothing tells that it hangs on the other. */
function systemOf(kind: Kind): Said["system"] {
	return kind.system === "dc" ? "dc" : "ac";
}

const placeWords: Readonly<Record<string, string>> = { 1: "a slot", main: "the place of a panel's main" };

function formsBy(attribute: AttributeSpec, system: Said["system"]): Form[] {
	const form = (words: string, value: Value): Form => ({ words, values: { [attribute.name]: value }, system });
	switch (attribute.takes) {
		case "flag":
			return [form(attribute.name, true), form(`no ${attribute.name}`, false)];
		case "choice":
			return attribute.words.map((word) => form(word, word));
		case "phrase":
			return attribute.phrases.map((phrase) => form(phrase, phrase));
		case "count":
			// Numbers of ports and slots only make the list longer; the two legs of a panel are another panel.
			return attribute.most > 3 ? [] : [form(`${attribute.word} ${attribute.most}`, attribute.most)];
		case "pair": {
			// The summary shows the pair that is usual for the kind.
			const [words, first, second] = /`([0-9.]+) V \/ ([0-9.]+) V`/.exec(attribute.summary) ?? [];
			if (words === undefined) return [];
			return [form(words.replaceAll("`", ""), [quantity(Number(first), volt), quantity(Number(second), volt)])];
		}
		case "quantity": {
			const { word, dimension, least = 1, most = least } = attribute;
			const [symbol = ""] = unitsOf(dimension);
			const unit = findUnit(symbol);
			if (word === undefined || unit === undefined) return [];
			return [form(`${word} ... ${symbol}`, quantity(Math.sqrt(Math.abs(least * most)), unit))];
		}
		case "name":
		case "gauge":
			return [];
	}
}

/** A thing of which only these values are said, in a plan that says nothing of itself. */
function said({ values, slot, system }: Omit<Form, "words">): Said {
	const all = new Map(Object.entries(values));
	return {
		name: "x",
		region: "us",
		rules: "camper",
		system,
		...(slot === undefined ? {} : { slot }),
		quantity: (name) => {
			const value = all.get(name);
			return typeof value === "object" && "unit" in value ? value : undefined;
		},
		flag: (name) => {
			const value = all.get(name);
			return typeof value === "boolean" ? value : undefined;
		},
		choice: (name) => {
			const value = all.get(name);
			return typeof value === "string" ? value : undefined;
		},
		count: (name) => {
			const value = all.get(name);
			return typeof value === "number" ? value : undefined;
		},
		pair: (name) => {
			const value = all.get(name);
			return typeof value === "object" && !("unit" in value) ? value : undefined;
		},
		gauge: () => undefined,
	};
}

function tellTerminals({ terminals }: Blueprint): Slots {
	const rows: { first: TerminalSpec; last: TerminalSpec; text: string }[] = [];
	for (const terminal of terminals) {
		const text = tellTerminal(terminal);
		const row = rows.at(-1);
		// The ports of a bar: alike, and numbered.
		if (row?.text === text && /^[0-9]+$/.test(terminal.name)) row.last = terminal;
		else rows.push({ first: terminal, last: terminal, text });
	}
	return rows.map(({ first, last, text }, index) => {
		const names = first === last ? [first.name, ...(first.also ?? [])].join(" or ") : `${first.name} to ${last.name}`;
		return { word: index === 0 ? "terminals" : "", text: `${names}: ${text}` };
	});
}

function tellTerminal({ role, screw, clamp, capacity, smallest, largest }: TerminalSpec): string {
	const holder = screw === undefined || clamp === "stab" ? clampWords[clamp] : `${screw} ${clampWords[clamp]}`;
	const what = `${roleWords[role]}, ${holder}`;
	if (clamp === "stab" || clamp === "lead") return what;
	const wires = capacity === 1 ? "one wire" : `up to ${capacity} wires`;
	return `${what}, ${wires} of ${formatGauge(smallest)} to ${formatGauge(largest)}`;
}

const clampWords = {
	screw: "screw",
	plate: "screw with a clamping plate",
	cage: "pressure terminal",
	stud: "stud",
	port: "port",
	lead: "lead of its own",
	stab: "plugs on to the panel's bus",
} as const;

/** Which sides a chain can meet, where there is a choice. */
function tellSides({ sides, onward }: Blueprint): Slots {
	const [first, ...others] = sides;
	if (first === undefined || others.length === 0) return [];
	const names = sides.map((side) => `\`from NAME.${side.name}\``).join(" or ");
	return [
		{ word: "sides", text: `${names}; an arriving cable lands on ${first.name}, a chain goes on from ${onward}` },
	];
}
