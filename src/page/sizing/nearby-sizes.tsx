/** Round sizes near the one that was found, each to take over at a touch. */
import type { JSX } from 'preact';
import { writtenLength, type Sized } from '../../index.js';
import { setInSpec } from '../state/edit-spec.js';
import { text, writeText } from '../state/store.js';
import { lengthWords, numberText, words } from '../words/index.js';
import { Scroll } from '../tables/plain-table.js';

type Nearby = Sized['nearby'][number];

export function NearbySizes({ found: { nearby, spec } }: { found: Sized }): JSX.Element | null {
  const { sizing, fields } = words.value;
  if (nearby.length === 0) return null;
  const names =
    spec.vessel === 'cask' ? (['bilge', 'ends'] as const) : (['top', 'bottom'] as const);
  return (
    <Scroll title={sizing.nearby}>
      <table>
        <caption>{sizing.nearby}</caption>
        <thead>
          <tr>
            <th scope="col">{fields['height']}</th>
            {names.map((name) => (
              <th key={name} scope="col">
                {fields[name]}
              </th>
            ))}
            <th scope="col">{words.value.vessel.litres}</th>
            <td />
          </tr>
        </thead>
        <tbody>
          {nearby.map((size, i) => (
            <tr key={i}>
              <td>{lengthWords(size.height)}</td>
              {names.map((name) => (
                <td key={name}>{lengthWords(diameters(size)[name] ?? 0)}</td>
              ))}
              <td>{numberText(size.litres, 2)}</td>
              <td>
                <button type="button" onClick={() => take(size, spec.units)}>
                  {sizing.take}
                </button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

const diameters = ({ outside }: Nearby): Partial<Record<string, number>> =>
  outside.kind === 'cask'
    ? { bilge: outside.bilge, ends: outside.ends }
    : { top: outside.top, bottom: outside.bottom };

function take(size: Nearby, units: 'mm' | 'in'): void {
  const changes = { height: size.height, ...diameters(size) };
  let changed: string | null = text.value;
  for (const [key, mm] of Object.entries(changes))
    changed = changed === null ? null : setInSpec(changed, [key], writtenLength(mm ?? 0, units));
  if (changed !== null) writeText(changed);
}
