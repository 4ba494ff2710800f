// What a builder may say of a thing besides what it needs, by the names of attributes: true of any thing in a right plan.
import type { Region } from "../../src/kinds/kind.ts";
import type { Chance } from "./chance.ts";
import type { Facts } from "./words.ts";

/** Draws what is said of an attribute where it is said at all. */
type Habit = (chance: Chance, region: Region) => NonNullable<Facts[string]>;

/** Every habit by the attribute it speaks of; all cables of a generated plan are of copper and thinner than these sizes. */
export const habits: ReadonlyMap<string, Habit> = new Map<string, Habit>([
	["metal", (chance) => chance.pick(["copper only", "copper and aluminium"])],
	["smallest", (_, region) => (region === "us" ? "18 AWG" : "0.5 mm2")],
	["largest", (chance, region) => (region === "us" ? chance.pick(["250 kcmil", "4/0 AWG"]) : "120 mm2")],
	["takes", (chance) => chance.count(2, 3)],
	["type", (chance) => chance.pick(["type A", "type F"])],
	["fastening", () => "held down"],
	["interrupting", (chance) => chance.pick([5000, 10_000, 22_000])],
]);
