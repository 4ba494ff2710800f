// The verbs of the command, in the order in which help lists them.
import { check } from "./check.ts";
import { draw } from "./draw.ts";
import { explain } from "./explain.ts";
import { figures } from "./figures.ts";
import { handbook } from "./handbook.ts";
import { mistakes } from "./mistakes.ts";
import { newPlan } from "./new.ts";
import { show } from "./show.ts";
import { size } from "./size.ts";
import { tidy } from "./tidy.ts";
import type { Verb } from "./verb.ts";

/** Every verb there is. */
export const verbs: readonly Verb[] = [check, draw, show, figures, size, mistakes, tidy, explain, handbook, newPlan];
