/** Neutral shades for wood and steel between the page's paper and its ink: they tell nothing, edges and places do. */

type Rgb = readonly [number, number, number];

export interface Shades {
  readonly ink: string;
  readonly wood: string;
  readonly steel: string;
  /** of the body that is chosen */
  readonly chosen: string;
}

/** How much ink there is in each. */
const shares = { wood: 0.16, steel: 0.5, chosen: 0.34 };
/** The same on a dark page, where light falls on the bodies all the same. */
const darkShares = { wood: 0.62, steel: 0.4, chosen: 0.9 };

/** `paper` and `ink` as `#rrggbb`. Lines are drawn in the darker of the two. */
export function shadesOf(paper: string, ink: string): Shades {
  const [light, dark] = [rgbOf(paper), rgbOf(ink)];
  const isDark = brightness(light) < brightness(dark);
  const { wood, steel, chosen } = isDark ? darkShares : shares;
  const mix = (share: number): string =>
    `#${light.map((c, k) => hex(c + share * (dark[k]! - c))).join('')}`;
  return {
    ink: isDark ? paper : ink,
    wood: mix(wood),
    steel: mix(steel),
    chosen: mix(chosen),
  };
}

const brightness = ([r, g, b]: Rgb): number => r + g + b;
const hex = (value: number): string => Math.round(value).toString(16).padStart(2, '0');

function rgbOf(text: string): Rgb {
  const found = /^#([\da-f]{2})([\da-f]{2})([\da-f]{2})$/i.exec(text.trim());
  const part = (k: number): number => parseInt(found?.[k] ?? '80', 16);
  return [part(1), part(2), part(3)];
}
