/** What stands in each box: the file's own words, or the default that the vessel has. */
import { computed } from '@preact/signals';
import { keysOf, writeSpec, type Message } from '../../index.js';
import { has, parseSpec, replaceInSpec, setInSpec, type Path, type Plain } from './edit-spec.js';
import { keyOf, type Field } from './fields.js';
import { findText, sameNumber } from './head-keys.js';
import { messages, spec, text, units, vessel, writeText } from './store.js';

/** The spec with every key in it. */
const whole = computed(() => (vessel.value ? keysOf(vessel.value.spec) : null));

export interface FieldValue {
  readonly text: string;
  /** whether it is a default: the file doesn't say, or not of this head alone */
  readonly byDefault: boolean;
}

export function valueOf({ path, kind }: Field): FieldValue {
  const { text: found, byDefault, isOwn } = findText(spec.value, whole.value, path);
  return { text: kind === 'length' && !isOwn ? shortened(found) : found, byDefault };
}

/** Defaults are round; what hangs on a conversion is shown to a thousandth of a millimetre. */
function shortened(found: string): string {
  const decimals = units.value === 'mm' ? 3 : 4;
  return /^-?\d+\.\d{4,}$/.test(found) ? String(Number(Number(found).toFixed(decimals))) : found;
}

/** False where the text is not YAML. */
export function writeField({ path }: Field, value: Plain, group: string): boolean {
  const before = withHoops(path);
  const changed = before === null ? null : setInSpec(before, path, value);
  if (changed !== null) writeText(changed, group);
  return changed !== null;
}

/** Hoops are all given or all by default: to change one, all are written out. */
export function withHoops(path: Path): string | null {
  const needed = path[0] === 'hoops' && !has(spec.value, ['hoops']);
  const written = needed && vessel.value ? parseSpec(writeSpec(vessel.value.spec)) : null;
  const hoops = written?.getIn(['hoops'], true);
  return hoops ? replaceInSpec(text.value, ['hoops'], hoops) : text.value;
}

const byKey = computed(() => {
  const map = new Map<string, Message[]>();
  for (const message of messages.value) {
    map.set(message.key, [...(map.get(message.key) ?? []), message]);
  }
  return map;
});

export const messagesAt = ({ path }: Field): readonly Message[] =>
  sameNumber(path).flatMap((place) => byKey.value.get(keyOf({ path: place })) ?? []);
