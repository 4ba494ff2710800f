// The smaller statements: landings as built, modes and accepted deviations, taken over with their words checked.
import type { Finding } from "../base/finding.ts";
import { didYouMean } from "../base/nearest.ts";
import type { Termination } from "../kinds/kind.ts";
import type { AcceptStatement, AtStatement, Landing, ModeStatement, NameTerm } from "../syntax/tree.ts";
import { type CableWords, readCableMake } from "./cable-make.ts";
import { calledTwice, planFinding } from "./codes.ts";
import { readJointMake } from "./joint-make.ts";
import { foldName } from "./names.ts";
import type { Acceptance, BoxLandings, SaidLanding, SaidMode, Thing } from "./plan.ts";
import { terminations } from "./wiring-words.ts";

/** The landings of an `at` block; a word that is none of its own is a finding and drops that landing only. */
export function readLandings(
	statement: AtStatement,
	things: ReadonlyMap<string, Thing>,
	notUnderstood: ReadonlyMap<string, string>,
	cables: CableWords,
	findings: Finding[],
): BoxLandings | undefined {
	// What could not be understood has been told where it is declared.
	if (notUnderstood.has(foldName(statement.box.text))) return undefined;
	if (!things.has(foldName(statement.box.text))) {
		findings.push(
			planFinding("name-unknown", {
				title: `Nothing here is called ${statement.box.text}`,
				span: statement.box.span,
				help: `${didYouMean(
					statement.box.text,
					[...things.values()].map((thing) => thing.name),
				)} \`at\` takes the name of a box, a panel or a device.`.trim(),
			}),
		);
		return undefined;
	}
	return {
		box: statement.box.text,
		landings: statement.landings.flatMap((landing) => {
			const read = readLanding(landing, cables, findings);
			return read === undefined ? [] : [read];
		}),
		span: statement.span,
	};
}

function readLanding(landing: Landing, cables: CableWords, findings: Finding[]): SaidLanding | undefined {
	switch (landing.kind) {
		case "land": {
			const termination =
				landing.termination === undefined ? undefined : readTermination(landing.termination, findings);
			return {
				sort: "land",
				cores: landing.cores,
				...(termination === undefined ? {} : { termination }),
				on: landing.on,
				span: landing.span,
			};
		}
		case "join": {
			return {
				sort: "join",
				members: landing.members,
				terminations: new Map(
					landing.terminations.flatMap(({ of, termination }) => {
						const read = readTermination(termination, findings);
						return read === undefined ? [] : [[of, read] as const];
					}),
				),
				make: readJointMake(landing.connector, findings),
				span: landing.span,
			};
		}
		case "link": {
			const cable = readCableMake(landing.cable, landing.span, cables, findings);
			if (cable !== undefined && cable.cores.length > 1)
				findings.push(
					planFinding("cable-unknown", {
						title: `A jumper is one conductor, and ${cable.text} has ${cable.cores.length}`,
						span: landing.span,
						help: "Write `by single 12 AWG black`, and one `link` line for each conductor.",
					}),
				);
			return cable === undefined ? undefined : { sort: "link", between: landing.between, cable, span: landing.span };
		}
		case "free":
			return { sort: "free", core: landing.core, state: landing.state, span: landing.span };
	}
}

function readTermination(word: NameTerm, findings: Finding[]): Termination | undefined {
	const termination = terminations.find((known) => known === word.text);
	if (termination === undefined)
		findings.push(
			planFinding("attribute-unknown", {
				title: `\`${word.text}\` is no way to make up a wire's end`,
				span: word.span,
				help: `${didYouMean(word.text, terminations)} Ends are: ${terminations.join(", ")}.`.trim(),
			}),
		);
	return termination;
}

/** The modes as named by the builder; a name used twice is a finding, and the first holds. */
export function readModes(
	statements: readonly ModeStatement[],
	things: ReadonlyMap<string, Thing>,
	findings: Finding[],
): SaidMode[] {
	const modes = new Map<string, SaidMode>();
	for (const statement of statements) {
		const mode = readMode(statement, things, findings);
		const first = modes.get(foldName(mode.name));
		if (first === undefined) modes.set(foldName(mode.name), mode);
		else findings.push(calledTwice("modes", mode.name, statement.name.span, first.span));
	}
	return [...modes.values()];
}

