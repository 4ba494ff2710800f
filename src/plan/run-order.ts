// The order in which runs are taken in: as they stand, but one that names what only a later run declares waits for that.
import type { Link, Member, NameTerm, RunStatement } from "../syntax/tree.ts";
import { namesOf } from "./name-rows.ts";
import { foldName } from "./names.ts";

/** Gives each run to `take`; what waits for a name that no run declares comes last, to be told. */
export function takeInOrder(
	statements: readonly RunStatement[],
	isKnown: (head: string) => boolean,
	take: (statement: RunStatement) => void,
): void {
	const waiting = new Map<string, RunStatement[]>();
	for (const statement of statements) {
		const open = [statement];
		for (let next = open.pop(); next !== undefined; next = open.pop()) {
			const missing = findMissing(next, isKnown);
			if (missing !== undefined) {
				const others = waiting.get(missing);
				if (others === undefined) waiting.set(missing, [next]);
				else others.push(next);
				continue;
			}
			take(next);
			if (waiting.size > 0) open.push(...released(next.links, waiting).toReversed());
		}
	}
	const left = new Set([...waiting.values()].flat());
	for (const statement of statements) if (left.has(statement)) take(statement);
}

/** The first name of a run that neither the plan so far nor the run itself declares. */
function findMissing({ from, links }: RunStatement, isKnown: (head: string) => boolean): string | undefined {
	const start = from.find(({ head }) => !isKnown(head));
	return start === undefined ? missingIn(links, isKnown, new Set()) : foldName(start.head);
}

function missingIn(links: readonly Link[], isKnown: (head: string) => boolean, own: Set<string>): string | undefined {
	const isMissing = ({ head }: NameTerm): boolean => !isKnown(head) && !own.has(foldName(head));
	for (const link of links) {
		const named = link.kind === "branch" ? link.from : link.type === undefined ? namesOf(link.name) : [];
		const missing = named.find(isMissing);
		if (missing !== undefined) return foldName(missing.head);
		if (link.kind === "branch") {
			const further = missingIn(link.links, isKnown, own);
			if (further !== undefined) return further;
		} else for (const name of declaredBy(link)) own.add(name);
	}
	return undefined;
}

/** The runs that waited for what a chain declares, in the order in which it does. */
function released(links: readonly Link[], waiting: Map<string, RunStatement[]>): RunStatement[] {
	return links.flatMap((link) =>
		link.kind === "branch"
			? released(link.links, waiting)
			: declaredBy(link).flatMap((name) => {
					const runs = waiting.get(name) ?? [];
					waiting.delete(name);
					return runs;
				}),
	);
}

/** What a line declares: the thing that it arrives at, and its parts. */
function declaredBy({ type, name, members }: Extract<Link, { kind: "hop" }> | Member): string[] {
	const own = type === undefined || name === undefined ? [] : namesOf(name).map(({ head }) => foldName(head));
	return [...own, ...members.flatMap(declaredBy)];
}
