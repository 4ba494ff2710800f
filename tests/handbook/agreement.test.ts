// Tables of conductors held against each other and against the formulas they follow from: a mistyped cell shows here.
import { describe, expect, test } from "vitest";
import { ambientFactors, bundlingFactors } from "../../src/handbook/ampacity-corrections.ts";
import { conductorVolumes } from "../../src/handbook/box-fill.ts";
import { tripBands } from "../../src/handbook/breaker-trip.ts";
import { resistivityAt20, temperatureRatio } from "../../src/handbook/copper.ts";
import { copperAmpacities, copperAmpacity } from "../../src/handbook/copper-ampacity.ts";
import { metricResistances, resistances20, resistances75 } from "../../src/handbook/copper-resistance.ts";
import { cordAmpacities } from "../../src/handbook/cord-ampacity.ts";
import { vehicleDevices } from "../../src/handbook/dc-protection.ts";
import { craftAmpacities, craftColumns, iecAmpacities } from "../../src/handbook/iec-ampacity.ts";
import { iecAmbientFactors, iecBunchingFactors } from "../../src/handbook/iec-corrections.ts";
import {
	engineSpaceFactors,
	marineAmpacities,
	marineBundlings,
	marineColumns,
} from "../../src/handbook/marine-ampacity.ts";
import { smallConductors } from "../../src/handbook/small-conductors.ts";
import { pullTests } from "../../src/handbook/splices.ts";
import { isStandardRating } from "../../src/handbook/standard-ratings.ts";
import { wireAreas } from "../../src/handbook/wire-areas.ts";
import { expectNotFalling, expectRising, given } from "./rising.ts";

/** Square millimetres in a circular mil: a circle 0.001 in (0.0254 mm) across. */
const circularMil = (Math.PI / 4) * 0.0254 ** 2;
const metresPerKilofoot = 304.8;

/** Ohm per 1000 ft of solid copper of an area in mm2 at a temperature, from the resistivity alone. */
function ohmsPerKilofoot(mm2: number, celsius: number): number {
	return (resistivityAt20.value * 1e6 * metresPerKilofoot * temperatureRatio(20, celsius)) / mm2;
}

describe("geometry and resistance", () => {
	test("printed areas follow the ASTM B258 formula within 0.05 % (university) and 0.3 % (NFPA 70 rounding)", () => {
		for (const row of wireAreas.rows) {
			expect((row.circularMils * circularMil) / row.gauge.mm2, row.gauge.label).toBeCloseTo(1, 3);
			if (row.table8 !== undefined)
				expect(Math.abs((row.table8 * circularMil) / row.gauge.mm2 - 1), row.gauge.label).toBeLessThan(0.003);
		}
	});
	test("printed diameters follow it within 0.3 %", () => {
		for (const row of wireAreas.rows) {
			const diameter = Math.sqrt(row.gauge.mm2 / (Math.PI / 4));
			expect(Math.abs(row.diameter / diameter - 1), row.gauge.label).toBeLessThan(0.003);
		}
	});
	test("SAE wire has 3 to 11 % less area than AWG of the same number", () => {
		for (const row of wireAreas.rows.filter(({ sae }) => sae !== undefined)) {
			const share = ((row.sae ?? 0) * circularMil) / row.gauge.mm2;
			expect(share, row.gauge.label).toBeGreaterThan(0.88);
			expect(share, row.gauge.label).toBeLessThan(0.98);
		}
	});
	test("resistance at 20 C follows the resistivity within 0.1 %", () => {
		for (const row of resistances20.rows)
			expect(Math.abs(row.ohmsPerKilofoot / ohmsPerKilofoot(row.gauge.mm2, 20) - 1), row.gauge.label).toBeLessThan(
				0.001,
			);
	});
	test("resistance at 75 C follows it within 0.5 % solid; stranded is 1.8 to 2.5 % more", () => {
		for (const row of resistances75.rows) {
			const ratio = row.ohmsPerKilofoot / ohmsPerKilofoot(row.gauge.mm2, 75);
			expect(ratio, row.gauge.label).toBeGreaterThan(row.stranding === "solid" ? 0.995 : 1.015);
			expect(ratio, row.gauge.label).toBeLessThan(row.stranding === "solid" ? 1.005 : 1.03);
		}
	});
	// The standard's maxima leave room for making: most for the thinnest flexible wires.
	test("the IEC maximum is above the nominal area's resistance, by at most 14 %, flexible 16 %", () => {
		for (const row of metricResistances.rows)
			for (const [kind, most] of [
				[1, 1.14],
				[2, 1.14],
				[5, 1.16],
			] as const) {
				const ratio = row.ohmsPerKilometre[kind] / ((resistivityAt20.value * 1e9) / row.gauge.mm2);
				expect(ratio, `${row.gauge.label} mm2, class ${kind}`).toBeGreaterThan(1);
				expect(ratio, `${row.gauge.label} mm2, class ${kind}`).toBeLessThan(most);
			}
	});
	test("resistance falls as size grows", () => {
		expectRising(
			resistances20.rows.map((row) => -row.ohmsPerKilofoot),
			"20 C",
		);
		for (const kind of [1, 2, 5] as const)
			expectRising(
				metricResistances.rows.map((row) => -row.ohmsPerKilometre[kind]),
				`class ${kind}`,
			);
		for (const stranding of ["solid", "stranded"]) {
			const rows = resistances75.rows.filter((row) => row.stranding === stranding);
			expectRising(
				rows.map((row) => -row.ohmsPerKilofoot),
				stranding,
			);
		}
	});
});

