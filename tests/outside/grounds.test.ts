// Against the outside: the smallest equipment ground by the device ahead, and one joint of neutral and ground for each source.
import { describe, expect, test } from "vitest";
import { findingsOf, nameOf, type Published } from "./published.ts";

/** By the rating of the device: the smallest copper ground, and the next thinner size. */
const rows: readonly Published<{ device: number; copper: string; thinner: string }>[] = (
	[
		[15, "14", "16"],
		[20, "12", "14"],
		[30, "10", "12"],
		[40, "10", "12"],
		[60, "10", "12"],
		[100, "8", "10"],
		[200, "6", "8"],
	] as const
).map(([device, copper, thinner]) => ({ device, copper, thinner, source: "NFPA 70 Table 250.122", known: "read" }));

const plan = (device: number, ground: string, hots = "2/0") => `generator g 200 A 120 V, bonds neutral to frame
panel P main 200 A from g by 2-2, 3 m
circuit pump from P breaker ${device} A by single ${hots} black
  8 ft to p1: pump
feed back from P.neutral by single ${hots} white
  8 ft to p1
bond shell from P.ground by single ${ground} AWG green
  8 ft to p1
`;

describe("equipment grounds", () => {
	test.each(rows.map((row) => [nameOf(row, `${row.copper} AWG behind ${row.device} A`), row] as const))(
		"%s",
		(_, row) => {
			expect(findingsOf(plan(row.device, row.copper), "ground-undersized")).toEqual([]);
		},
	);

	test.each(rows.map((row) => [nameOf(row, `${row.thinner} AWG behind ${row.device} A is too thin`), row] as const))(
		"%s",
		(_, row) => {
			const found = findingsOf(plan(row.device, row.thinner), "ground-undersized");
			expect(found.map((finding) => finding.title)).toEqual([
				`The ground shell-1.green is ${row.thinner} AWG, and ${row.device} A ahead asks for ${row.copper} AWG`,
			]);
		},
	);

	test(
		nameOf({ source: "NFPA 70 250.122(A)", known: "read" }, "never has to be larger than the circuit conductors"),
		() => {
			expect(findingsOf(plan(60, "12", "12 AWG"), "ground-undersized")).toEqual([]);
		},
	);

	test.each([
		[15, "14-2"],
		[20, "12-2"],
		[30, "10-2"],
	])(
		nameOf({ source: "NFPA 70 Table 250.122", known: "read" }, "house cable carries the right ground: %d A with %s"),
		(device, cable) => {
			const text = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit one from LC breaker ${device} A by ${cable}
  14 ft to p1: pump
`;
			expect(findingsOf(text, "ground-undersized")).toEqual([]);
		},
	);
});

describe("one joint of neutral and ground in each source mode", () => {
	const van = (inverter: string, panel = "") => `inlet shore 30 A 120 V
inverter-charger inv 2000 W 12 V / 120 V, pass-through 30 A${inverter}
feed supply from shore by 10-2
  12 ft to inv.in
panel LC main 30 A${panel} from inv.out by 10-2, 6 ft
circuit one from LC breaker 20 A by 12-2
  14 ft to b1: receptacle
`;
	const bonds = (text: string) =>
		["bond-missing", "bond-doubled"].flatMap((code) =>
			findingsOf(text, code).map(({ modes }) => `${code} ${modes.join(" ")}`.trim()),
		);

	test(
		nameOf(
			{ source: "maker manuals that agree", known: "read" },
			"shore bonds at its pedestal, the machine while it makes its own",
		),
		() => {
			expect(bonds(van(", bonds neutral when inverting"))).toEqual([]);
		},
	);

	test(nameOf({ source: "NFPA 70 551.54(C)", known: "read" }, "a bonded panel in a vehicle is a second joint"), () => {
		expect(bonds(van(", bonds neutral when inverting", ", bonded")).join()).toContain("bond-doubled");
	});

	test(
		nameOf({ source: "maker manuals", known: "read" }, "a machine without a relay leaves its own mode without a joint"),
		() => {
			expect(bonds(van(""))).toEqual(["bond-missing inv"]);
		},
	);
});
