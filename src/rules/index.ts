// Every rule, in the order an inspector would look: protection, polarity, neutral, ground, ground-fault, loads, workmanship.
import type { Rule } from "./rule.ts";

export const rules: readonly Rule[] = [];
