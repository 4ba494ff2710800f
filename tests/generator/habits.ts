// What a builder may say of a thing besides what it needs, by the names of attributes: true of any thing in a right plan.
import type { AttributeSpec, Kind, Region } from "../../src/kinds/kind.ts";
import type { Chance } from "./chance.ts";
import type { Facts } from "./words.ts";

/** Draws what is said of an attribute where it is said at all; a figure may come as it is written. */
type Habit = (chance: Chance, region: Region, kind: Kind, spec: AttributeSpec) => Facts[string];

/** Every habit by the attribute it speaks of; all cables of a generated plan are of copper and no thicker than these sizes. */
export const habits: ReadonlyMap<string, Habit> = new Map<string, Habit>([
	["metal", (chance) => chance.pick(["copper only", "copper and aluminium"])],
	["smallest", (_, region) => (region === "us" ? "18 AWG" : "0.5 mm2")],
	["largest", (chance, region) => (region === "us" ? chance.pick(["250 kcmil", "4/0 AWG"]) : "120 mm2")],
	["takes", (chance) => chance.count(2, 3)],
	["type", (chance) => chance.pick(["type A", "type F"])],
	["fastening", () => "held down"],
	["interrupting", (chance) => chance.pick([5000, 10_000, 22_000])],
	// Other marks of protective devices.
	[
		"voltage",
		(_, region, { name }) => (name === "fuse" ? "125 V" : name.endsWith("breaker") ? highest(region) : undefined),
	],
	["poles", (_, __, { name }) => (name === "residual-current-device" ? "two-pole" : undefined)],
	// What plates of loads say.
	["power-factor", (_, __, { system }) => (system === "dc" ? undefined : "98 %")],
	["efficiency", (chance) => `${chance.count(85, 95)} %`],
	["surge power", (chance) => chance.count(2, 20) * 1000],
	["surge", (chance, _, __, spec) => (isCurrent(spec) ? chance.count(20, 90) : undefined)],
	["lowest", (_, region, { system }) => (system === "dc" ? "10 V" : region === "us" ? "100 V" : "200 V")],
	["duty", (chance) => `${chance.count(10, 90)} %`],
	["daily", (chance) => chance.pick(["4 h", "30 min", "90 min", "24 h"])],
	["motor", () => true],
	["connection", (chance) => chance.pick(["hard-wired", "cord-and-plug"])],
	["disconnection", () => "own disconnect"],
	["height", (chance) => chance.pick(["40 cm", "18 in", "1.1 m"])],
	// What papers of batteries, inverters, modules and switches say.
	["cut-off", () => "11 V"],
	["drop", () => "50 mV"],
	["make", () => 2000],
	["break", () => 1000],
	["resistance", (_, __, { name }) => (name === "disconnect" ? "0.2 mohm" : undefined)],
	["coefficient", (chance) => chance.pick(["-0.29 %", "-0.3 %"])],
	["coldest", (chance) => chance.pick(["-15 C", "-25 C", "5 F"])],
	["fuse", () => 20],
	["fail-safe", () => true],
]);

/** The attributes that the builder of a plan likes to tell of everything that has them: each comes round. */
export function favouritesOf(seed: number): ReadonlySet<string> {
	const names = [...habits.keys()];
	return new Set([0, 7, 13, 20].map((step) => names[(seed + step) % names.length] ?? ""));
}

function isCurrent(spec: AttributeSpec): boolean {
	return spec.takes === "quantity" && spec.dimension === "current";
}

/** Volts that breakers of a region are marked for. */
function highest(region: Region): string {
	return region === "us" ? "240 V" : "400 V";
}
