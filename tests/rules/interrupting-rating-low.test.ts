// What is not known of a short circuit and of the fuse that must open it is told in a note, never passed over.
import { describe, test } from "vitest";
import { checkMarked } from "../check-plan.ts";

describe("the first fuse of a battery", () => {
	test("neither figure is said", () => {
		checkMarked(`battery house lithium 12.8 V 100 Ah
feed plus from house.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 150 A
//               ^^ interrupting-rating-low "the fault current of house and the interrupting rating of F1 are not said"
  1 ft to plus: bus 250 A
`);
	});

	test("one figure is not said", () => {
		checkMarked(`battery house lithium 12.8 V 100 Ah, fault 4 kA
feed plus from house.+ by single 2 AWG red
  within 7 in to F1: fuse class-T 150 A
//               ^^ interrupting-rating-low "the interrupting rating of F1 is not said"
  1 ft to plus: bus 250 A
`);
	});
});
