/** Limits of the checks that are neither geometry nor a parameter of the build: common practice, no source, unless said. */

/** Studs that bite less than this into each wall hardly hold, mm. */
export const LEAST_BITE_MM = 0.03;
/** Bite per wall above which boards chip and bow beyond what a rod corrects, and above which they split, mm. */
export const MOST_BITE_MM = 0.15;
export const SPLITTING_BITE_MM = 0.25;
/**
 * Shear beside a slot over the board's strength, per cent: above the first the peaks at the slot, some three times the
 * mean, may start a crack; above the second the wood goes even as a mean.
 */
export const MOST_WALL_SHEAR_PERCENT = { safe: 33, all: 100 } as const;
/** What a hammer, and what a lever press or a caul in a bench press, seat a fret with, N. */
export const MOST_SEATING_N = { hammer: 2000, press: 4000 } as const;
/** Gap beside the tang of a glue fit, both sides together, above which the glue is asked to be filler, mm. */
export const MOST_GLUE_GAP_MM = 0.4;
/** Extra give of a glued neck under its strings, over that of unsawn slots, from which its glue is said not to stiffen it, per cent. */
export const MOST_GLUED_GIVE_PERCENT = 5;
/** Set glue below this modulus counts as soft, MPa: half of what the stiffer kinds have at least. */
export const SOFT_GLUE_MPA = 1000;
/** Slot depth beyond what is needed that only weakens the board, mm. */
export const NEEDLESS_DEPTH_MM = 1.5;
/** Board that should stay below a slot, and that must, mm. */
export const WANTED_BOARD_LEFT_MM = 1.2;
export const LEAST_BOARD_LEFT_MM = 0.7;
/** Board thickness at its edge, mm. */
export const LEAST_EDGE_MM = 2;
/** Chamfer below which the edges of a slot count as sharp, mm. */
export const LEAST_CHAMFER_MM = 0.1;
/** Crown on the binding left whole, mm. */
export const LEAST_SHELF_MM = 0.3;
/** Air between a nipped tang and the binding, mm. */
export const LEAST_NIP_CLEARANCE_MM = 0.2;
/** Top of the crown beyond the outer string, mm. */
export const LEAST_BESIDE_STRING_MM = 1.2;
/** What clamps side by side press a board down with, MPa; presses reach twice that. */
export const USUAL_CLAMPING_MPA = 0.7;
/** Wire over each edge to grip and to file, mm. */
export const LEAST_OVERSIZE_MM = 0.5;
/** Wire radius as a share of the board's below which the middle stands off too far, per cent. */
export const TIGHTEST_BEND_PERCENT = 70;
/** Board beyond the last slot: its short grain shears off under a wedged fret, mm. */
export const LEAST_BEYOND_LAST_FRET_MM = 4;
/** Share of the least tensile strength at which a string is too close to breaking. */
export const MOST_STRING_STRESS = 0.8;
/** How near the wanted relief is near enough, mm. */
export const RELIEF_TOLERANCE_MM = 0.05;
/** The thinnest leaf of a set of feelers, mm: a relief below it is as good as none. Common practice, no source. */
export const THINNEST_FEELER_MM = 0.03;
/** Share of the rod's range beyond which nothing is left for the seasons, per cent. */
export const MOST_ROD_PERCENT = 80;

/** Distance of neighbouring courses at the nut, middle to middle, mm. Builds of before know no courses, and have pairs spread evenly. */
export const LEAST_STRING_SPACING_MM = 3;
/**
 * Sag over span up to which the beam formula holds without a correction: ASTM D790, 12.3 (from memory), corrects beyond a
 * tenth of the span.
 */
export const MOST_SAG_OF_SPAN = 0.1;
/** Modulus along the grain that a measured blank of wood can have, GPa. The woods of the table lie between 10 and 25. */
export const WOOD_MODULUS_GPA = { least: 5, most: 35 } as const;
/** EU limit of nickel release for articles in prolonged contact with the skin, µg per cm² and week: REACH, Annex XVII, entry 27. */
export const NICKEL_RELEASE_LIMIT = 0.5;
