/** Labels to stick on the staves: number in the ring, which way is up, width at the bilge; the spares last. */
import type { Vessel } from '../vessel/vessel.js';
import { spareStaves } from './allowances.js';
import type { Texts } from './texts.js';

export function labelTexts({ staves }: Vessel, texts: Texts): string[] {
  const label = (mark: string, width: number): string => `${mark} ↑ ${texts.length(width)}`;
  const widest = Math.max(...staves.map(({ width }) => width));
  return [
    ...staves.map(({ width }, i) => label(String(i + 1), width)),
    // a spare may have to take the place of any
    ...Array.from({ length: spareStaves }, (_, i) => label(`+${i + 1}`, widest)),
  ];
}
