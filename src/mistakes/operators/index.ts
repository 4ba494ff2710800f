// Every operator, in the order of the table.
import type { Operator } from "../mistake.ts";
import { bridged } from "./bridge.ts";
import { exchangedAtPart, exchangedInBox } from "./exchange.ts";
import { loosened, misplaced } from "./misplace.ts";

export const operators: readonly Operator[] = [exchangedAtPart, exchangedInBox, misplaced, loosened, bridged];
