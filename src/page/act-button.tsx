/** A button that may be of no use for now: it says so, but keeps the keyboard's place, which the browser takes from a disabled one. */
import type { ComponentChildren, JSX } from 'preact';

interface ActButtonProps {
  readonly act: () => void;
  /** of no use for now */
  readonly off: boolean;
  readonly busy?: boolean;
  readonly id?: string;
  readonly class?: string;
  readonly children: ComponentChildren;
}

export function ActButton({
  act,
  off,
  busy,
  id,
  class: own,
  children,
}: ActButtonProps): JSX.Element {
  return (
    <button
      type="button"
      id={id}
      class={own}
      aria-disabled={off}
      aria-busy={busy}
      onClick={() => {
        if (!off) act();
      }}
    >
      {children}
    </button>
  );
}
