// All plans for the rules beyond their own, a table a field of work, and those of one rule out of all of them.
import { causesDirect } from "./causes-direct.ts";
import { causesMains } from "./causes-mains.ts";
import { directCurrent } from "./direct-current.ts";
import { mains } from "./mains.ts";
import { nearDirect } from "./near-direct.ts";
import { nearLoads } from "./near-loads.ts";
import { nearPolarity } from "./near-polarity.ts";
import { nearSupplies } from "./near-supplies.ts";
import { slipsDirect } from "./slips-direct.ts";
import { slipsMains } from "./slips-mains.ts";
import { slipsPolarity } from "./slips-polarity.ts";
import { toldDirect } from "./told-direct.ts";
import { toldLoads } from "./told-loads.ts";
import { toldMains } from "./told-mains.ts";
import type { MoreCases } from "./variation.ts";
import { workmanship } from "./workmanship.ts";

const tables = [
	workmanship,
	mains,
	directCurrent,
	toldMains,
	toldLoads,
	toldDirect,
	nearPolarity,
	nearSupplies,
	nearLoads,
	slipsMains,
	slipsPolarity,
	slipsDirect,
	causesMains,
	causesDirect,
	nearDirect,
];

/** What the tables have for a rule, put together. */
export function casesOf(code: string): MoreCases {
	const own = tables.flat().filter((cases) => cases.code === code);
	return { code, fires: own.flatMap(({ fires }) => fires), silent: own.flatMap(({ silent }) => silent) };
}

/** Each rule that a table has plans for. */
export const casesByRule: readonly MoreCases[] = [...new Set(tables.flat().map(({ code }) => code))].map(casesOf);
