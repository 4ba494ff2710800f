// Ends said to be solid on conductors said to be stranded.
import { describe, test } from "vitest";
import { checkMarked, checkRight } from "../check-plan.ts";

const supply = `inlet shore 30 A 120 V
panel LC main 30 A from shore by 10-2, 12 ft
`;

describe("solid or stranded", () => {
	test("solid at a stranded cable's end", () => {
		checkMarked(`${supply}circuit a from LC breaker 20 A by 12-2 stranded
  9 ft to b1: receptacle
at b1
  a-1.black solid on b1.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^ end-contradicted "a-1.black is said to be solid in b1, and a-1 to be stranded"
`);
	});
	test("in the panel", () => {
		checkMarked(`${supply}circuit a from LC breaker 20 A by 12-2 stranded
  9 ft to b1: receptacle
at LC
  a-1.white solid on LC.neutral.2
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ end-contradicted
`);
	});
	test("both ends are two", () => {
		checkMarked(`${supply}circuit a from LC breaker 20 A by 12-2 stranded
  9 ft to b1: receptacle
at LC
  a-1.black solid on LC.1.load
//^^^^^^^^^^^^^^^^^^^^^^^^^^^^ end-contradicted
at b1
  a-1.black solid on b1.hot
//^^^^^^^^^^^^^^^^^^^^^^^^^ end-contradicted
`);
	});
	test("what is to be done, done: a fork, or a solid cable", () => {
		checkRight(`${supply}circuit a from LC breaker 20 A by 12-2 stranded
  9 ft to b1: receptacle
at b1
  a-1.black fork on b1.hot
`);
		checkRight(`${supply}circuit a from LC breaker 20 A by 12-2
  9 ft to b1: receptacle
at b1
  a-1.black solid on b1.hot
`);
	});
	test("bare strands are no contradiction", () => {
		checkMarked(`${supply}circuit a from LC breaker 20 A by 12-2 stranded
  9 ft to b1: receptacle
at b1
  a-1.black bare on b1.hot
//^^^^^^^^^^^^^^^^^^^^^^^^ strands-unterminated
`);
	});
});
