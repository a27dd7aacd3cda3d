/** The parts of the page below the drawing, one of which is open at a time. */
import { signal } from '@preact/signals';

export const partNames = [
  'settings',
  'sizing',
  'space',
  'numbers',
  'dip',
  'slips',
  'output',
  'text',
] as const;
export type PartName = (typeof partNames)[number];

export const part = signal<PartName>('settings');

/** Opens a part and moves there, so that the keyboard carries on in it. */
export function openPart(name: PartName): void {
  part.value = name;
  requestAnimationFrame(() => {
    const tab = document.getElementById(`tab-${name}`);
    tab?.focus();
    tab?.scrollIntoView({ block: 'nearest' });
  });
}
