// From the tree of a text to what the builder said: settings, places, things, runs, landings, modes, accepted deviations.
import type { Finding } from "../base/finding.ts";
import type { PlaceStatement, PlanStatement, Statement, ThingStatement, Tree } from "../syntax/tree.ts";
import { planFinding } from "./codes.ts";
import { findDirectCurrent } from "./direct-current.ts";
import { readAcceptance, readLandings, readModes } from "./landings.ts";
import { namesOf } from "./name-rows.ts";
import { foldName } from "./names.ts";
import { readOwnCables } from "./own-cables.ts";
import { readOwnParts } from "./own-parts.ts";
import { readPlaces } from "./places.ts";
import type { Plan, Thing } from "./plan.ts";
import { takeInOrder } from "./run-order.ts";
import { RunRegister } from "./runs.ts";
import { readSettings } from "./settings.ts";
import { tellAutomaticTags } from "./stages.ts";
import { ThingRegister } from "./things.ts";

/** What a tree says, and what could not be taken up. `use` lines have been resolved before. Never throws. */
export function buildPlan(tree: Tree): { readonly plan: Plan; readonly findings: readonly Finding[] } {
	const findings: Finding[] = [];
	const [head, ...others] = statementsOf(tree, "plan");
	for (const other of others) reportSecondPlan(other, findings);
	const settings = readSettings(head, findings);
	const places = readPlaces(statementsOf(tree, "place") satisfies PlaceStatement[], findings);
	const definitions = statementsOf(tree, "definition");
	const parts = readOwnParts(
		definitions.filter(({ sort }) => sort === "part"),
		findings,
	);
	const register = new ThingRegister(settings, places, parts, findDirectCurrent(tree), findings);
	for (const name of tree.doubtful ?? []) register.notUnderstood.set(foldName(name), "line that was not understood");
	const supplied: { statement: ThingStatement; thing: Thing }[] = [];
	for (const statement of statementsOf(tree, "thing"))
		for (const name of namesOf(statement.name)) {
			const thing = register.declare({
				row: namesOf(statement.name).length,
				type: statement.type,
				name,
				...(statement.label === undefined ? {} : { label: statement.label.text }),
				terms: statement.terms,
				members: statement.members,
				stands: "top",
			});
			if (thing !== undefined) supplied.push({ statement, thing });
		}
	const cables = {
		region: settings.region,
		own: readOwnCables(
			definitions.filter(({ sort }) => sort === "cable"),
			settings.region,
			findings,
		),
	};
	const runs = new RunRegister(register, places, cables, findings);
	// A panel may be fed from one that only a run declares.
	const late = supplied.filter(({ statement }) => !runs.knowsOrigin(statement));
	for (const { statement, thing } of supplied.filter((each) => !late.includes(each))) runs.addSupply(statement, thing);
	takeInOrder(
		statementsOf(tree, "run"),
		(head) => register.byName.has(foldName(head)) || register.notUnderstood.has(foldName(head)),
		(statement) => runs.addRun(statement),
	);
	for (const { statement, thing } of late) runs.addSupply(statement, thing);
	for (const statement of statementsOf(tree, "reading"))
		findings.push(
			planFinding("not-understood-yet", {
				title: `A \`${statement.kind}\` line is read, but has no meaning yet`,
				span: statement.span,
			}),
		);
	const kept = <Kept>(value: Kept | undefined): Kept[] => (value === undefined ? [] : [value]);
	const landings = statementsOf(tree, "at").flatMap((statement) =>
		kept(readLandings(statement, register.byName, register.notUnderstood, cables, findings)),
	);
	const modes = readModes(statementsOf(tree, "mode"), register.byName, findings);
	const acceptances = statementsOf(tree, "accept").flatMap((statement) => kept(readAcceptance(statement, findings)));
	const plan: Plan = {
		file: tree.file,
		title: head?.title?.text ?? "",
		settings,
		places,
		things: register.things,
		thingByName: register.byName,
		runs: runs.runs,
		landings,
		modes,
		acceptances,
		incomplete: runs.incomplete || findings.some((problem) => problem.level === "error"),
	};
	reportSelfFeeding(plan, findings);
	findings.push(...tellAutomaticTags(plan));
	return { plan, findings: withoutRepeats(findings) };
}

/** A word behind a row of things is read once for each of them; it is reported once. So is what counts for nothing yet, wherever it stands. */
function withoutRepeats(findings: readonly Finding[]): Finding[] {
	const seen = new Set<string>();
	return findings.filter(({ code, level, span, title }) => {
		const key =
			code === "not-understood-yet" && level === "note"
				? title
				: [code, span.file, span.line, span.column, title].join(" ");
		return !seen.has(key) && seen.add(key);
	});
}

function statementsOf<Sort extends Statement["kind"]>(tree: Tree, sort: Sort): Extract<Statement, { kind: Sort }>[] {
	return tree.statements.filter(
		(statement): statement is Extract<Statement, { kind: Sort }> => statement.kind === sort,
	);
}

function reportSecondPlan(statement: PlanStatement, findings: Finding[]): void {
	findings.push(
		planFinding("name-twice", {
			title: "There is more than one `plan` line",
			span: statement.span,
			help: "Keep one; its settings hold for the whole text.",
		}),
	);
}

/** Follows cables from panel to panel and reports a panel that is fed, over any number of others, from itself. */
function reportSelfFeeding(plan: Plan, findings: Finding[]): void {
	const panelOf = (name: string): string => {
		const thing = plan.thingByName.get(name.normalize("NFC").toLowerCase());
		return thing?.owner ?? name;
	};
	const feeds = new Map<string, { to: string; hop: Plan["runs"][number]["hops"][number] }[]>();
	for (const run of plan.runs)
		for (const hop of run.hops) {
			if (run.sort === "bond") continue;
			const from = panelOf(hop.from.thing);
			const others = feeds.get(from) ?? [];
			feeds.set(from, others);
			others.push({ to: panelOf(hop.to.thing), hop });
		}
	for (const panel of plan.things.filter((thing) => thing.blueprint.face.traits.includes("panel"))) {
		const seen = new Set<string>([panel.name]);
		const open = [panel.name];
		for (let next = open.pop(); next !== undefined; next = open.pop())
			for (const { to, hop } of feeds.get(next) ?? []) {
				if (to === panel.name)
					findings.push(
						planFinding("panel-fed-by-itself", {
							title: `${panel.name} feeds itself through ${hop.tag}`,
							span: hop.span,
							also: [{ span: panel.span, label: "this panel" }],
							marks: [hop.tag],
						}),
					);
				else if (!seen.has(to)) {
					seen.add(to);
					open.push(to);
				}
			}
	}
}
