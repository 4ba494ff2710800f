// What decides between the alternatives of a rule, worked out when a line first asks for it: few plans use every rule of the notation.
import { type ILookaheadStrategy, LLkLookaheadStrategy } from "chevrotain";

type BuildForAlternation = ILookaheadStrategy["buildLookaheadForAlternation"];
type BuildForOptional = ILookaheadStrategy["buildLookaheadForOptional"];

/** Looks ahead as the library does, and spares the start what is never asked for. */
export class LateLookahead extends LLkLookaheadStrategy {
	override buildLookaheadForAlternation(...options: Parameters<BuildForAlternation>): ReturnType<BuildForAlternation> {
		const build = (): ReturnType<BuildForAlternation> => super.buildLookaheadForAlternation(...options);
		let decide: ReturnType<BuildForAlternation> | undefined;
		return function (this: unknown, alternatives) {
			decide ??= build();
			return decide.call(this, alternatives);
		};
	}

	override buildLookaheadForOptional(...options: Parameters<BuildForOptional>): ReturnType<BuildForOptional> {
		const build = (): ReturnType<BuildForOptional> => super.buildLookaheadForOptional(...options);
		let decide: ReturnType<BuildForOptional> | undefined;
		return function (this: unknown) {
			decide ??= build();
			return decide.call(this);
		};
	}
}
