// A fuse of a family that cannot break what the battery drives into a short circuit, where a stronger one was planned.
import type { Quantity } from "../../base/quantity.ts";
import type { Circuit, Part } from "../../circuit/circuit.ts";
import type { Said } from "../../kinds/kind.ts";
import { foldName } from "../../plan/names.ts";
import type { Thing } from "../../plan/plan.ts";
import type { Mistake, Operator } from "../mistake.ts";
import { placesOfPart } from "../wire-ends.ts";

export const weakFuse: Operator = {
	name: "a fuse that cannot break the fault current",
	*find(circuit): Iterable<Mistake> {
		for (const source of circuit.sources) {
			const battery = source.sort === "battery" ? thingOf(circuit, source.part) : undefined;
			const fault = battery?.said.quantity("fault")?.value;
			if (fault === undefined || fault <= weak.value) continue;
			for (const part of fusesAt(circuit, source.hot)) {
				const thing = thingOf(circuit, part.name);
				if (thing?.said.quantity("interrupting") === undefined) continue;
				yield {
					at: `${part.name}, which breaks ${weak.written} ${weak.unit}, at ${source.part}`,
					wrong: () => withThing(circuit, { ...thing, said: weaker(thing.said) }),
					places: placesOfPart(circuit, part),
				};
			}
		}
	},
};

/** What a blade fuse breaks (ISO 8820-3, recalled). */
const weak: Quantity = { dimension: "current", value: 1000, written: 1, unit: "kA" };

/** The fuses that a lead, or a bolt, joins with a post. */
function fusesAt(circuit: Circuit, posts: readonly number[]): readonly Part[] {
	const near = [
		...circuit.conductors.map(({ ends }) => ends.map(({ point }) => point)),
		...circuit.links.filter(({ nature }) => nature === "solid").map(({ between }) => between),
	].flatMap((pair) => (pair.some((point) => point !== undefined && posts.includes(point)) ? pair : []));
	return circuit.protections.flatMap(({ part }) => {
		const found = circuit.partByName.get(part);
		return found?.points.some((point) => near.includes(point)) === true ? [found] : [];
	});
}

function thingOf(circuit: Circuit, name: string): Thing | undefined {
	return circuit.plan.thingByName.get(foldName(name));
}

function withThing(circuit: Circuit, thing: Thing): Circuit {
	const thingByName = new Map(circuit.plan.thingByName).set(foldName(thing.name), thing);
	return { ...circuit, plan: { ...circuit.plan, thingByName } };
}

/** The same said, but for what it breaks. */
function weaker(said: Said): Said {
	return {
		...(said.slot === undefined ? {} : { slot: said.slot }),
		name: said.name,
		region: said.region,
		rules: said.rules,
		system: said.system,
		quantity: (attribute) => (attribute === "interrupting" ? weak : said.quantity(attribute)),
		flag: (attribute) => said.flag(attribute),
		choice: (attribute) => (attribute === "class" ? undefined : said.choice(attribute)),
		count: (attribute) => said.count(attribute),
		pair: (attribute) => said.pair(attribute),
		gauge: (attribute) => said.gauge(attribute),
	};
}
