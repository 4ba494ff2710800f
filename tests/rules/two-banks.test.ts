// Two banks with one minus: what each pushes into a short circuit, what a charger lands on them, what a winch takes.
import { expect, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const lamp = `feed glow from house.+, minus by pair 14 AWG
  within 7 in to F9: fuse 15 A interrupting 5 kA
  2 ft to l9: light 6 W
`;
const engine = `battery engine flooded 12 V 90 Ah, fault 3 kA
battery house agm 12 V 200 Ah, fault 4 kA
feed engine-minus from engine.- by single 2 AWG black
  2 ft to minus: bus 250 A
feed house-minus from house.- by single 2 AWG black
  2 ft to minus
`;

test("banks of one voltage that share their minus alone do not add up", () => {
	checkRight(`${engine}feed call from engine.+, minus by pair 14 AWG
  within 7 in to F1: fuse 15 A interrupting 5 kA
  2 ft to l1: light 6 W
${lamp}`);
});

test("banks whose plus is joined add up", () => {
	checkMarked(`${engine}feed call from engine.+, minus by pair 14 AWG
  within 7 in to F1: fuse 15 A interrupting 5 kA
  //             ^^ interrupting-rating-low "engine and house can push 7000 A"
  2 ft to l1: light 6 W
feed tie from engine.+ by single 2 AWG red
  within 7 in to F2: fuse class-T 150 A interrupting 20 kA
  2 ft to D1: disconnect 200 A
  2 ft to F3: fuse class-T 150 A interrupting 20 kA
  within 7 in to house.+
`);
});

test("a pair goes to the plus of a charger with both its cores", () => {
	const { analysis } = checkRight(`inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
circuit charge from LC breaker 15 A by 14-2
  5 ft to ch: charger 20 A
battery house agm 12 V 200 Ah, fault 4 kA
feed filled from house.+, house.- by pair 10 AWG
  within 7 in to F1: fuse 30 A interrupting 10 kA
  3 ft to ch.+
`);
	const { circuit } = analysis;
	const landed = circuit.conductors.flatMap(({ name, ends }) =>
		ends.flatMap(({ point }) =>
			circuit.points[point ?? -1]?.name.startsWith("ch.") === true && name.startsWith("filled")
				? [`${name} on ${circuit.points[point ?? -1]?.name ?? ""}`]
				: [],
		),
	);
	expect(landed).toEqual(["filled-2.red on ch.+", "filled-2.black on ch.-"]);
});

test.each(["alternator 80 A", "starter 90 A"])("a pair goes to the posts of an %s with both its cores", (words) => {
	const { analysis } = checkRight(`battery engine flooded 12 V 90 Ah, fault 3 kA
${words.split(" ")[0]} m1 ${words.split(" ").slice(1).join(" ")}
feed lead from engine.+, engine.- by pair 2 AWG
  within 7 in to F1: fuse ANL 100 A interrupting 5 kA
  3 ft to m1
`);
	const { circuit } = analysis;
	const cores = circuit.conductors.filter(({ cable }) => cable === "lead-2");
	expect(cores.map(({ ends }) => circuit.points[ends[1].point ?? -1]?.name)).toEqual(["m1.+", "m1.-"]);
});

test("a winch has studs for the cable that it needs", () => {
	checkRight(`battery house agm 12 V 200 Ah, fault 4 kA
feed pull from house.+, house.- by pair 2 AWG
  within 7 in to F1: fuse ANL 100 A interrupting 5 kA
  20 ft to w1: load 900 W
`);
});
