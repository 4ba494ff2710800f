// Switches that govern one load from several places: three-way at both ends of a pair of travellers, four-way between.
import type { Blueprint, LinkSpec, Said } from "./kind.ts";
import { deviceScrew } from "./terminals.ts";

/** The trade's words for them: by ways in North America, by function in IEC countries. */
export const travellerWords = ["three-way", "four-way", "two-way", "intermediate"] as const;

/**
 * A switch with travellers. A cable with one hot meets its common; a cable with two hots carries the travellers.
 * So the first of a pair is fed on its common and goes on by its travellers, and the last the other way round.
 */
export function travellerSwitch(said: Said, word: string): Blueprint {
	const rating = said.quantity("rating")?.value ?? (said.region === "us" ? 15 : 16);
	const between = word === "four-way" || word === "intermediate";
	const shared = {
		face: {
			text: `${rating} A ${word} switch`,
			wiring: switchFace(said),
			oneLine: between ? "switch-4way" : "switch-3way",
			traits: ["switch"] as const,
			rating,
		},
		onward: "load",
	};
	return between ? { ...betweenTravellers(said), ...shared } : { ...atTheEnd(said), ...shared };
}

/** As wall switches are sold: with a lever, in IEC countries with a rocker (common practice). */
export function switchFace({ region }: Said): string {
	return region === "us" ? "switch-face" : "rocker-face";
}

function atTheEnd(said: Said): Omit<Blueprint, "face" | "onward"> {
	const traveller = (number: "1" | "2", role: "hot" | "hot2") =>
		deviceScrew(said.region, `traveller.${number}`, role, `traveller-${number}`, { also: [`t${number}`] });
	const travellers = { hot: "traveller-1", hot2: "traveller-2", neutral: "^neutral", ground: "ground" };
	// Four conductors bring a hot that stays live on black besides the travellers on red and blue.
	const passesHot = said.arriving?.thirdHot === true;
	const amongThree = (hot: string) => ({
		hot,
		hot2: "traveller-1",
		hot3: "traveller-2",
		neutral: "^neutral",
		ground: "ground",
	});
	const common = { hot: "common", neutral: "^neutral", ground: "ground" };
	return {
		terminals: [
			deviceScrew(
				said.region,
				"common",
				"hot",
				"common",
				said.region === "us" ? { screw: "dark", also: ["dark"] } : {},
			),
			traveller("1", "hot"),
			traveller("2", "hot2"),
			deviceScrew(said.region, "ground", "ground", "ground", { also: ["green"] }),
		],
		links: [way("common", "traveller.1", [0]), way("common", "traveller.2", [1])],
		sides: passesHot
			? [
					{ name: "line", knots: { ...common, hot: "live" }, withThirdHot: amongThree("live") },
					{
						name: "load",
						knots: common,
						// Behind the last of a pair a live hot goes on on black, the switched one on red.
						withSecondHot: { hot: "live", hot2: "common", neutral: "^neutral", ground: "ground" },
						withThirdHot: amongThree("live"),
					},
				]
			: [
					{ name: "line", knots: common, withSecondHot: travellers, withThirdHot: amongThree("common") },
					{ name: "load", knots: common, withSecondHot: travellers, withThirdHot: amongThree("common") },
				],
		loop: { sort: "end", common: "common", travellers: ["traveller-1", "traveller-2"] },
	};
}

function betweenTravellers(said: Said): Omit<Blueprint, "face" | "onward"> {
	const screw = (side: "line" | "load", number: "1" | "2", role: "hot" | "hot2") =>
		deviceScrew(said.region, `${side}.${number}`, role, `${side}-${number}`, {
			side,
			also: [`${side === "line" ? "a" : "b"}${number}`],
		});
	const sideOf = (name: "line" | "load") => {
		const others = { neutral: "^neutral", ground: "ground" };
		return {
			name,
			knots: others,
			withSecondHot: { ...others, hot: `${name}-1`, hot2: `${name}-2` },
			withThirdHot: { ...others, hot: "live", hot2: `${name}-1`, hot3: `${name}-2` },
		};
	};
	return {
		terminals: [
			screw("line", "1", "hot"),
			screw("line", "2", "hot2"),
			screw("load", "1", "hot"),
			screw("load", "2", "hot2"),
			deviceScrew(said.region, "ground", "ground", "ground", { also: ["green"] }),
		],
		links: [
			way("line.1", "load.1", [0]),
			way("line.2", "load.2", [0]),
			way("line.1", "load.2", [1]),
			way("line.2", "load.1", [1]),
		],
		sides: [sideOf("line"), sideOf("load")],
		loop: { sort: "between", line: ["line-1", "line-2"], load: ["load-1", "load-2"] },
	};
}

function way(from: string, to: string, closed: readonly number[]): LinkSpec {
	return { between: [from, to], nature: "contact", contact: { group: "handle", positions: 2, closed } };
}
