/** What the sheets of hoops say, in English. */

export const hoopWords = {
  title: 'Hoops',
  /** `chime hoop, top and bottom: 2 straps 40 × 1.8` */
  strap: (number: number, name: string, ends: string, pieces: number, section: string) =>
    `${number} · ${name} hoop, ${ends}: ${pieces === 1 ? '1 strap' : `${pieces} straps`} ${section}`,
  and: ' and ',
  upperEdge: (splay: string, per100: string) =>
    `upper edge: the long one, ${splay} longer (${per100} per 100)`,
  straight: 'no slope: both edges alike',
  driving: (driving: string) => `made ${driving} small, to be driven`,
  lap: (lap: string) => `lap ${lap}`,
  holes: (distance: string) => `hole to its hole ${distance}`,
  cut: (length: string) => `cut square to ${length}`,
  kinds: {
    end: 'raising hoop, near each end',
    quarter: 'truss hoop, quarter',
    bilge: 'truss hoop, above the bilge',
    top: 'raising hoop, near the top',
    middle: 'truss hoop, middle',
    bottom: 'truss hoop, near the bottom',
  },
  notes: {
    measured:
      'A hoop is measured on the smaller girth that it covers. Cut length: that girth at the middle of the strap’s thickness, and the lap, less what driving takes up. Near edge: towards the end that its offset counts from.',
    pairs:
      'Rivet each hole to its own at the other end: the outermost of one end meets the innermost of the other.',
    splay:
      'Splay: hammer the long edge only, evenly from end to end, until the strap lies along its splay gauge. The short edge keeps its length.',
    plain: 'A hoop without slope is a plain strip, also when it is cut from sheet.',
    rivets: (play: string) =>
      `Rivets are common practice, no source: about two and a half times as thick as the strap, holes ${play} wider, two in the lap or three in a wide strap. Soft steel, closed cold.`,
    driving: (percent: string, travel: string) =>
      `Driving is common practice, no source: ${percent} % of the girth, never more than the slope gains over ${travel}. Drive with hammer and driver all round, a little at a time.`,
    waste: (percent: string) =>
      `Steel to buy: ${percent} % over for squaring and ends (common practice, no source). Mass at 7,850 kg per m³.`,
    working:
      'Raising and truss hoops: inside girth with the joints closed, at heights that are common practice, no source. “Flat”: the girth over staves that are not backed yet.',
    steel:
      'Strap edges cut and hoops under load can fly: gloves and eye guards, nobody in line with the hoop; take the burr off every edge.',
    broken:
      'Broken view: both ends are full size, the middle is left out. The length to cut is the figure, not the picture; the file for routers has the whole strap.',
  },
  tables: {
    girths: {
      title: 'Girths and splay',
      headings: (unit: string) => [
        'no.',
        'hoop',
        'end',
        `near girth ${unit}`,
        `far girth ${unit}`,
        'slope',
        `splay ${unit}`,
        'per 100',
      ],
    },
    straps: {
      title: 'Straps to cut',
      headings: (unit: string, massUnit: string) => [
        'no.',
        'pieces',
        `length ${unit}`,
        `width × thickness ${unit}`,
        `lap ${unit}`,
        `driving ${unit}`,
        `rivets ${unit}`,
        `holes from each end ${unit}`,
        `mass each ${massUnit}`,
      ],
    },
    rivets: (count: number, diameter: string) => `${count} of ⌀ ${diameter}`,
    noRivets: 'none: weld',
    buy: {
      title: 'Steel to buy',
      headings: (unit: string, massUnit: string) => [
        `width × thickness ${unit}`,
        'pieces',
        `length together ${unit}`,
        `with waste ${unit}`,
        `mass ${massUnit}`,
      ],
    },
    working: {
      title: 'Raising and truss hoops',
      headings: (unit: string) => [
        'hoop',
        `below the top end ${unit}`,
        `inside girth ${unit}`,
        `flat ${unit}`,
        `inside diameter ${unit}`,
      ],
    },
  },
  sheet: {
    title: (number: number, name: string) => `Hoop ${number}, ${name}, cut from sheet`,
    short: (radius: string) => `short edge: radius ${radius}`,
    long: (radius: string) => `long edge: radius ${radius}`,
    sweep: (angle: string) => `sweep ${angle}`,
    notes: {
      broken:
        'Broken view: both ends are full size, each turned upright; what lies between them is left out. Strike the edges by the radii; the file for routers has the whole hoop.',
      use: (pieces: number) =>
        `Cut ${pieces} like this from sheet in place of the strap: it needs no hammering. The short edge goes towards the narrower girth.`,
      strike: (short: string, long: string) =>
        `Strike both edges with a trammel from one point: a batten with a nail and two pencil holes, ${short} and ${long} from the nail.`,
      mark: (chord: string, rise: string) =>
        `Check: the ends of the short edge lie ${chord} apart in a straight line, and its middle stands ${rise} off that line.`,
      overlap: (overlap: string) =>
        `At the middle of its width the ends overlap by ${overlap}: the lap, and what driving takes up. The narrow lines show how far.`,
      edges: 'Steel edges cut: take the burr off all round before you bend.',
    },
  },
  splay: {
    title: 'Splay gauge',
    name: (number: number, name: string) => `${number} · ${name} hoop`,
    short: 'round edge: in the hollow of the strap’s short edge',
    bench: 'foot on the bench, sloping end against the hoop',
    slope: (angle: string, per100: string) => `slope ${angle}, ${per100} per 100`,
    notes: {
      curve:
        'While hammering: lay the strap flat on the anvil or bench. Its short edge becomes hollow; it is splayed enough when the round edge of the gauge fits into that hollow without light, all along the strap.',
      standing:
        'When riveted: stand the hoop on its long edge on a flat bench and set the gauge beside it, outside. The sloping end must lie against the strap; light at the foot means too little splay, light at the top too much.',
      rise: 'The rise is how far the round edge stands off a straight one over the whole gauge.',
    },
    table: {
      title: 'Splay',
      headings: (unit: string) => [
        'no.',
        'hoop',
        'slope',
        'slope per 100',
        'splay per 100',
        `radius ${unit}`,
        `gauge long ${unit}`,
        `rise ${unit}`,
      ],
    },
  },
};
