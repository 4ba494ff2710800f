// How much wider than its core a wire is painted: shared by the room that paints and by the measures that look for collisions.

/** Paper around a wire and a sheath, both sides together, in units: the gap where something is crossed. */
export const haloWidth = 5;
/** The dark edge of a wire, both sides together: it shows white on paper and black on dark. */
export const casingWidth = 1.5;
/** The edge of a sheath, both sides together. */
export const sheathWidth = 1.8;
/** The band of a wire that a finding's path lights up, both sides together, and the ticks across it that show without colour. */
export const bandWidth = 5.5;
export const tickWidth = 7.5;
