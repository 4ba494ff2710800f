// Spot checks against published values. Beside each: its source, and whether it was read or recalled.
import { describe, expect, test } from "vitest";
import { awg, squareMillimetres } from "../../src/base/gauge.ts";
import { ambientFactor, bundlingFactor } from "../../src/handbook/ampacity-corrections.ts";
import { boxAllowance, conductorVolume } from "../../src/handbook/box-fill.ts";
import { continuousLoad } from "../../src/handbook/branch-circuits.ts";
import { tripBand, tripPointsFor } from "../../src/handbook/breaker-trip.ts";
import { copperAmpacity } from "../../src/handbook/copper-ampacity.ts";
import { metricResistance, resistance75 } from "../../src/handbook/copper-resistance.ts";
import { cordAmpacity } from "../../src/handbook/cord-ampacity.ts";
import { fuseFamily } from "../../src/handbook/dc-fuses.ts";
import { deviceDistance, interruptingNeed, vehicleDevice } from "../../src/handbook/dc-protection.ts";
import { equipmentGroundFor } from "../../src/handbook/equipment-ground.ts";
import { classALongest, residualTime } from "../../src/handbook/ground-fault-devices.ts";
import { groundFaultPlacesFor } from "../../src/handbook/ground-fault-places.ts";
import { iecAmpacity } from "../../src/handbook/iec-ampacity.ts";
import { iecAmbientFactor, iecBunchingFactor } from "../../src/handbook/iec-corrections.ts";
import {
	engineSpaceFactor,
	marineAmpacity,
	marineBundlingFactor,
	marineDeviceAllowance,
} from "../../src/handbook/marine-ampacity.ts";
import { neutralBondIn } from "../../src/handbook/neutral-bond.ts";
import { cordLoadLimit, receptacleRatingsFor } from "../../src/handbook/receptacles.ts";
import { smallConductorLimit } from "../../src/handbook/small-conductors.ts";
import { smallestBox, standardBoxes } from "../../src/handbook/standard-boxes.ts";
import { isStandardRating, nextStandardRating, standardRating } from "../../src/handbook/standard-ratings.ts";
import { supplyInletsOf } from "../../src/handbook/supply-inlets.ts";
import { dropLimit } from "../../src/handbook/voltage-drop-limits.ts";
import { wireAreaOf } from "../../src/handbook/wire-areas.ts";

describe("protective devices", () => {
	test("NFPA 70 240.6(A), read: 15, 60, 110 and 600 A are standard, 55 and 55.5 A are not", () => {
		for (const ampere of [15, 60, 110, 600]) expect(isStandardRating(ampere, "us")).toBe(true);
		for (const ampere of [55, 55.5, 0, -15, Number.NaN]) expect(isStandardRating(ampere, "us")).toBe(false);
		expect(standardRating(600, "us")?.provenance.known).toBe("read");
		expect(standardRating(700, "us")?.provenance.known).toBe("recalled");
	});
	test("the next standard size above 32 A is 35 A, and above 35 A it is 35 A itself", () => {
		expect(nextStandardRating(32, "us")?.ampere).toBe(35);
		expect(nextStandardRating(35, "us")?.ampere).toBe(35);
		expect(nextStandardRating(6001, "us")).toBeUndefined();
	});
	test("10 A is standard for fuses (recalled), not for breakers", () => {
		expect(isStandardRating(10, "us", "fuse")).toBe(true);
		expect(isStandardRating(10, "us")).toBe(false);
		expect(nextStandardRating(4, "us")?.ampere).toBe(15);
	});
	test("IEC 60898-1, read: 6 and 16 A are preferred ratings, 15 A is not", () => {
		expect(isStandardRating(6, "iec")).toBe(true);
		expect(isStandardRating(16, "iec")).toBe(true);
		expect(isStandardRating(15, "iec")).toBe(false);
		expect(standardRating(13, "iec")?.provenance.known).toBe("recalled");
	});
	test("NFPA 70 240.4(D), read: 14 AWG 15 A, 12 AWG 20 A, 10 AWG 30 A; none from 8 AWG up", () => {
		expect(smallConductorLimit(awg(14))?.largest).toBe(15);
		expect(smallConductorLimit(awg(12))?.largest).toBe(20);
		expect(smallConductorLimit(awg(10))?.largest).toBe(30);
		expect(smallConductorLimit(awg(8))).toBeUndefined();
		expect(smallConductorLimit(awg(18))?.provenance.known).toBe("recalled");
		expect(smallConductorLimit(awg(22))).toBeUndefined();
	});
	test("a metric size takes the limit of the thinner neighbour: 2.5 mm2 that of 14 AWG", () => {
		expect(smallConductorLimit(squareMillimetres(2.5))?.gauge.label).toBe("14");
		expect(smallConductorLimit(squareMillimetres(4))?.largest).toBe(20);
		expect(smallConductorLimit(squareMillimetres(6))?.largest).toBe(30);
		expect(smallConductorLimit(squareMillimetres(10))).toBeUndefined();
	});
	test("IEC 60898-1, read: C trips at 5 to 10 times; UL 489, read: 30 A at 200 % within 120 s", () => {
		expect(tripBand("C")).toMatchObject({ above: 5, upTo: 10 });
		expect(tripPointsFor("UL 489", 30).find(({ multiple }) => multiple === 2)).toMatchObject({ latest: 120 });
		expect(tripPointsFor("UL 489", 40).find(({ multiple }) => multiple === 2)?.provenance.known).toBe("recalled");
	});
});