/** A mode as named by the builder; a name that is no source is a finding. */
function readMode(statement: ModeStatement, things: ReadonlyMap<string, Thing>, findings: Finding[]): SaidMode {
	const isSource = (name: NameTerm): boolean => things.get(foldName(name.text))?.blueprint.source !== undefined;
	for (const name of [...statement.sources, ...statement.without])
		if (!isSource(name))
			findings.push(
				planFinding("mode-source-unknown", {
					title: `${name.text} is no source`,
					span: name.span,
					help:
						didYouMean(
							name.text,
							[...things.values()].filter((thing) => thing.blueprint.source !== undefined).map((thing) => thing.name),
						) || "Name sources of the plan.",
				}),
			);
	const without = new Set(statement.without.map((name) => foldName(name.text)));
	const said = statement.sources
		.filter((name) => isSource(name) && !without.has(foldName(name.text)))
		.flatMap((name) => things.get(foldName(name.text))?.name ?? []);
	// Batteries and what charges them are live unless it is said that they are not.
	const direct = [...things.values()].flatMap(({ name, blueprint }) =>
		blueprint.source?.system === "dc" && !said.includes(name) && !without.has(foldName(name)) ? [name] : [],
	);
	return {
		name: statement.name.text,
		live: [...said, ...direct],
		running: statement.with.length === 0 ? undefined : readRunning(statement.with, things, findings),
		positions: readPositions(statement, things, findings),
		span: statement.span,
	};
}

/** The loads that run in a mode; what uses no power is a finding. */
function readRunning(
	names: readonly NameTerm[],
	things: ReadonlyMap<string, Thing>,
	findings: Finding[],
): ReadonlySet<string> {
	const running = new Set<string>();
	for (const name of names) {
		const thing = things.get(foldName(name.text));
		if ((thing?.blueprint.loads ?? []).length > 0) running.add(thing?.name ?? "");
		else
			findings.push(
				planFinding("mode-load-unknown", {
					title: `${name.text} is nothing that uses power`,
					span: name.span,
					help:
						didYouMean(
							name.text,
							[...things.values()].filter(({ blueprint }) => blueprint.loads !== undefined).map((load) => load.name),
						) || "Name loads of the plan behind `with`.",
				}),
			);
	}
	return running;
}

/** Where the transfer switches of a mode stand; what is none, or has no such position, is a finding. */
function readPositions(
	{ positions }: ModeStatement,
	things: ReadonlyMap<string, Thing>,
	findings: Finding[],
): ReadonlyMap<string, string> {
	const said = new Map<string, string>();
	for (const { thing, position } of positions) {
		const found = things.get(foldName(thing.text));
		const known = found?.blueprint.transfer?.positions;
		const source = things.get(foldName(position.text));
		if (found === undefined || known === undefined)
			findings.push(
				planFinding("mode-position-unknown", { title: `${thing.text} is no transfer switch`, span: thing.span }),
			);
		else if (!known.includes(position.text) && source?.blueprint.source === undefined)
			findings.push(
				planFinding("mode-position-unknown", {
					title: `${found.name} has no position ${position.text}`,
					span: position.span,
					help: `It stands at ${known.join(", ")}, or at the name of the source that it is to pass on.`,
				}),
			);
		else said.set(found.name, source?.name ?? position.text);
	}
	return said;
}

/** An accepted deviation; without a reason it is a finding and accepts nothing. */
export function readAcceptance(statement: AcceptStatement, findings: Finding[]): Acceptance | undefined {
	// A line without `because` has been told when the text was read.
	if (statement.because === undefined) return undefined;
	const reason = statement.because.text.trim();
	if (reason === "") {
		findings.push(
			planFinding("reason-empty", {
				title: `No reason is given for accepting ${statement.rule.text}`,
				span: statement.span,
			}),
		);
		return undefined;
	}
	return {
		rule: statement.rule.text,
		...(statement.at === undefined ? {} : { at: statement.at.text }),
		reason,
		span: statement.span,
	};
}
