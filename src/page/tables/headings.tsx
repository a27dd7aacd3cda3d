/** The headings of a table's columns. */
import type { JSX } from 'preact';

export function Headings({ of }: { of: readonly string[] }): JSX.Element {
  return (
    <thead>
      <tr>
        {of.map((heading) => (
          <th key={heading} scope="col">
            {heading}
          </th>
        ))}
      </tr>
    </thead>
  );
}
