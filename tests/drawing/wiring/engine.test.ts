// The layout engine's settings: an unknown one is ignored without a word, so each is shown to do something.
import elk, { type ElkNode } from "elkjs/lib/elk.bundled.js";
import { expect, test } from "vitest";
import { engineOptions } from "../../../src/drawing/wiring/layered.ts";

/** A net with a ring, branches and boxes of several sizes, so that every setting has something to act on. */
function net(options: Readonly<Record<string, string>>): ElkNode {
	const ends: readonly (readonly [number, number])[] = [
		[0, 1],
		[0, 2],
		[1, 3],
		[2, 3],
		[3, 4],
		[0, 4],
		[1, 5],
		[5, 6],
		[2, 6],
		[6, 4],
		[0, 7],
		[7, 5],
	];
	return {
		id: "net",
		layoutOptions: { ...options },
		children: Array.from({ length: 8 }, (_, index) => ({
			id: `n${index}`,
			width: 120 + 40 * (index % 3),
			height: 90 + 50 * (index % 4),
			layoutOptions: { "elk.portConstraints": "FIXED_POS" },
			ports: [
				...ends.flatMap(([from], edge) =>
					from === index
						? [
								{
									id: `o${edge}`,
									x: 120 + 40 * (index % 3),
									y: 20 + 12 * (edge % 5),
									width: 0,
									height: 0,
									layoutOptions: { "elk.port.side": "EAST" },
								},
							]
						: [],
				),
				...ends.flatMap(([, to], edge) =>
					to === index
						? [
								{
									id: `i${edge}`,
									x: 0,
									y: 20 + 12 * (edge % 5),
									width: 0,
									height: 0,
									layoutOptions: { "elk.port.side": "WEST" },
								},
							]
						: [],
				),
			],
		})),
		edges: ends.map((_, edge) => ({ id: `e${edge}`, sources: [`o${edge}`], targets: [`i${edge}`] })),
	};
}

async function shapeWith(options: Readonly<Record<string, string>>): Promise<string> {
	const { children, edges } = await new elk.default().layout(net(options));
	return JSON.stringify([
		children?.map(({ x, y }) => [x, y]),
		edges?.map(({ sections }) => sections?.[0]?.bendPoints ?? []),
	]);
}

test("the same net comes out the same twice", async () => {
	expect(await shapeWith(engineOptions)).toBe(await shapeWith(engineOptions));
});

/** The seed decides only between equals; the algorithm and the way of routing are the engine's own defaults. */
const silent = new Set(["elk.randomSeed", "elk.algorithm", "elk.edgeRouting", "elk.direction"]);

test.each(Object.keys(engineOptions).filter((name) => !silent.has(name)))("%s changes the layout", async (name) => {
	const { [name]: _left, ...others } = engineOptions;
	expect(await shapeWith(others)).not.toBe(await shapeWith(engineOptions));
});
