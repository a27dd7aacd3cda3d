/** Values that stay the very same as long as they say the same, so that nothing is shown anew that looks as before. */
import { computed, type ReadonlySignal } from '@preact/signals';

/** For plain data, which is compared as JSON. */
export function steady<Value>(compute: () => Value): ReadonlySignal<Value> {
  let known: { readonly value: Value; readonly text: string } | null = null;
  return computed(() => {
    const value = compute();
    const text = JSON.stringify(value);
    if (known?.text !== text) known = { value, text };
    return known.value;
  });
}
