// Against the outside: the published load calculations, by the handbook's demand factors, within 1 % of what they print.
import { describe, expect, test } from "vitest";
import { countedLoad } from "../../src/handbook/demand-factors.ts";
import { type Known, nameOf } from "./published.ts";

const annex: { source: string; known: Known } = { source: "NFPA 70 Annex D, in a reprint", known: "read" };
const near = (found: number, printed: number): void => {
	expect(Math.abs(found / printed - 1)).toBeLessThanOrEqual(0.01);
};
/** 1500 square feet at 3 VA, two small-appliance circuits and the laundry. */
const general = 1500 * 3 + 2 * 1500 + 1500;

describe("published load calculations", () => {
	test(nameOf(annex, "one-family dwelling: 18 600 VA, 77.5 A at 240 V"), () => {
		near(countedLoad("lighting and small appliances", general), 5100);
		const load = countedLoad("lighting and small appliances", general) + 8000 + 5500;
		near(load, 18_600);
		near(load / 240, 77.5);
	});

	test(nameOf(annex, "its neutral: range and dryer at 70 %, 14 550 VA, 60.6 A"), () => {
		const neutral = countedLoad("lighting and small appliances", general) + 0.7 * (8000 + 5500);
		near(neutral, 14_550);
		near(neutral / 240, 60.6);
	});

	test(nameOf(annex, "its lighting: 4500 VA, 37.5 A, three circuits of 15 A or two of 20 A"), () => {
		const amperes = (1500 * 3) / 120;
		near(amperes, 37.5);
		expect([Math.ceil(amperes / 15), Math.ceil(amperes / 20)]).toEqual([3, 2]);
	});

	test(nameOf(annex, "optional method, heating larger: 21 480 VA, 89.5 A"), () => {
		const connected = general + 12_000 + 2500 + 1200 + 5000;
		near(connected, 29_700);
		const load = countedLoad("dwelling, optional", connected) + countedLoad("heating, optional", 9000);
		near(load, 21_480);
		near(load / 240, 89.5);
	});

	test(nameOf(annex, "optional method, cooling larger: 29 200 VA, 122 A"), () => {
		const connected = general + 2 * 4000 + 5100 + 4500 + 1200 + 5000;
		near(connected, 32_800);
		const load = countedLoad("dwelling, optional", connected) + 6 * 7 * 240;
		near(load, 29_200);
		near(load / 240, 122);
	});

	test(nameOf({ source: "NFPA 70 551.73, in an example", known: "read" }, "twenty sites of 3600 VA: 32 400 VA"), () => {
		near(countedLoad("sites, twenty", 3600), 1620);
		near(countedLoad("sites, twenty", 20 * 3600), 32_400);
	});

	test(
		nameOf(
			{ source: "old municipal code", known: "read" },
			"the same dwelling at 115/230 V: 39.1 A of lights, 13 100 VA, 57 A",
		),
		() => {
			near((1500 * 3) / 115, 39.1);
			const load = countedLoad("lighting and small appliances", general) + 8000;
			near(load, 13_100);
			near(load / 230, 57);
		},
	);

	test(
		nameOf(
			{ source: "NFPA 70 Annex D12", known: "recalled" },
			"a park trailer of 40 by 10 ft: 46 and 47 A, so a supply of 50 A",
		),
		() => {
			const leg = countedLoad("lighting and small appliances", 40 * 10 * 3 + 2 * 1500 + 1500) / 240;
			near(leg, 16.44);
			const shared = leg + 1000 / 240 + (7000 * 0.8) / 240;
			const [fan, dishwasher] = [(200 / 120) * 1.25, 400 / 120];
			near(shared + fan, 46);
			near(shared + dishwasher, 47.3);
			expect(Math.max(shared + fan, shared + dishwasher)).toBeLessThanOrEqual(50);
		},
	);
});
