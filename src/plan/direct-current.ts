// Which things declared at the left edge are wired to direct current: told by the runs that meet them, before anything is made.
import { findKind } from "../kinds/index.ts";
import type { HopStatement, Link, NameTerm, Statement, Tree } from "../syntax/tree.ts";
import { namesOf } from "./name-rows.ts";
import { foldName } from "./names.ts";

/** The folded names of such things. Those whose kind says it by itself are among them; those with sides of both systems are not. */
export function findDirectCurrent(tree: Tree): ReadonlySet<string> {
	const systems = new Map<string, "ac" | "dc" | "both" | undefined>();
	const chains: { readonly names: readonly NameTerm[]; readonly hops: readonly HopStatement[] }[] = [];
	for (const statement of tree.statements) {
		if (statement.kind === "run" && statement.sort !== "bond") addChains(statement.from, statement.links, chains);
		if (statement.kind !== "thing") continue;
		for (const name of namesOf(statement.name)) systems.set(foldName(name.text), findKind(statement.type.text)?.system);
		const { supply } = statement;
		if (supply !== undefined) chains.push({ names: [...supply.from, ...namesOf(statement.name)], hops: [] });
	}
	const direct = new Set([...systems].flatMap(([name, system]) => (system === "dc" ? [name] : [])));
	if (direct.size === 0 && !tree.statements.some(saysLowVoltage)) return direct;
	for (const statement of tree.statements)
		if (saysLowVoltage(statement)) for (const name of namesOf(statement.name)) direct.add(foldName(name.text));
	for (let before = -1; before !== direct.size; ) {
		before = direct.size;
		for (const { names, hops } of chains) {
			const isDirect = (name: NameTerm): boolean =>
				isBatterySide(name) || (!isCoil(name) && direct.has(foldName(name.head)));
			const reached = hops.flatMap((hop) => (hop.type === undefined ? namesOf(hop.name) : []));
			const made = hops.some(({ type }) => type !== undefined && findKind(type.text)?.system === "dc");
			if (!made && ![...names, ...reached].some(isDirect)) continue;
			const met = [...names, ...hops.flatMap((hop) => namesOf(hop.name))];
			for (const name of met)
				if (!isCoil(name) && systems.get(foldName(name.head)) === undefined) direct.add(foldName(name.head));
		}
	}
	return direct;
}

/** A chain and its branches, each with where it starts. */
function addChains(
	names: readonly NameTerm[],
	links: readonly Link[],
	chains: { names: readonly NameTerm[]; hops: readonly HopStatement[] }[],
): void {
	const hops: HopStatement[] = [];
	chains.push({ names, hops });
	for (const link of links)
		if (link.kind === "hop") hops.push(link);
		else addChains(link.from, link.links, chains);
}

/** `house.+`, `inv.-`: only what is for direct current has such sides. */
function isBatterySide({ steps }: NameTerm): boolean {
	const last = steps.at(-1);
	return last === "+" || last === "-";
}

/** `K1.coil`: what hangs on a coil says nothing of what its contact switches. */
function isCoil({ steps }: NameTerm): boolean {
	const last = steps.at(-1)?.toLowerCase();
	return last === "coil" || last === "a1" || last === "a2";
}

type ThingOf = Extract<Statement, { kind: "thing" }>;

/** A consumer that is said to be made for a battery's voltage. */
function saysLowVoltage(statement: Statement): statement is ThingOf {
	return (
		statement.kind === "thing" &&
		findKind(statement.type.text)?.system === undefined &&
		statement.terms.some(
			(term) =>
				term.kind === "quantity" && term.quantity.dimension === "voltage" && term.quantity.value <= extraLowVolts,
		)
	);
}

/** Below the voltages of any mains: batteries of boats, campers and cabins have 12, 24, 36 or 48 V (common practice). */
const extraLowVolts = 60;