describe("ampacity", () => {
	test("NFPA 70 Table 310.16, read: first, last and inner cells", () => {
		expect(copperAmpacity(awg(14), 60)?.ampere).toBe(15);
		expect(copperAmpacity(awg(12), 75)?.ampere).toBe(25);
		expect(copperAmpacity(awg(6), 60)?.ampere).toBe(55);
		expect(copperAmpacity(awg(3), 90)?.ampere).toBe(115);
		expect(copperAmpacity(awg(1), 90)?.ampere).toBe(145);
		expect(copperAmpacity(awg(-3), 90)?.ampere).toBe(260);
	});
	test("70 C insulation uses the 60 C column, 105 C the 90 C one; below 60 C or 14 AWG there is no figure", () => {
		expect(copperAmpacity(awg(12), 70)).toMatchObject({ column: 60, ampere: 20 });
		expect(copperAmpacity(awg(12), 105)).toMatchObject({ column: 90, ampere: 30 });
		expect(copperAmpacity(awg(12), 50)).toBeUndefined();
		expect(copperAmpacity(awg(16), 60)).toBeUndefined();
	});
	test("code question of a trade magazine, read: four 10 AWG 90 C in one cable, 40 x 0.80 = 32 A", () => {
		expect((copperAmpacity(awg(10), 90)?.ampere ?? 0) * (bundlingFactor(4)?.factor ?? 0)).toBe(32);
	});
	test("reprint page of Table 310.16, read: 12 AWG 75 C at 40 C, 25 x 0.88 = 22 A", () => {
		expect((copperAmpacity(awg(12), 75)?.ampere ?? 0) * (ambientFactor(40, 75)?.factor ?? 0)).toBe(22);
	});
	test("same page, read: six 10 AWG 75 C in one raceway, 35 x 0.80 = 28 A", () => {
		expect((copperAmpacity(awg(10), 75)?.ampere ?? 0) * (bundlingFactor(6)?.factor ?? 0)).toBe(28);
	});
	test("ambient: 60 C insulation bears 55 C and not 56 C; 50.5 C falls to the warmer band", () => {
		expect(ambientFactor(55, 60)?.factor).toBe(0.41);
		expect(ambientFactor(56, 60)).toBeUndefined();
		expect(ambientFactor(50.5, 90)?.factor).toBe(0.76);
		expect(ambientFactor(-20, 60)?.factor).toBe(1.29);
		expect(ambientFactor(86, 90)).toBeUndefined();
	});
	test("bundling: three 1, four 0.8, forty-one 0.35; none for none", () => {
		expect([3, 4, 41, 500].map((count) => bundlingFactor(count)?.factor)).toEqual([1, 0.8, 0.35, 0.35]);
		expect(bundlingFactor(0)).toBeUndefined();
	});
	test("NFPA 70 Table 400.5(A)(1), read: 14 AWG cord 18 A with two carrying; recalled: 15 A with three", () => {
		expect(cordAmpacity(awg(14), 2)).toMatchObject({ ampere: 18, provenance: { known: "read" } });
		expect(cordAmpacity(awg(14), 3)).toMatchObject({ ampere: 15, provenance: { known: "recalled" } });
	});
	test("33 CFR 183.425 Table 5, read: 8 AWG 80 A at 105 C, 2 AWG 210 A, 4/0 445 A, 18 AWG 10 A at 60 C", () => {
		expect(marineAmpacity(awg(8), 105)?.ampere).toBe(80);
		expect(marineAmpacity(awg(2), 105)?.ampere).toBe(210);
		expect(marineAmpacity(awg(-3), 105)?.ampere).toBe(445);
		expect(marineAmpacity(awg(18), 60)?.ampere).toBe(10);
	});
	test("marine distributor page, read: 10 AWG 105 C in an engine space, 60 x 0.85 = 51 A", () => {
		expect((marineAmpacity(awg(10), 105)?.ampere ?? 0) * engineSpaceFactor(105).factor).toBe(51);
	});
	test("boat bundles, read: three 0.7, twenty-five 0.4; 33 CFR 183.455, read: device up to 150 % under 50 V", () => {
		expect([2, 3, 24, 25].map((count) => marineBundlingFactor(count).factor)).toEqual([1, 0.7, 0.5, 0.4]);
		expect(marineDeviceAllowance).toMatchObject({ share: 1.5, belowVolts: 50, provenance: { known: "read" } });
	});
	test("IEC 60364-5-52, read: 2.5 mm2 three loaded C 24 A; recalled: two loaded C 27 A; none for A1 three loaded", () => {
		expect(iecAmpacity(squareMillimetres(2.5), "c", 3)).toMatchObject({ ampere: 24, provenance: { known: "read" } });
		expect(iecAmpacity(squareMillimetres(2.5), "c")).toMatchObject({ ampere: 27, provenance: { known: "recalled" } });
		expect(iecAmpacity(squareMillimetres(2.5), "a1", 3)).toBeUndefined();
		expect(iecAmpacity(awg(14), "c")?.gauge.label).toBe("1.5");
	});
	test("IEC factors, read: 40 C 0.87, five circuits 0.6; in between the careful row", () => {
		expect(iecAmbientFactor(40)?.factor).toBe(0.87);
		expect(iecAmbientFactor(41)?.factor).toBe(0.79);
		expect(iecAmbientFactor(61)).toBeUndefined();
		expect(iecBunchingFactor(5)?.factor).toBe(0.6);
		expect(iecBunchingFactor(11)?.factor).toBe(0.45);
		expect(iecBunchingFactor(21)).toBeUndefined();
	});
});

