// Something that hangs on the middle of batteries in series, and so on a part of them alone.
import type { Analysis } from "../analysis/analysis.ts";
import type { DirectState } from "../analysis/direct.ts";
import { joinAll } from "../analysis/joined-sets.ts";
import { certain } from "../base/certain.ts";
import { type Finding, finding } from "../base/finding.ts";
import { live } from "./meter-test.ts";
import { findOverDirect } from "./over-modes.ts";
import type { Rule } from "./rule.ts";

const bank = `battery B1 lithium 12.8 V 100 Ah
battery B2 lithium 12.8 V 100 Ah
feed middle from B1.- by single 2/0 black
  1 ft to B2.+
`;

export const seriesTapped: Rule = {
	code: "series-tapped",
	level: "error",
	what: "A load hangs on some of the batteries of a series, not on all of them.",
	why: "The battery it draws from is emptied before the others and then ruined: they charge and discharge as one.",
	help: "Feed it from the whole series through a converter for its voltage.",
	basis: "common practice",
	meter: [
		live(
			"digital voltmeter",
			"at the posts of each battery of the series, after some days of use",
			"more than some tenths of a volt between one battery and the next",
		),
	],
	applies: { regions: ["us", "iec"], rules: ["camper", "boat", "building"] },
	wrong: [
		`${bank}feed all from B1.+, B2.- by pair 12 AWG
  bolted to F2: fuse 15 A
  3 ft to l2: light 6 W 24 V
feed tap from B2.+, B2.- by pair 12 AWG
  bolted to F1: fuse 15 A
  3 ft to l1: light 6 W 12 V
`,
	],
	right: [
		`${bank}feed all from B1.+, B2.- by pair 12 AWG
  bolted to F1: fuse 15 A
  3 ft to l1: light 6 W 24 V
`,
	],
	check: (analysis) => findOverDirect(analysis, (direct) => checkDirect(analysis, direct)),
};

function checkDirect({ circuit }: Analysis, direct: DirectState): Finding[] {
	const batteries = circuit.sources.filter(({ sort }) => sort === "battery");
	// Where batteries meet the wrong way round, that is the fault to tell.
	if (batteries.length < 2 || direct.contradicted.length > 0) return [];
	const joined = joinAll(direct.network);
	const plusAt = new Map(batteries.map((battery) => [joined.find(battery.hot[0] ?? 0), battery]));
	const middles = new Map(
		batteries.flatMap(({ neutral, name }) => {
			const set = joined.find(neutral ?? 0);
			const below = plusAt.get(set);
			return neutral === undefined || below === undefined ? [] : [[set, [name, below.name]] as const];
		}),
	);
	return circuit.loads.flatMap(({ part, between }) => {
		const point = between.find((candidate) => middles.has(joined.find(candidate)));
		const [upper, lower] = middles.get(joined.find(point ?? 0)) ?? [];
		const { kind, span } = certain(circuit.partByName.get(part), part);
		// What a solar controller takes comes from its modules.
		if (point === undefined || upper === undefined || lower === undefined || kind === "solar-controller") return [];
		return [
			finding({
				code: seriesTapped.code,
				level: "error",
				title: `${part} hangs on the middle between ${upper} and ${lower}, which are in series`,
				span,
				label: "on a part of the series",
				marks: [part, circuit.points[point]?.name ?? ""],
				why: seriesTapped.why,
				help: `Feed ${part} from both ends of the series, through a converter where it is made for fewer volts.`,
				basis: seriesTapped.basis,
				key: `${seriesTapped.code}@${part}`,
			}),
		];
	});
}
