/** Nominal heights of lettering in mm: ISO 3098-1, the series that grows by the square root of two. */
export const nominalHeights = [1.8, 2.5, 3.5, 5, 7, 10, 14, 20] as const;

type NominalHeight = (typeof nominalHeights)[number];

/** What each height is used for here. */
export const heights = {
  small: 2.5,
  normal: 3.5,
  heading: 5,
  title: 7,
} as const satisfies Record<string, NominalHeight>;
