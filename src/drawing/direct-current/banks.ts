// What belongs to another bank of batteries than the one the sheet is read from: an engine's, a starter's.
import { carriesPower, type NetOrder } from "./columns.ts";
import type { DirectNet, DirectNode } from "./net.ts";

/**
 * The nodes that power from other batteries reaches before that of the bank the sheet is read from, those joined to one another together;
 * and what no battery reaches. Buses that only returns lead to belong where most of what is on them does.
 */
export function otherBanks({ nodes }: DirectNet, order: NetOrder): ReadonlySet<string>[] {
	const byName = new Map(nodes.map((node) => [node.name, node]));
	const isFirst = new Map(order.bank.map((name) => [name, true]));
	if (isFirst.size === 0) return [];
	for (const node of nodes) if (isBattery(node) && !isFirst.has(node.name)) isFirst.set(node.name, false);
	for (const [name, whose] of isFirst)
		for (const { run, end, isControl } of byName.get(name)?.meetings ?? []) {
			const next = run.ends[end === 0 ? 1 : 0];
			if (!isControl && carriesPower(run) && !isFirst.has(next)) isFirst.set(next, whose);
		}
	const neighbours = (node: DirectNode): string[] => node.meetings.map(({ run, end }) => run.ends[end === 0 ? 1 : 0]);
	for (let changed = true; changed; ) {
		changed = false;
		for (const node of nodes) {
			if (isFirst.has(node.name)) continue;
			const owners = neighbours(node).flatMap((name) => isFirst.get(name) ?? []);
			if (owners.length === 0) continue;
			isFirst.set(node.name, owners.filter((whose) => whose).length * 2 >= owners.length);
			changed = true;
		}
	}
	const banks: Set<string>[] = [];
	const seen = new Set<string>();
	for (const { name } of nodes) {
		if (seen.has(name) || isFirst.get(name) === true) continue;
		const bank = new Set([name]);
		for (const one of bank) {
			seen.add(one);
			const node = byName.get(one);
			if (node !== undefined) for (const next of neighbours(node)) if (isFirst.get(next) !== true) bank.add(next);
		}
		banks.push(bank);
	}
	return banks;
}

function isBattery(node: DirectNode): boolean {
	return node.kind === "box" && node.stock.parts.some(({ face }) => face.oneLine === "battery");
}
