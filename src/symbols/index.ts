// Every symbol by its name. Add one as an entry in its family's file.
import { contacts } from "./contacts.ts";
import { deviceFaces } from "./device-faces.ts";
import { directCurrent } from "./direct-current.ts";
import { directCurrentFaces } from "./direct-current-faces.ts";
import { grounding } from "./grounding.ts";
import { joints } from "./joints.ts";
import { loads } from "./loads.ts";
import { notes } from "./notes.ts";
import { outletFaces } from "./outlet-faces.ts";
import { outlets } from "./outlets.ts";
import { protection } from "./protection.ts";
import { sources } from "./sources.ts";
import { supplyFaces } from "./supply-faces.ts";
import { switching } from "./switching.ts";
import type { SymbolDesign } from "./symbol.ts";

export type { Shape, SymbolDesign, SymbolPort } from "./symbol.ts";

/** Every symbol, family by family. */
export const symbols: readonly SymbolDesign[] = [
	...sources,
	...protection,
	...switching,
	...outlets,
	...loads,
	...directCurrent,
	...grounding,
	...outletFaces,
	...deviceFaces,
	...supplyFaces,
	...directCurrentFaces,
	...contacts,
	...joints,
	...notes,
];

/** The names of all symbols. */
export const symbolNames: readonly string[] = symbols.map((design) => design.name);

/** The symbol of that name, or undefined. */
export function findSymbol(name: string): SymbolDesign | undefined {
	return symbolByName.get(name);
}

/** The form of a symbol that a region uses: `breaker` is `breaker-us` or `breaker-iec`; one form for both stands by its own name. */
export function regionalSymbol(name: string, region: "us" | "iec"): SymbolDesign | undefined {
	return symbolByName.get(`${name}-${region}`) ?? symbolByName.get(name);
}

const symbolByName: ReadonlyMap<string, SymbolDesign> = new Map(symbols.map((design) => [design.name, design]));
