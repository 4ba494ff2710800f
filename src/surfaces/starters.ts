// The starters that `new` copies, from the plainest on; their texts are taken in when the command is built.
import bench from "../../seeds/bench.ferrule?raw";
import cabin from "../../seeds/cabin.ferrule?raw";
import camperInverter from "../../seeds/camper-inverter.ferrule?raw";
import camperShore from "../../seeds/camper-shore.ferrule?raw";

/** A plan to begin from. */
export interface Starter {
	readonly name: string;
	readonly text: string;
}

/** What is copied where no starter is named. */
export const firstStarter: Starter = { name: "bench", text: bench };

/** Every starter of the folder `seeds`, by the names of its files. */
export const starters: readonly Starter[] = [
	firstStarter,
	{ name: "camper-shore", text: camperShore },
	{ name: "camper-inverter", text: camperInverter },
	{ name: "cabin", text: cabin },
];
