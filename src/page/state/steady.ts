/** Values that stay the very same as long as they say the same, so that nothing is shown anew that looks as before. */
import { computed, type ReadonlySignal } from '@preact/signals';
import { useMemo } from 'preact/hooks';

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

/** The same within a component, for as long as it is about the same `key`. */
export const useSteady = <Value>(compute: () => Value, key: string): Value =>
  useMemo(() => steady(compute), [key]).value;