describe("circuits", () => {
	test("NFPA 70 Table 210.21(B)(3), read: 20 A circuit takes 15 and 20 A receptacles; 15 A circuit only 15 A", () => {
		expect(receptacleRatingsFor(20)?.receptacles).toEqual([15, 20]);
		expect(receptacleRatingsFor(15)?.receptacles).toEqual([15]);
		expect(receptacleRatingsFor(40)?.receptacles).toEqual([40, 50]);
		expect(receptacleRatingsFor(30)?.provenance.known).toBe("recalled");
		expect(receptacleRatingsFor(25)).toBeUndefined();
	});
	test("NFPA 70 Table 210.21(B)(2): 12 A on a 15 A receptacle of a 20 A circuit (read), 16 A on a 20 A one (recalled)", () => {
		expect(cordLoadLimit(20, 15)).toMatchObject({ largest: 12, provenance: { known: "read" } });
		expect(cordLoadLimit(20, 20)).toMatchObject({ largest: 16, provenance: { known: "recalled" } });
		expect(cordLoadLimit(15, 20)).toBeUndefined();
	});
	test("electrician's journal, read: 16 A continuous is exactly a 20 A circuit; vehicle forum, read: 24 A a 30 A one", () => {
		expect(16 * continuousLoad.factor).toBe(20);
		expect(20 * continuousLoad.share).toBe(16);
		expect(24 * continuousLoad.factor).toBe(30);
		expect(continuousLoad.factor * continuousLoad.share).toBe(1);
	});
	test("NFPA 70 Table 250.122, read: 20 A 12 AWG, 50 A 10 AWG (published example), 1200 A 3/0", () => {
		expect(equipmentGroundFor(20)?.copper.label).toBe("12");
		expect(equipmentGroundFor(50)?.copper.label).toBe("10");
		expect(equipmentGroundFor(1200)).toMatchObject({ copper: { label: "3/0" }, aluminium: undefined });
		expect(equipmentGroundFor(200)?.aluminium?.label).toBe("4");
		expect(equipmentGroundFor(1201)).toBeUndefined();
	});
	test("voltage drop, read: NFPA 70 3 and 5 %, ABYC 3 and 10 %, IEC lighting 3 %", () => {
		expect(dropLimit("NFPA 70", "branch")?.percent).toBe(3);
		expect(dropLimit("NFPA 70", "feeder and branch")?.percent).toBe(5);
		expect(dropLimit("ABYC E-11", "critical")?.percent).toBe(3);
		expect(dropLimit("ABYC E-11", "other")?.percent).toBe(10);
		expect(dropLimit("IEC 60364-5-52 public supply", "lighting")?.percent).toBe(3);
		expect(dropLimit("NFPA 70", "critical")).toBeUndefined();
	});
	test("NFPA 70 551.44: a 30 A vehicle inlet is 120 V with two poles (read); 50 A has three", () => {
		expect(supplyInletsOf("us", 30)[0]).toMatchObject({ pattern: "NEMA TT-30", poles: 2, volts: [120] });
		expect(supplyInletsOf("us", 50)[0]).toMatchObject({ poles: 3, volts: [120, 240] });
		expect(supplyInletsOf("iec", 16)[0]).toMatchObject({ volts: [230], provenance: { known: "read" } });
	});
});

