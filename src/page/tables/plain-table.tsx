/** A table with a title; its rows begin with what they are about. */
import type { ComponentChildren, JSX } from 'preact';
import { Headings } from './headings.js';

interface Props {
  readonly title: string;
  readonly headings?: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export function PlainTable({ title, headings, rows }: Props): JSX.Element {
  return (
    <Scroll title={title}>
      <table>
        <caption>{title}</caption>
        {headings && <Headings of={headings} />}
        <tbody>
          {rows.map(([first, ...rest], i) => (
            <tr key={i}>
              <th scope="row">{first}</th>
              {rest.map((cell, k) => (
                <td key={k}>{cell}</td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </Scroll>
  );
}

/** What is wider than the screen can be moved by hand or by arrow keys. */
export function Scroll({ title, children }: { title: string; children: ComponentChildren }) {
  return (
    <div class="scroll" role="region" tabIndex={0} aria-label={title}>
      {children}
    </div>
  );
}
