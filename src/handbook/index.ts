// Every table of the handbook, in reading order, for printing by name and for the test that walks them all.
import { aluminiumAmpacities, smallAluminiums } from "./aluminium-ampacity.ts";
import { ambientFactors, bundlingFactors } from "./ampacity-corrections.ts";
import { batteryDepths } from "./battery-depth.ts";
import { boxAllowances, conductorVolumes } from "./box-fill.ts";
import { branchCircuitClauses } from "./branch-circuits.ts";
import { breakerInterrupting, tripBands, tripPoints } from "./breaker-trip.ts";
import { camperClauses } from "./camper-clauses.ts";
import { caravanClauses } from "./caravan-clauses.ts";
import { boatCircuitColours, colourClauses } from "./colour-clauses.ts";
import { roleColours } from "./colour-roles.ts";
import { colourNames } from "./colours.ts";
import { copperConstants } from "./copper.ts";
import { ampacityClauses, copperAmpacities } from "./copper-ampacity.ts";
import { metricResistances, resistances20, resistances75 } from "./copper-resistance.ts";
import { cordAmpacities, cordClauses } from "./cord-ampacity.ts";
import { dcClauses } from "./dc-clauses.ts";
import { bladeColours, fuseFamilies, fusePoints } from "./dc-fuses.ts";
import { deviceDistances, interruptingNeeds, vehicleDevices } from "./dc-protection.ts";
import { demandFactors } from "./demand-factors.ts";
import { equipmentGroundClauses, equipmentGrounds, protectiveEarths } from "./equipment-ground.ts";
import { classATimes, disconnectionTimes, groundFaultClauses, residualTimes } from "./ground-fault-devices.ts";
import { groundFaultPlaces } from "./ground-fault-places.ts";
import { craftAmpacities, iecAmpacities } from "./iec-ampacity.ts";
import { iecAmbientFactors, iecBunchingFactors } from "./iec-corrections.ts";
import { leastSizes } from "./least-sizes.ts";
import { manufacturedHomeClauses } from "./manufactured-home-clauses.ts";
import { engineSpaceFactors, marineAmpacities, marineBundlings } from "./marine-ampacity.ts";
import { neutralBonds } from "./neutral-bond.ts";
import { receptacleFaces } from "./receptacle-faces.ts";
import { cordLoads, receptacleClauses, receptacleRatings, socketOutlets } from "./receptacles.ts";
import { smallConductors } from "./small-conductors.ts";
import { coldFactors } from "./solar-cold.ts";
import { crimpBarrels, jointConnectors, pullTests, screwTorques, spliceClauses } from "./splices.ts";
import { standardBoxes } from "./standard-boxes.ts";
import { standardRatings } from "./standard-ratings.ts";
import { caravanCords, supplyClauses, supplyInlets } from "./supply-inlets.ts";
import type { HandbookTable } from "./table.ts";
import { terminalMetals } from "./terminal-metals.ts";
import { clampCounts, clampEnds, screwRoles, terminalClauses } from "./terminals.ts";
import { testerReadings } from "./tester-readings.ts";
import { twoPoleClauses } from "./two-pole-clauses.ts";
import { typicalLoads } from "./typical-loads.ts";
import { usualSizes } from "./usual-sizes.ts";
import { dropLimits } from "./voltage-drop-limits.ts";
import { wireAreas } from "./wire-areas.ts";
import { wiringPractice } from "./wiring-practice.ts";

/** Every table, in reading order. */
export const tables: readonly HandbookTable[] = [
	// Protection of conductors.
	standardRatings,
	smallConductors,
	copperAmpacities,
	aluminiumAmpacities,
	smallAluminiums,
	ampacityClauses,
	ambientFactors,
	bundlingFactors,
	cordAmpacities,
	cordClauses,
	marineAmpacities,
	engineSpaceFactors,
	marineBundlings,
	iecAmpacities,
	craftAmpacities,
	iecAmbientFactors,
	iecBunchingFactors,
	usualSizes,
	leastSizes,
	equipmentGrounds,
	equipmentGroundClauses,
	protectiveEarths,
	// Circuits and what hangs on them.
	receptacleRatings,
	cordLoads,
	receptacleClauses,
	socketOutlets,
	receptacleFaces,
	branchCircuitClauses,
	typicalLoads,
	batteryDepths,
	demandFactors,
	dropLimits,
	// Ground faults, bonding, sources.
	groundFaultPlaces,
	groundFaultClauses,
	classATimes,
	residualTimes,
	disconnectionTimes,
	neutralBonds,
	supplyInlets,
	caravanCords,
	supplyClauses,
	camperClauses,
	manufacturedHomeClauses,
	caravanClauses,
	twoPoleClauses,
	// Colours, terminals, boxes.
	wiringPractice,
	colourNames,
	roleColours,
	colourClauses,
	boatCircuitColours,
	screwRoles,
	clampEnds,
	clampCounts,
	terminalClauses,
	terminalMetals,
	jointConnectors,
	crimpBarrels,
	screwTorques,
	pullTests,
	spliceClauses,
	conductorVolumes,
	boxAllowances,
	standardBoxes,
	// Devices, copper, direct current, testing.
	tripBands,
	tripPoints,
	breakerInterrupting,
	copperConstants,
	resistances75,
	resistances20,
	metricResistances,
	wireAreas,
	fuseFamilies,
	bladeColours,
	fusePoints,
	coldFactors,
	deviceDistances,
	vehicleDevices,
	interruptingNeeds,
	dcClauses,
	testerReadings,
];

/** The table of a name, or undefined. */
export function findTable(name: string): HandbookTable | undefined {
	return tables.find((candidate) => candidate.name === name);
}
