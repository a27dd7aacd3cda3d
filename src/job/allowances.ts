/** What is added to finished sizes before the work begins, mm. All of it is common practice, no source. */

/** Two more staves than the ring takes: one splits in the fire, one turns out to be sapwood. */
export const spareStaves = 2;

/** Taken off a stave's width by jointing both edges. */
export const jointingAllowance = 2;

/** Taken off a blank's thickness by planing both faces. */
export const planingAllowance = 4;

/** By how much bolts are longer than blanks: split ends and checks are sawn off. */
export const boltAllowance = 40;

/**
 * By how much a green blank is larger than it is air-dry, as a share of its size. White oak shrinks by 5.6 % radially and 10.5 %
 * tangentially from green to oven-dry (USDA Wood Handbook, FPL-GTR-190, table 4-3, from memory), and by six tenths of that from
 * the 30 % of moisture at which shrinking begins to 12 %: 3.4 % and 6.3 %, rounded up. A stave is split radially, so its
 * width is radial.
 */
export const dryingAllowance = { width: 0.04, thickness: 0.07 } as const;
