/** What the browser keeps: at once or soon, and nothing is lost when the page is left before that. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { keep, keepNow, keepSoon, kept } from '../../../src/page/state/kept.js';

const written: [name: string, value: string][] = [];

beforeEach(() => {
  vi.useFakeTimers();
  const store = new Map<string, string>();
  written.length = 0;
  vi.stubGlobal('localStorage', {
    getItem: (name: string) => store.get(name) ?? null,
    setItem: (name: string, value: string) => {
      written.push([name, value]);
      store.set(name, value);
    },
  });
});

afterEach(() => {
  vi.unstubAllGlobals();
  vi.useRealTimers();
});

describe('what is kept', () => {
  it('is there at once', () => {
    keep('look', 'dark');
    expect(kept('look')).toBe('dark');
    expect(kept('other')).toBeNull();
  });

  it('is written soon, and only the last of what came in a row', () => {
    for (const text of ['height: 9', 'height: 94', 'height: 945']) {
      keepSoon('spec', text);
      vi.advanceTimersByTime(100);
    }
    expect(written).toEqual([]);
    vi.advanceTimersByTime(1000);
    expect(written).toEqual([['staveloft.spec', 'height: 945']]);
  });

  it('is written once when the page is left before that', () => {
    keepSoon('spec', 'height: 945');
    keepSoon('file', 'keg.yaml');
    keepNow();
    expect(kept('spec')).toBe('height: 945');
    expect(kept('file')).toBe('keg.yaml');
    vi.advanceTimersByTime(1000);
    expect(written).toHaveLength(2);
  });

  it('is nothing where the browser keeps nothing, and nobody is disturbed', () => {
    vi.stubGlobal('localStorage', undefined);
    keep('spec', 'height: 945');
    keepSoon('spec', 'height: 945');
    keepNow();
    expect(kept('spec')).toBeNull();
  });
});
