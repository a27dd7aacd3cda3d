/** The words of the job sheet: what every language has to say. Numbers come as texts, with no unit unless it is said. */

export interface JobWords {
  /** BCP 47 */
  readonly language: string;
  readonly title: string;
  readonly ends: { readonly top: string; readonly bottom: string };
  /** `end` is one of `ends` */
  atEnd(end: string, text: string): string;
  readonly numbers: {
    /** says which unit lengths are in, here and below */
    heading(unit: 'mm' | 'in'): string;
  } & Readonly<
    Record<
      | 'capacity'
      | 'height'
      | 'bilge'
      | 'ends'
      | 'top'
      | 'bottom'
      | 'wall'
      | 'staves'
      | 'empty'
      | 'full',
      string
    >
  >;
  readonly list: {
    readonly title: string;
    /** piece, count, length, width, thickness */
    readonly headings: readonly string[];
    readonly stave: string;
    readonly heads: { readonly both: string; readonly top: string; readonly bottom: string };
    boards(head: string, numbers: string): string;
    dowels(head: string): string;
    /** `end` is empty where both ends have it */
    strap(hoop: string, end: string): string;
  };
  readonly steps: StepWords;
  /** what they are, what to do with them, and what stands on them */
  readonly labels: string;
  takeCare(caution: string): string;
}

interface Titled {
  readonly title: string;
}

interface WithCaution extends Titled {
  readonly caution: string;
}

export interface StepWords {
  /** says what the boxes are for */
  readonly heading: string;
  readonly wood: WithCaution & {
    text(bolt: string, count: number, width: string, thickness: string): string;
  };
  readonly plane: WithCaution & { text(length: string): string; readonly thickness: string };
  readonly joint: WithCaution & {
    cask(bilge: string, ends: string, bilgeBevel: string, endBevel: string): string;
    tub(top: string, bottom: string, bevel: string, tilt: string): string;
    /** staves of uneven width */
    readonly mixed: string;
    readonly before: string;
    readonly laid: string;
  };
  readonly hollow: Titled & { text(radius: string): string; readonly thickness: string };
  readonly raise: WithCaution & {
    text(count: number): string;
    readonly bung: string;
    /** `down`: from the sawn end, along the stave */
    beforeFire(down: string): string;
    /** a tub's */
    inHoop(down: string): string;
  };
  readonly fire: WithCaution & {
    text(stretchPercent: string, quarterGirth: string): string;
    readonly girth: string;
  };
  readonly trim: Titled & {
    readonly titlePlain: string;
    text(bevel: string, flat: string): string;
    readonly plain: string;
    readonly height: string;
  };
  readonly groove: Titled & {
    howel(depth: string): string;
    text(inset: string, width: string, depth: string): string;
    readonly compass: string;
    radius(end: string): string;
  };
  readonly round: Titled & { text(radius: string): string; readonly girth: string };
  readonly head: WithCaution & {
    /** of a tub */
    readonly titleOpen: string;
    readonly joints: string;
    text(
      land: string,
      depth: string,
      fromInside: string,
      outerBevel: string,
      innerBevel: string,
    ): string;
    diameter(end: string): string;
  };
  readonly setHead: WithCaution & {
    readonly titleOpen: string;
    text(opening: string, girth: string): string;
  };
  readonly hoop: WithCaution & {
    /** `name` is one of `hoopName` */
    place(name: string, offset: string): string;
    text(places: string): string;
  };
  readonly bung: Titled & { text(diameter: string): string };
  readonly test: WithCaution & {
    readonly text: string;
    /** a tub */
    readonly open: string;
    readonly openCaution: string;
    readonly litres: string;
    readonly leaks: string;
  };
  readonly handOver: Titled & {
    readonly text: string;
    lifting(mass: string): string;
    readonly gas: string;
    readonly food: string;
  };
}