describe("ground faults and bonding", () => {
	test("UL 943, read: 20 mA within 1 s; the 25 ms point is 264 mA; 6 mA may take 5.6 s; 5 mA need not trip", () => {
		expect(classALongest(20)).toBe(1);
		expect(classALongest(264)).toBeCloseTo(0.025, 3);
		expect(classALongest(6)).toBeCloseTo(5.594, 3);
		expect(classALongest(5)).toBeUndefined();
		expect(classALongest(5000)).toBe(classALongest(264));
	});
	test("IEC 61008-1 Table 1, read: 300 ms at 1, 40 ms at 5 times; selective no sooner than 130 ms", () => {
		expect(residualTime("general", 1)?.longest).toBe(300);
		expect(residualTime("general", 5)?.longest).toBe(40);
		expect(residualTime("general", 0.5)?.longest).toBeUndefined();
		expect(residualTime("selective", 1)).toMatchObject({ shortest: 130, longest: 500 });
	});
	test("NFPA 70 551.53(B), read: a light over a bath of a camper; 551.41(C), recalled: outdoors and within 6 ft of a basin", () => {
		expect(groundFaultPlacesFor("us", "camper", "light")).toMatchObject([
			{ place: "bath", provenance: { known: "read" } },
		]);
		const receptacles = groundFaultPlacesFor("us", "camper", "receptacle");
		expect(receptacles.find(({ place }) => place === "outdoor")?.provenance.known).toBe("recalled");
		expect(receptacles.find(({ place }) => place === "basin")?.within).toBeCloseTo(6 * 0.3048, 10);
	});
	test("IEC 60364-7-721, read: a caravan is protected as a whole at 30 mA", () => {
		expect(groundFaultPlacesFor("iec", "camper", "supply")).toMatchObject([{ place: "everywhere", trip: 30 }]);
	});
	test("every region and rule set asks for protection somewhere", () => {
		for (const region of ["us", "iec"] as const)
			for (const rules of ["camper", "boat", "building"] as const) {
				const all = (["receptacle", "light", "supply", "shore supply"] as const).flatMap((equipment) =>
					groundFaultPlacesFor(region, rules, equipment),
				);
				expect(all.length, `${region} ${rules}`).toBeGreaterThan(0);
			}
	});
	test("neutral bond, read: at the supply on shore, in the inverter while inverting with its relay closed", () => {
		expect(neutralBondIn("shore")).toMatchObject({ bondAt: "supply", relay: "open" });
		expect(neutralBondIn("pass-through")).toMatchObject({ bondAt: "supply", relay: "open" });
		expect(neutralBondIn("inverting")).toMatchObject({ bondAt: "inverter", relay: "closed" });
	});
});

