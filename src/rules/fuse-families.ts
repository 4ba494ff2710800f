// The family of the handbook that a fuse's class stands for.
import { type FuseFamily, type FuseFamilyName, fuseFamily } from "../handbook/dc-fuses.ts";
import type { Sourced } from "../handbook/provenance.ts";
import type { Said } from "../kinds/kind.ts";

const families: ReadonlyMap<string, FuseFamilyName> = new Map([
	["class-T", "class T"],
	["ANL", "ANL"],
	["strip", "large bolt-in strip"],
	["cube", "terminal cube"],
	["blade", "blade"],
]);

/** What is typical of the class of a fuse; undefined where none is said, or none that the handbook has. */
export function familyOf(said: Said): Sourced<FuseFamily> | undefined {
	const family = families.get(said.choice("class") ?? "");
	return family === undefined ? undefined : fuseFamily(family);
}
