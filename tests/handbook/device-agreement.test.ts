// Tables of devices, boxes, places and loads held against each other: a mistyped cell shows here.
import { describe, expect, test } from "vitest";
import { conductorVolumes } from "../../src/handbook/box-fill.ts";
import { tripPoints } from "../../src/handbook/breaker-trip.ts";
import { fuseFamilies, fusePoints } from "../../src/handbook/dc-fuses.ts";
import { equipmentGrounds } from "../../src/handbook/equipment-ground.ts";
import { classA, residualTimes } from "../../src/handbook/ground-fault-devices.ts";
import { groundFaultPlaces } from "../../src/handbook/ground-fault-places.ts";
import { cordLoads, receptacleRatings } from "../../src/handbook/receptacles.ts";
import { smallConductors } from "../../src/handbook/small-conductors.ts";
import { countedSizes, standardBoxes } from "../../src/handbook/standard-boxes.ts";
import { isStandardRating, standardRatings } from "../../src/handbook/standard-ratings.ts";
import { testerReadings } from "../../src/handbook/tester-readings.ts";
import { typicalLoads } from "../../src/handbook/typical-loads.ts";
import { expectRising, given } from "./rising.ts";

const tripPointsOf = (standard: string, rating: number) =>
	tripPoints.rows.filter((row) => row.standard === standard && rating > row.above && rating <= row.upTo);

describe("protection, grounds, receptacles", () => {
	test("standard ratings rise within a region", () => {
		for (const region of ["us", "iec"])
			expectRising(
				standardRatings.rows.filter((row) => row.region === region).map((row) => row.ampere),
				region,
			);
	});
	test("the equipment ground grows with the device and is standard at every step", () => {
		expectRising(
			equipmentGrounds.rows.map((row) => row.upTo),
			"device",
		);
		expectRising(
			equipmentGrounds.rows.map((row) => row.copper.mm2),
			"copper",
		);
		for (const row of equipmentGrounds.rows) expect(isStandardRating(row.upTo, "us"), `${row.upTo} A`).toBe(true);
	});
	test("up to 20 A the ground is as large as the smallest circuit conductor, above it never larger", () => {
		for (const small of smallConductors.rows.filter(({ largest }) => largest >= 15)) {
			const ground = equipmentGrounds.rows.find(({ upTo }) => upTo >= small.largest);
			expect(ground?.copper.mm2, small.gauge.label).toBeLessThanOrEqual(small.gauge.mm2);
		}
	});
	test("a cord load is 80 % of its receptacle, and every receptacle it names fits its circuit", () => {
		for (const row of cordLoads.rows) {
			expect(row.largest).toBe(0.8 * row.receptacle);
			for (const circuit of row.circuits)
				expect(receptacleRatings.rows.find((rating) => rating.circuit === circuit)?.receptacles).toContain(
					row.receptacle,
				);
		}
	});
});

describe("boxes", () => {
	test("printed counts are the volume divided by the conductor's, but for the one known misfit", () => {
		const misfits = standardBoxes.rows.flatMap((box) =>
			countedSizes.flatMap((size, index) => {
				const each = conductorVolumes.rows.find((row) => row.gauge.label === size)?.cubicInches ?? Number.NaN;
				const printed = box.counts?.[index];
				return printed === undefined || printed === Math.floor(box.cubicInches / each)
					? []
					: [`${box.name}, ${size} AWG`];
			}),
		);
		expect(misfits).toEqual(["4 x 1-1/4 round or octagonal, 8 AWG"]);
	});
	test("inches and centimetres of a conductor's volume agree within 0.05 cm3", () => {
		for (const row of conductorVolumes.rows)
			expect(Math.abs(row.cubicInches * 16.387064 - row.cubicCentimetres), row.gauge.label).toBeLessThan(0.051);
		expectRising(
			conductorVolumes.rows.map((row) => row.cubicInches),
			"volume",
		);
	});
});

describe("devices and testers", () => {
	test("a breaker of a larger rating may take longer, a larger current never", () => {
		for (const standard of ["IEC 60898-1", "UL 489"]) {
			const points = tripPoints.rows.filter((row) => row.standard === standard && row.latest !== undefined);
			for (const multiple of new Set(points.map((row) => row.multiple))) {
				const same = points.filter((row) => row.multiple === multiple);
				expectRising(given(same.map((row) => row.latest)), `${standard} at ${multiple}`);
				expectRising(
					same.map((row) => row.upTo),
					`${standard} at ${multiple}`,
				);
				same.slice(1).forEach((row, index) => {
					expect(row.above).toBe(same[index]?.upTo);
				});
			}
			for (const rating of [10, 40, 80])
				expectRising(
					given(tripPointsOf(standard, rating).map((row) => row.latest)).map((latest) => -latest),
					standard,
				);
		}
	});
	test("readings add up round the three holes, and lamps are lit where there are volts", () => {
		for (const row of testerReadings.rows) {
			const volts = [row.neutralGround, row.hotNeutral, row.hotGround];
			const numbers = volts.filter((one) => one !== "floats");
			if (numbers.length === 3)
				expect(Math.max(...numbers) * 2, row.state).toBe(numbers.reduce((sum, one) => sum + one, 0));
			volts.forEach((one, index) => {
				const lit = one === "floats" ? "off" : one >= 100 ? "on" : one === 0 ? "off" : "unsure";
				expect(row.lamps[index], row.state).toBe(lit);
			});
		}
	});
	test("residual-current devices are quicker at a higher multiple", () => {
		for (const sort of ["general", "selective"]) {
			const rows = residualTimes.rows.filter((row) => row.sort === sort && row.longest !== undefined);
			expectRising(
				given(rows.map((row) => row.longest)).map((longest) => -longest),
				sort,
			);
		}
	});
	test("for people, a receptacle or light asks for class A in North America, a supply for at most 30 mA", () => {
		for (const row of groundFaultPlaces.rows)
			expect(row.trip, `${row.rules} ${row.place}`).toBe(
				row.region === "us" && !row.equipment.includes("supply") ? classA.trips : 30,
			);
	});
});

describe("direct current and loads", () => {
	test("fuse ratings rise and their families go up to at least the voltage they interrupt at", () => {
		for (const family of fuseFamilies.rows) {
			expectRising(family.ratings, family.name);
			expect(family.volts, family.name).toBeGreaterThanOrEqual(family.interruptingAt);
		}
	});
	test("a fuse blows sooner at a higher multiple", () => {
		for (const name of new Set(fusePoints.rows.map((row) => row.family))) {
			const points = fusePoints.rows.filter((row) => row.family === name);
			expectRising(
				points.map((row) => row.multiple),
				name,
			);
			expectRising(
				points.map((row) => -row.soonest),
				name,
			);
			for (const point of points) expect(point.latest ?? Number.MAX_VALUE).toBeGreaterThan(point.soonest);
		}
	});
	test("a typical load is planned within its range", () => {
		for (const row of typicalLoads.rows) {
			expect(row.least, row.load).toBeLessThan(row.most);
			expect(row.planned ?? row.least, row.load).toBeGreaterThanOrEqual(row.least);
			expect(row.planned ?? row.most, row.load).toBeLessThanOrEqual(row.most);
		}
	});
});
