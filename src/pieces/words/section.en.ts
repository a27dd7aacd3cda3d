/** What the pictures of the whole vessel say: section, plan of the head, the ring before bending. In English. */

const picture = (scale: string): string =>
  `A picture at ${scale}, in every format, DXF too. Take sizes from its figures or from the full-size drawings, never by measuring it.`;

export const sectionWords = {
  title: 'Section and outside of the whole',
  bung: 'bung hole',
  diameter: (size: string) => `⌀ ${size}`,
  hoop: (item: string, offset: string) => `${item}: ${offset}`,
  notes: {
    picture,
    views: (stave: string) =>
      `Left of the axis: seen from outside. Right: cut along the axis through the middle of ${stave}, and across the boards of each head.`,
    bungStave: 'the bung stave',
    anyStave: 'a stave',
    lines: 'Wide lines: cut through. Narrower lines: edges that are seen. Hatched: wood.',
    items:
      'Numbers are those of the list. Beside a hoop follows the distance of its near edge from its end.',
    heights: 'Between the heads: the height inside, from face to face.',
    depth: 'Inside: the depth from the rim to the face of the bottom.',
  },
  parts: {
    title: 'Parts',
    headings: (unit: string) => ['item', 'part', 'count', `size ${unit}`],
    stave: 'stave as sawn: length × width × thickness',
    boards: (numbers: string) => `board ${numbers}`,
    dowel: 'dowel',
    hoop: (name: string) => `${name} hoop, strap before riveting`,
    bung: 'bung hole',
    to: (from: string, to: string) => `${from} to ${to}`,
  },
  plan: {
    title: { both: 'Plan of the head', top: 'Plan of the top head', bottom: 'Plan of the bottom' },
    board: (number: number, width: string) => `${number}: ${width}`,
    brand: (width: string, height: string) => `brand, ${width} × ${height}`,
    serial: (width: string, height: string) => `serial number, ${width} × ${height}`,
    notes: {
      seen: 'Seen from outside. Outer circle: the end of the staves; dashed circle: the rim of the head in its groove; small dashed rectangles: dowels.',
      places: 'Thin rectangles: places for a brand and a serial number.',
      boards: 'Beside each board: its number from the lowest upwards, and its width.',
      brand:
        'Brand and number stay clear of joints. A branding iron is hot and its smoke unhealthy: gloves, fresh air, water at hand; follow local rules.',
    },
  },
  raising: {
    title: 'The ring before bending',
    titleStraight: 'The ring in its raising hoop',
    hoop: (diameter: string) => `raising hoop, inside ⌀ ${diameter}`,
    gap: (gap: string) => `joints gape ${gap}`,
    closed: 'joints closed',
    notes: {
      picture,
      cask: 'Straight staves stand in the raising hoop with their joints closed there, outer faces not yet rounded; below it they splay, as straight as they were sawn.',
      tub: 'A tub’s staves are not bent: they stand in the raising hoop as they will stay, their joints closed all the way.',
      lean: (angle: string, per100: string) =>
        `Every stave leans ${angle} from upright: its end moves out by ${per100} for each 100 of its length.`,
      why: 'Less lean than this, and the joints would bind below the hoop before they close in it; a wider hoop leaves them open.',
      measure:
        'Diameters are measured from outer face to opposite outer face, girths with a tape round the corners.',
      stand:
        'Work with a helper or a second hoop: staves not yet held can fall. Keep fingers out of the joints when the hoop is driven.',
    },
    table: {
      title: 'Girths before bending',
      headings: (unit: string) => [
        'place',
        `from the raised end, along the stave ${unit}`,
        `diameter ${unit}`,
        `girth ${unit}`,
        `widths together ${unit}`,
        `open per joint ${unit}`,
      ],
      raised: 'raised end',
      hoop: 'raising hoop',
      bilge: 'bilge',
      middle: 'middle',
      free: 'free end',
    },
  },
};
