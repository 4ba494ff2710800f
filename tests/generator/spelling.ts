// How builders write the same thing: units close or apart, by one spelling or another, lists with or without commas.
import { certain } from "../../src/base/certain.ts";
import { type Dimension, formatNumber, units } from "../../src/base/quantity.ts";
import type { Region } from "../../src/kinds/kind.ts";
import type { Chance } from "./chance.ts";

/** The hand that writes one plan: it draws a way of writing for each figure. */
export class Spelling {
	private readonly chance: Chance;
	private readonly region: Region;
	/** Some builders write every unit close to its figure. */
	private readonly gap: string;

	constructor(chance: Chance, region: Region) {
		this.chance = chance;
		this.region = region;
		this.gap = chance.maybe(0.2) ? "" : " ";
	}

	/** A value in the base unit of its dimension, in one of the dimension's units in which it is a plain figure. */
	quantity(value: number, dimension: Dimension): string {
		const plain = units.filter((unit) => {
			if (unit.dimension !== dimension || unit.offset !== undefined) return false;
			const written = value / unit.factor;
			return (
				written >= 0.1 &&
				written < 10_000 &&
				Math.abs(Number(formatNumber(written)) * unit.factor - value) < 1e-9 * value
			);
		});
		const [
			base = certain(
				units.find((unit) => unit.dimension === dimension),
				dimension,
			),
		] = plain;
		const unit = this.chance.maybe(0.9) ? base : this.chance.pick([base, ...plain]);
		const symbol = this.chance.maybe(0.9) ? unit.symbol : this.chance.pick([unit.symbol, ...(unit.also ?? [])]);
		return `${formatNumber(value / unit.factor)}${this.unitGap(symbol)}${symbol}`;
	}

	/** How long a cable is, in feet or metres, as it is measured in the region. */
	length(metres: number): string {
		const { chance } = this;
		if (this.region === "iec")
			return chance.weigh([
				[6, `${formatNumber(metres, 1)}${this.gap}m`],
				[1, `${Math.round(metres * 100)}${this.gap}cm`],
				[metres % 1 > 0.05 && metres > 1 ? 1 : 0, `${Math.floor(metres)} m ${Math.round((metres % 1) * 10) * 10} cm`],
			]);
		const feet = Math.max(1, Math.round(metres / 0.3048));
		return chance.weigh([
			[8, `${feet}${this.gap}ft`],
			[1, `${feet} ${feet === 1 ? "foot" : "feet"}`],
			[1, `${feet} ft ${chance.count(1, 11)} in`],
			[1, `${formatNumber(metres, 1)} m`],
		]);
	}

	/** Words in a row, with commas where the eye likes them. */
	list(words: readonly string[]): string {
		return words
			.filter((word) => word !== "")
			.reduce((text, word) => {
				if (text === "") return word;
				return `${text}${this.chance.maybe(0.2) ? ", " : this.chance.maybe(0.15) ? "  " : " "}${word}`;
			}, "");
	}

	/** Signs that are no letters stand apart, so that the figure before them stays one. */
	private unitGap(symbol: string): string {
		return /^[A-Za-z]/.test(symbol) ? this.gap : " ";
	}
}
