// The measures all wiring sheets share, in units (one prints as 0.25 mm).

/** Between neighbouring conductor rows inside an enclosure. */
export const rowPitch = 24;
/** From an enclosure's wall to where its fanned-out conductors run straight. */
export const fanDepth = 34;
/** Between neighbouring vertical conductors inside an enclosure, where nothing asks for more. */
export const columnPitch = 30;
/** Between neighbouring strands in a jacket. */
export const strandPitch = 6;
/** Coloured core of a conductor inside an enclosure, and of a strand in its jacket. */
export const wireWidth = 3.4;
export const strandWidth = 2.5;
/** Corner radius of a conductor, and of a jacket's middle line. */
export const wireRadius = 7;
export const jacketRadius = 16;
/** Radius of a terminal's screw. */
export const screwRadius = 5.5;
/** Half the side of a splice with one port a side. */
export const spliceReach = 9;
/** Height of the band with an enclosure's name and what it is. */
export const headerHeight = 46;
/** Free room inside an enclosure's walls. */
export const innerMargin = 16;
/** Between enclosures above one another. */
export const laneGap = 30;
/** Between the upright tracks of cables that leave one wall. */
export const trackPitch = 38;
/** From a wall to the first upright track. */
export const trackLead = 40;
/** The least length of cable between two enclosures. */
export const shortestCable = 78;
/** Room under a row of boxes for a lane that returns. */
export const returnChannel = 70;
/** The widest drawing before lanes wrap: an A3 sheet at scale 0.8, its margins taken off. */
export const widestDrawing = 1980;
/** From one leg of a panel's bus to the next. */
export const busStep = 24;
/** Circuits of one panel on one sheet. */
export const circuitsPerSheet = 12;

/** Type sizes. The smallest prints with capitals of 1.8 mm. */
export const type = { title: 13, label: 12, tag: 11.5, note: 10.5, letter: 10.5 } as const;
