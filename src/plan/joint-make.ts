// The words for a joint connector: what sort it is, how many ports it has, what sizes it takes and how much it carries.
import type { Finding } from "../base/finding.ts";
import { type Gauge, squareMillimetres } from "../base/gauge.ts";
import { didYouMean } from "../base/nearest.ts";
import type { Term } from "../syntax/tree.ts";
import { planFinding } from "./codes.ts";
import type { JointMake } from "./plan.ts";
import { connectors } from "./wiring-words.ts";

/** Ports and amperes of connectors that are sold for wires up to those of a feeder. */
const most = { ports: 24, current: 400 };

/**
 * The connector that `terms` stand for: `lever 3`, `lever 5, 32 A, 24 AWG to 12 AWG`; undefined where no sort is named.
 * What is wrong goes to `findings`.
 */
export function readJointMake(terms: readonly Term[], findings: Finding[]): JointMake | undefined {
	const make: { -readonly [Key in keyof JointMake]?: JointMake[Key] } = {};
	const refuse = (code: Parameters<typeof planFinding>[0], term: Term, title: string, help: string): void => {
		findings.push(planFinding(code, { title, span: term.span, ...(help === "" ? {} : { help }) }));
	};
	const twice = (term: Term, what: string): void =>
		refuse("attribute-twice", term, `The ${what} of the connector is said twice`, "");
	for (const term of terms) {
		const gauge = gaugeOf(term);
		if (gauge !== undefined) {
			const [one, other] = [make.smallest ?? gauge, make.largest ?? gauge];
			if (make.smallest !== undefined && make.smallest !== make.largest) twice(term, "size");
			else {
				make.smallest = gauge.mm2 < one.mm2 ? gauge : one;
				make.largest = gauge.mm2 > other.mm2 ? gauge : other;
			}
		} else if (term.kind === "number") {
			if (make.ports !== undefined) twice(term, "number of ports");
			else if (Number.isInteger(term.value) && term.value >= 2 && term.value <= most.ports) make.ports = term.value;
			else
				refuse(
					"quantity-out-of-range",
					term,
					`${term.text} is no likely number of ports`,
					`From 2 to ${most.ports} fit.`,
				);
		} else if (term.kind === "quantity" && term.quantity.dimension === "current") {
			if (make.rating !== undefined) twice(term, "current");
			else if (term.quantity.value > 0 && term.quantity.value <= most.current) make.rating = term.quantity.value;
			else refuse("quantity-out-of-range", term, `${term.text} is no likely current of a connector`, "");
		} else if (term.kind === "quantity")
			refuse(
				"unit-wrong",
				term,
				`${term.text} does not fit a connector`,
				"Write its current in A, and its sizes as `24 AWG to 12 AWG`.",
			);
		else if (term.kind === "name" && (term.text === "to" || term.text === "from")) continue;
		else {
			const word = "text" in term ? term.text : "?";
			const connector = connectors.find((known) => known === word);
			if (connector === undefined)
				refuse(
					"attribute-unknown",
					term,
					`\`${word}\` is no kind of joint connector`,
					`${didYouMean(word, connectors)} Connectors are: ${connectors.join(", ")}; behind that stand ports, current and sizes.`.trim(),
				);
			else if (make.connector !== undefined) twice(term, "sort");
			else make.connector = connector;
		}
	}
	const { connector } = make;
	return connector === undefined ? undefined : { ...make, connector };
}

function gaugeOf(term: Term): Gauge | undefined {
	if (term.kind === "gauge") return term.gauge;
	return term.kind === "quantity" && term.quantity.dimension === "area"
		? squareMillimetres(term.quantity.value)
		: undefined;
}
