/** Puts what sizing found into the spec's text, as one step. */
import { writtenLength, type Change, type Spec } from '../../index.js';
import { has, parseSpec, setInSpec, type Path, type Plain } from '../state/edit-spec.js';
import { withHoops } from '../state/field-values.js';
import { spec, writeText } from '../state/store.js';

/** Hoops and thicknesses that the file leaves to their defaults follow by themselves. */
export function applyChanges(sized: Spec, changes: readonly Change[]): void {
  const given = changes.filter(({ key }) => !isDefault(pathOf(key)));
  let text = withHoops([]);
  for (const { key, to } of given) {
    const path = pathOf(key);
    const value: Plain = key === 'staves.widths' ? widthsOf(sized) : writtenLength(to, sized.units);
    text = text === null ? null : setInSpec(text, path, value);
  }
  if (text !== null && parseSpec(text)) writeText(text);
}

const pathOf = (key: string): Path =>
  key
    .split(/[.[\]]+/)
    .filter((step) => step !== '')
    .map((step) => (/^\d+$/.test(step) ? Number(step) : step));

const isDefault = (path: Path): boolean => path.length > 1 && !has(spec.value, path);

const widthsOf = ({ staves, units }: Spec): Plain =>
  (staves.widths ?? []).map((width) => writtenLength(width, units));
