// Steps that are taken out of runs, and those that have to stay.
import { expect, test } from "vitest";
import { Groups, type Item, type Reaches } from "../../../src/drawing/direct-current/closeness.ts";
import { takeOutSteps } from "../../../src/drawing/direct-current/level-steps.ts";

const reaches: Reaches = {
	apart: { boxes: 36, runs: 24, tags: 12, "box and run": 24, "box and tag": 12, "run and tag": 12 },
	aside: { boxes: 36, runs: 14, tags: 20, "box and run": 20, "box and tag": 20, "run and tag": 20 },
};
const box = (group: number, left: number, top: number, bottom = top + 60): Item => ({
	group,
	left,
	right: left + 100,
	top,
	bottom,
	sort: "box",
});

function groupsOf(count: number): Groups {
	const groups = new Groups();
	for (let index = 0; index < count; index++) groups.add(-1);
	return groups;
}

test("a box a step below what it is joined to comes up to it", () => {
	const items = [box(0, 0, 0), box(1, 200, 30), box(2, 400, 0, 300)];
	const shifts = takeOutSteps([0, 0, 0], groupsOf(3), items, [{ one: 0, other: 1, by: 30 }], reaches, 144);
	expect(shifts).toEqual([0, -30, 0]);
});

test("it stays where something is in its way, and what it is joined to comes down instead", () => {
	const items = [box(0, 0, 100), box(1, 200, 130), box(2, 200, 0, 98), box(3, 400, 0, 300)];
	const shifts = takeOutSteps([0, 0, 0, 0], groupsOf(4), items, [{ one: 0, other: 1, by: 30 }], reaches, 144);
	expect(shifts).toEqual([30, 0, 0, 0]);
});

test("both stay where neither may move, and where the step is longer than asked", () => {
	const items = [box(0, 0, 100), box(1, 200, 130), box(2, 200, 0, 98), box(3, 0, 196), box(4, 400, 0, 300)];
	const jogs = [{ one: 0, other: 1, by: 30 }];
	expect(takeOutSteps([0, 0, 0, 0, 0], groupsOf(5), items, jogs, reaches, 144)).toEqual([0, 0, 0, 0, 0]);
	const free = [box(0, 0, 0), box(1, 200, 30), box(2, 400, 0, 300)];
	expect(takeOutSteps([0, 0, 0], groupsOf(3), free, jogs, reaches, 8)).toEqual([0, 0, 0]);
});

test("nothing that runs straight gets a step, and none turns round", () => {
	const items = [box(0, 0, 0), box(1, 200, 30), box(2, 400, 30), box(3, 600, 0, 300)];
	const straight = [
		{ one: 0, other: 1, by: 30 },
		{ one: 1, other: 2, by: 0 },
	];
	expect(takeOutSteps([0, 0, 0, 0], groupsOf(4), items, straight, reaches, 144)).toEqual([30, 0, 0, 0]);
	const turned = [
		{ one: 0, other: 1, by: 30 },
		{ one: 1, other: 2, by: -10 },
		{ one: 0, other: 3, by: 10 },
	];
	expect(takeOutSteps([0, 0, 0, 0], groupsOf(4), items, turned, reaches, 144)[1]).not.toBe(-30);
});

test("the whole grows no larger", () => {
	const items = [box(0, 0, 0), box(1, 200, 30), box(2, 200, -70, -8)];
	const shifts = takeOutSteps([0, 0, 0], groupsOf(3), items, [{ one: 0, other: 1, by: 30 }], reaches, 144);
	expect(shifts).toEqual([30, 0, 0]);
	const alone = [box(0, 0, 0), box(1, 200, 30), box(2, 200, -70, -8), box(3, 0, 64)];
	expect(takeOutSteps([0, 0, 0, 0], groupsOf(4), alone, [{ one: 0, other: 1, by: 30 }], reaches, 144)).toEqual([
		0, 0, 0, 0,
	]);
});
