/** Hoops come and go. */
import { writtenLength } from '../../index.js';
import { parseSpec, removeFromSpec, replaceInSpec } from './edit-spec.js';
import { withHoops } from './field-values.js';
import { units, vessel, writeText } from './store.js';

export function removeHoop(i: number): void {
  const before = withHoops(['hoops', i]);
  const changed = before === null ? null : removeFromSpec(before, ['hoops', i]);
  if (changed !== null) writeText(changed);
}

/** As wide as the last one, and a hand's breadth further from the end. */
export function addHoop(): void {
  const before = withHoops(['hoops']);
  const hoops = vessel.value?.spec.hoops ?? [];
  if (before === null || !vessel.value) return;
  const last = hoops.at(-1) ?? { offset: 0, width: 32, thickness: 1.5, lap: 60 };
  const length = (mm: number): string => String(writtenLength(Math.round(mm), units.value));
  const hoop = {
    name: freeName(hoops.map(({ name }) => name)),
    end: vessel.value.spec.vessel === 'cask' ? 'both' : 'bottom',
    offset: length(last.offset + 2 * last.width),
    width: String(writtenLength(last.width, units.value)),
  };
  const document = parseSpec(before);
  const node = document?.createNode(hoop, { flow: true });
  const changed = replaceInSpec(before, ['hoops', hoops.length], node);
  if (changed !== null) writeText(changed);
}

function freeName(names: readonly string[]): string {
  let number = names.length + 1;
  while (names.includes(`hoop ${number}`)) number++;
  return `hoop ${number}`;
}