describe("rows stand thinnest first, as the lookups ask", () => {
	test.each([
		["copper", copperAmpacities.rows],
		["small conductors", smallConductors.rows],
		["boats", marineAmpacities.rows],
		["craft", craftAmpacities.rows],
		["cord, two carrying", cordAmpacities.rows.filter((row) => row.carrying === 2)],
		["cord, three carrying", cordAmpacities.rows.filter((row) => row.carrying === 3)],
		["IEC, two loaded", iecAmpacities.rows.filter((row) => row.loaded === 2)],
		["IEC, three loaded", iecAmpacities.rows.filter((row) => row.loaded === 3)],
		["conductor volumes", conductorVolumes.rows],
		["vehicle low voltage", vehicleDevices.rows],
		["pull test", pullTests.rows],
		["areas", wireAreas.rows],
	])("%s", (what, rows) =>
		expectRising(
			rows.map((row) => row.gauge.mm2),
			what,
		),
	);
});

describe("ampacity", () => {
	test("a larger conductor and a warmer insulation carry more", () => {
		expectRising(
			copperAmpacities.rows.map((row) => row.at60),
			"60 C",
		);
		expectRising(
			copperAmpacities.rows.map((row) => row.at75),
			"75 C",
		);
		expectRising(
			copperAmpacities.rows.map((row) => row.at90),
			"90 C",
		);
		for (const row of copperAmpacities.rows) expectRising([row.at60, row.at75, row.at90], row.gauge.label);
	});
	test("boats: never less with size or insulation", () => {
		for (const column of marineColumns)
			expectRising(
				marineAmpacities.rows.map((row) => row.amperes[column]),
				`${column} C`,
			);
		for (const row of marineAmpacities.rows)
			expectNotFalling(
				marineColumns.map((column) => row.amperes[column]),
				row.gauge.label,
			);
		for (const column of craftColumns)
			expectRising(
				craftAmpacities.rows.map((row) => row.amperes[column]),
				`craft ${column} C`,
			);
		for (const row of craftAmpacities.rows)
			expectRising(
				craftColumns.map((column) => row.amperes[column]),
				row.gauge.label,
			);
	});
	test("a single conductor in the open (boats) carries at least what one in a cable does", () => {
		for (const row of copperAmpacities.rows) {
			const boat = marineAmpacities.rows.find(({ gauge }) => gauge.label === row.gauge.label);
			expect(boat?.amperes[60], row.gauge.label).toBeGreaterThanOrEqual(row.at60);
			expect(boat?.amperes[75], row.gauge.label).toBeGreaterThanOrEqual(row.at75);
		}
	});
	test("cords: larger ones carry more", () => {
		for (const carrying of [2, 3])
			expectRising(
				cordAmpacities.rows.filter((row) => row.carrying === carrying).map((row) => row.ampere),
				`${carrying} carrying`,
			);
	});
	test("cords: three carrying current carry less than two", () => {
		for (const row of cordAmpacities.rows.filter(({ carrying }) => carrying === 3)) {
			const two = cordAmpacities.rows.find(({ carrying, gauge }) => carrying === 2 && gauge.label === row.gauge.label);
			expect(two?.ampere, row.gauge.label).toBeGreaterThan(row.ampere);
		}
	});
	test("IEC: A1 < B2 < B1 < C, and three loaded carry less than two", () => {
		for (const row of iecAmpacities.rows.filter(({ loaded }) => loaded === 2)) {
			expectRising([row.a1 ?? 0, row.b2, row.b1 ?? 0, row.c], row.gauge.label);
			const three = iecAmpacities.rows.find(({ loaded, gauge }) => loaded === 3 && gauge.label === row.gauge.label);
			expect(three?.b2, row.gauge.label).toBeLessThan(row.b2);
			expect(three?.c, row.gauge.label).toBeLessThan(row.c);
		}
	});
	test("no small-conductor limit is above the 60 C ampacity, and each is a standard rating where power circuits begin", () => {
		for (const row of smallConductors.rows) {
			const ampacity = copperAmpacity(row.gauge, 60);
			if (ampacity === undefined) continue;
			expect(row.largest, row.gauge.label).toBeLessThanOrEqual(ampacity.ampere);
			expect(isStandardRating(row.largest, "us"), row.gauge.label).toBe(true);
		}
	});
	test("small-conductor and low-voltage limits grow with size; low voltage never allows more", () => {
		expectRising(
			smallConductors.rows.map((row) => row.largest),
			"small conductors",
		);
		expectRising(
			vehicleDevices.rows.map((row) => row.largest),
			"low voltage",
		);
		for (const row of vehicleDevices.rows) {
			const power = smallConductors.rows.find(({ gauge }) => gauge.label === row.gauge.label);
			expect(row.largest, row.gauge.label).toBeLessThanOrEqual(power?.largest ?? 0);
		}
	});
});

