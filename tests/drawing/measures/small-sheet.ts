// A small clean sheet to plant faults in: two boxes, a cable between them, a device with a screw, a letter code.
import type { Group, Mark, Sheet } from "../../../src/drawing/scene.ts";

/** The sheet, with `marks` painted over the drawing in a group of their own and `changed` in place of groups of the same name. */
export function smallSheet(marks: readonly Mark[] = [], changed: readonly Group[] = []): Sheet {
	const groups = [frame, box("b1", 100), box("b2", 400), cable, inside("b1", 100), inside("b2", 400)];
	const planted: Group[] = marks.length === 0 ? [] : [{ name: "planted", sort: "object", marks }];
	return {
		name: "wiring",
		title: "Small",
		description: "Two boxes",
		width: 800,
		height: 560,
		groups: [...groups.map((group) => changed.find(({ name }) => name === group.name) ?? group), ...planted],
	};
}

const frame: Group = {
	name: "frame",
	sort: "decoration",
	marks: [{ kind: "rectangle", as: "frame", x: 40, y: 40, width: 720, height: 480, stroke: "ink", strokeWidth: 2 }],
};

function box(name: string, x: number): Group {
	return {
		name: `box ${name}`,
		sort: "object",
		marks: [
			{
				kind: "rectangle",
				as: "enclosure",
				of: name,
				x,
				y: 150,
				width: 200,
				height: 160,
				fill: "enclosure",
				stroke: "ink",
				strokeWidth: 1.6,
			},
			{ kind: "text", text: name, of: name, x: x + 12, y: 172, size: 13, bold: true, anchor: "start", paint: "ink" },
		],
	};
}

const cable: Group = {
	name: "cable c1",
	sort: "object",
	marks: [
		{
			kind: "jacket",
			of: "c1",
			points: [
				{ x: 300, y: 250 },
				{ x: 400, y: 250 },
			],
			width: 16,
			radius: 16,
			colour: "yellow",
		},
		{
			kind: "wire",
			of: "c1.black",
			points: [
				{ x: 300, y: 247 },
				{ x: 400, y: 247 },
			],
			colour: "black",
			width: 2.5,
			radius: 4,
			run: "strand",
		},
		{
			kind: "wire",
			of: "c1.white",
			points: [
				{ x: 300, y: 253 },
				{ x: 400, y: 253 },
			],
			colour: "white",
			width: 2.5,
			radius: 4,
			run: "strand",
		},
		{ kind: "text", text: "12-2", of: "c1", x: 350, y: 236, size: 11.5, bold: true, anchor: "middle", paint: "ink" },
	],
};

/** A device at the far side of the box, its screw reached by one conductor. */
function inside(name: string, x: number): Group {
	const isFirst = name === "b1";
	const [from, to] = isFirst ? [x + 90, x + 200] : [x, x + 110];
	return {
		name: `inside ${name}`,
		sort: "object",
		marks: [
			{
				kind: "rectangle",
				as: "item",
				of: name,
				x: isFirst ? x + 30 : x + 110,
				y: 215,
				width: 60,
				height: 70,
				fill: "item",
				stroke: "ink",
				strokeWidth: 1.3,
			},
			{
				kind: "wire",
				of: "c1.black",
				points: [
					{ x: from, y: 250 },
					{ x: to, y: 250 },
				],
				colour: "black",
				width: 3.4,
				radius: 7,
				run: "run",
			},
			{
				kind: "circle",
				as: "terminal",
				of: `${name}.hot`,
				x: isFirst ? from : to,
				y: 250,
				radius: 5,
				fill: "brass",
				stroke: "ink",
			},
			{
				kind: "text",
				text: "BK",
				of: "c1.black",
				x: x + (isFirst ? 130 : 50),
				y: 244,
				size: 10.5,
				anchor: "start",
				paint: "ink",
			},
		],
	};
}
