/** One of several names, chosen from a list. */
import type { JSX } from 'preact';

interface ChoiceProps<Name extends string> {
  readonly id: string;
  readonly label: string;
  readonly chosen: Name;
  readonly names: readonly Name[];
  readonly say: (name: Name) => string;
  readonly choose: (name: Name) => void;
  /** beside that of every field */
  readonly class?: string;
}

export function Choice<Name extends string>(props: ChoiceProps<Name>): JSX.Element {
  const { id, label, chosen, names, say, choose, class: own } = props;
  return (
    <div class={own ? `field ${own}` : 'field'}>
      <label for={id}>{label}</label>
      <select
        id={id}
        value={chosen}
        onChange={({ currentTarget }) => choose(names[currentTarget.selectedIndex]!)}
      >
        {names.map((name) => (
          <option key={name} value={name}>
            {say(name)}
          </option>
        ))}
      </select>
    </div>
  );
}
