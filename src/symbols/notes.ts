// Marks that speak about the drawing itself: a caution, a reference elsewhere. Own artwork.
import { filled, line, path, type SymbolDesign, symbol } from "./symbol.ts";

/** Caution and reference marks. */
export const notes: readonly SymbolDesign[] = [
	symbol({
		name: "caution",
		title: "Caution, electricity",
		size: [40, 36],
		origin: [20, 18],
		shapes: [filled(path("M20 2L38 34H2Z"), "warning"), filled(path("M22.5 10L15.5 22H20L17.5 31L25.5 18.5H20.5Z"))],
	}),
	symbol({
		name: "off-sheet",
		title: "Goes on elsewhere",
		size: [40, 20],
		origin: [20, 0],
		ports: [["in", 20, 0, "north"]],
		shapes: [line(20, 0, 20, 4), path("M8 4H32V12L20 20L8 12Z")],
	}),
	symbol({
		name: "cable-slash",
		title: "Three conductors",
		size: [16, 16],
		origin: [8, 8],
		shapes: [line(3, 9, 13, 3), line(3, 13, 13, 7)],
	}),
];