describe("boxes and copper", () => {
	test("NFPA 70 Table 314.16(B), read: 14 AWG 2.00 in3, 12 AWG 2.25; 2.5 mm2 takes the thicker neighbour's", () => {
		expect(conductorVolume(awg(14))?.cubicInches).toBe(2);
		expect(conductorVolume(awg(12))?.cubicInches).toBe(2.25);
		expect(conductorVolume(squareMillimetres(2.5))?.cubicInches).toBe(2.25);
		expect(conductorVolume(awg(4))).toBeUndefined();
	});
	test("trade magazine, read: a 4 x 1-1/2 square box takes nine 12 AWG; 4 x 1-1/2 round seven 14 AWG", () => {
		const counts = (name: string) => standardBoxes.rows.find((box) => box.name.startsWith(name))?.counts;
		expect(counts("4 x 1-1/2 square")?.[3]).toBe(9);
		expect(counts("4 x 1-1/2 round")?.[2]).toBe(7);
	});
	test("trade-school example, read: 18.75 in3 needs the 4 x 2-1/8 octagonal box of 21.5 in3", () => {
		expect(smallestBox(18.75, "round")?.cubicInches).toBe(21.5);
		expect(smallestBox(21.5, "round")?.cubicInches).toBe(21.5);
		expect(smallestBox(99, "round")).toBeUndefined();
	});
	test("published example, read: two 12-2 cables, clamps and one duplex are eight allowances, 18.0 in3", () => {
		const count = (content: Parameters<typeof boxAllowance>[0]) => boxAllowance(content).allowances;
		const allowances =
			4 * count("conductor that ends or is spliced") +
			count("equipment grounds, up to four") +
			count("internal clamps") +
			count("device yoke");
		expect(allowances).toBe(8);
		expect(allowances * (conductorVolume(awg(12))?.cubicInches ?? 0)).toBe(18);
	});
	test("NFPA 70 Chapter 9 Table 8, read: 12 AWG 1.93 solid, 1.98 stranded, 6530 circular mils; 8 AWG stranded recalled", () => {
		expect(resistance75(awg(12), "solid")?.ohmsPerKilofoot).toBe(1.93);
		expect(resistance75(awg(12), "stranded")?.ohmsPerKilofoot).toBe(1.98);
		expect(wireAreaOf("12")?.table8).toBe(6530);
		expect(resistance75(awg(8), "stranded")?.provenance.known).toBe("recalled");
		expect(resistance75(awg(6), "solid")).toBeUndefined();
	});
	test("IEC 60228, read: 2.5 mm2 7.41 solid and stranded, 7.98 flexible", () => {
		expect(metricResistance(squareMillimetres(2.5))?.ohmsPerKilometre).toEqual({ 1: 7.41, 2: 7.41, 5: 7.98 });
		expect(metricResistance(squareMillimetres(3))).toBeUndefined();
	});
});

describe("direct current", () => {
	test("33 CFR 183.455, read: 7 in, 40 in enclosed; ABYC E-11, read: 72 in sheathed at a battery terminal", () => {
		expect(deviceDistance("anywhere").metres).toBe(0.1778);
		expect(deviceDistance("sheathed or enclosed").inches).toBe(40);
		expect(deviceDistance("sheathed, at a battery terminal").metres).toBe(1.8288);
	});
	test("ABYC E-11 Table V.A, read: up to 650 CCA 1500 A main, 750 A branch; above 1100 5000 A", () => {
		expect(interruptingNeed(650)).toMatchObject({ main: 1500, branch: 750 });
		expect(interruptingNeed(651)?.main).toBe(3000);
		expect(interruptingNeed(1101)?.main).toBe(5000);
		expect(interruptingNeed(-1)).toBeUndefined();
	});
	test("boating pages, read: class T interrupts 20 kA at 125 V; a blade's 1000 A is recalled", () => {
		expect(fuseFamily("class T")).toMatchObject({ interrupting: 20000, volts: 125, provenance: { known: "read" } });
		expect(fuseFamily("blade").provenance.known).toBe("recalled");
	});
	test("NFPA 70 Table 551.10(E)(1), recalled: 16 AWG 8 A; nothing below 18 or from 8 AWG up", () => {
		expect(vehicleDevice(awg(16))).toMatchObject({ largest: 8, provenance: { known: "recalled" } });
		expect(vehicleDevice(awg(20))).toBeUndefined();
		expect(vehicleDevice(awg(8))).toBeUndefined();
	});
});
