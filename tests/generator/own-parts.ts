// What the library lacks, described by the builder: loads and switches of his own, for the mains and for direct current.
import type { Branch, Stretch } from "./branch.ts";
import type { DirectBranch } from "./direct/direct-branch.ts";

/** A load of the builder's own on a circuit of the mains. */
export function writeOwnLoad(branch: Branch, stretch: Stretch): void {
	const { site, amperes } = branch;
	const { chance, spelling, volts, wish } = site;
	const watts = Math.round(amperes * volts * chance.pick([0.1, 0.3, 0.6]));
	const [hot, neutral] = chance.pick([
		["L", "N"],
		["1", "2"],
	]);
	const room = wish.region === "us" ? "60 cuin" : "900 cm3";
	const name = site.ownPart(`${chance.pick(["heater", "load", "pump"])} ${spelling.quantity(volts, "voltage")}`, [
		`${hot} hot${chance.maybe(0.5) ? " stud" : ""}`,
		`${neutral} neutral${chance.maybe(0.5) ? " stud" : ""}`,
		`PE ground${chance.maybe(0.5) ? " also earth" : ""}`,
		`draws ${watts} W from ${hot} to ${neutral}${chance.maybe(0.3) ? " continuous" : ""}`,
		...(chance.maybe(0.5) ? [`case ${chance.maybe(0.5) ? "metal, " : ""}${room}`] : []),
		...(chance.maybe(0.4) ? ['text "Made for this place"'] : []),
	]);
	branch.hopTo(stretch, name, "own");
}

/** A switch of the builder's own; what it switches is written behind it. */
export function writeOwnSwitch(branch: Branch, stretch: Stretch): void {
	const { site } = branch;
	const { chance } = site;
	const name = site.ownPart(`switch ${site.spelling.quantity(Math.max(branch.amperes, 15), "current")}`, [
		"in hot line",
		"out hot load",
		"G ground",
		...(chance.maybe(0.5)
			? ["states off, on", "link in out when on"]
			: ["states off, low, high", "link in out when low, high"]),
	]);
	branch.hopTo(stretch, name, "own");
}

/** A load of the builder's own for direct current. */
export function writeOwnDirectLoad(branch: DirectBranch): void {
	const { site } = branch.side;
	const watts = Math.max(1, Math.round(branch.spare * branch.volts * 0.3));
	const name = site.ownPart(`load ${site.spelling.quantity(branch.volts, "voltage")}`, [
		"P positive also plus",
		"M negative",
		`draws ${watts} W from P to M`,
	]);
	branch.draw(watts / branch.volts);
	branch.add(branch.lines, `to ${site.names.fresh("own")}: ${name} ${site.names.label()}`.trim());
	site.left -= 1;
}
