/** A steady value changes when what it says does, and is the very same otherwise. */
import { effect, signal } from '@preact/signals';
import { describe, expect, it } from 'vitest';
import { steady } from '../../../src/page/state/steady.js';

describe('a steady value', () => {
  it('is the very same while it says the same, and tells nobody', () => {
    const source = signal(1.2);
    const whole = steady(() => ({ whole: Math.floor(source.value) }));
    const first = whole.value;
    let told = 0;
    effect(() => {
      told += whole.value.whole;
    });
    source.value = 1.7;
    expect(whole.value).toBe(first);
    expect(told).toBe(1);
    source.value = 2;
    expect(whole.value).toEqual({ whole: 2 });
    expect(told).toBe(3);
  });

  it('changes back to what it was', () => {
    const source = signal('a');
    const list = steady(() => [source.value]);
    expect(list.value).toEqual(['a']);
    source.value = 'b';
    expect(list.value).toEqual(['b']);
    source.value = 'a';
    expect(list.value).toEqual(['a']);
  });
});
