/** Every small length of the project, by name. Millimetres unless the name says otherwise. */

/** how far a drawn curve may lie from the exact one */
export const fitTolerance = 0.005;

/**
 * Part of the tolerance that a fit uses: the rest is for rounding coordinates to `coordinateStep` (2 % of
 * `fitTolerance`) and for the crest of an error between two places where it was measured (0.5 %).
 */
export const fitShare = 0.97;

/** coordinates in files are multiples of this */
export const coordinateStep = 0.0001;

/** points nearer than this are one point: well under `coordinateStep`, well over the noise of arithmetic on metres */
export const coincident = 1e-6;

/** two arcs are one when drawing them as one moves nothing by more than this */
export const sameArc = 1e-7;

/**
 * A segment of a smaller bulge than this is straight: its rise is under 5e-6 mm on a metre, and the centre of
 * its circle could not be computed any better.
 */
export const straightBulge = 1e-8;