describe("factors", () => {
	test("every ambient factor is sqrt((Tc - Ta) / (Tc - 30)) to two decimals", () => {
		for (const row of ambientFactors.rows)
			for (const [column, factor] of [
				[60, row.for60],
				[75, row.for75],
				[90, row.for90],
			] as const) {
				const place = `${column} C insulation at ${row.upTo} C`;
				if (factor === undefined) expect(row.upTo, place).toBeGreaterThanOrEqual(column - 4);
				else expect(Math.abs(factor - Math.sqrt((column - row.upTo) / (column - 30))), place).toBeLessThan(0.0051);
			}
	});
	test("IEC ambient factors follow the same law for 70 C insulation within 0.01", () => {
		for (const row of iecAmbientFactors.rows)
			expect(Math.abs(row.factor - Math.sqrt((70 - row.celsius) / 40)), `${row.celsius} C`).toBeLessThan(0.0101);
	});
	test("bands meet without gap or overlap", () => {
		for (const rows of [bundlingFactors.rows, marineBundlings.rows])
			rows.slice(1).forEach((row, index) => {
				expect(row.from).toBe((rows[index]?.upTo ?? 0) + 1);
			});
		ambientFactors.rows.slice(1).forEach((row, index) => {
			expect(row.from).toBe((ambientFactors.rows[index]?.upTo ?? 0) + 1);
		});
		expect(tripBands.rows.map((row) => row.above).slice(1)).toEqual(tripBands.rows.map((row) => row.upTo).slice(0, -1));
	});
	test("more conductors, more circuits, more heat: never a larger factor", () => {
		expectRising(
			bundlingFactors.rows.map((row) => -row.factor),
			"bundling",
		);
		expectRising(
			marineBundlings.rows.map((row) => -row.factor),
			"boat bundling",
		);
		expectRising(
			iecBunchingFactors.rows.map((row) => -row.factor),
			"IEC bunching",
		);
		expectRising(
			iecAmbientFactors.rows.map((row) => -row.factor),
			"IEC ambient",
		);
		expectRising(
			engineSpaceFactors.rows.map((row) => row.factor),
			"engine space",
		);
		for (const column of ["for60", "for75", "for90"] as const)
			expectRising(
				given(ambientFactors.rows.map((row) => row[column])).map((factor) => -factor),
				column,
			);
	});
});
