// Every single mistake that can be made in a circuit, judged one after another.
import type { Circuit } from "../circuit/circuit.ts";
import { beforeMistakes, judgeMistake } from "./judge.ts";
import type { CheckCircuit, JudgedMistake } from "./mistake.ts";
import { operators } from "./operators/index.ts";

/** Makes and judges every mistake that is chosen, operator by operator. Each is judged only when it is asked for. */
export function* surveyMistakes(
	circuit: Circuit,
	check: CheckCircuit,
	isChosen: () => boolean = () => true,
): Generator<JudgedMistake> {
	const before = beforeMistakes(circuit, check);
	for (const operator of operators)
		for (const mistake of operator.find(circuit))
			if (isChosen()) yield { operator: operator.name, at: mistake.at, ...judgeMistake(before, mistake, check) };
}
