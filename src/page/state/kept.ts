/** What the browser keeps between two visits, where it lets us: some keep nothing of a file that was opened from a folder. */

const prefix = 'staveloft.';

export function kept(name: string): string | null {
  try {
    return localStorage.getItem(prefix + name);
  } catch {
    return null;
  }
}

export function keep(name: string, value: string): void {
  try {
    localStorage.setItem(prefix + name, value);
  } catch {
    // full or forbidden: the page works all the same, and saving to a file is always there
  }
}

/** ms */
const pause = 300;
const waiting = new Map<string, string>();
let timer: ReturnType<typeof setTimeout> | undefined;

/** The same once nothing new comes for a while, and at the latest when the page is left or put aside. */
export function keepSoon(name: string, value: string): void {
  waiting.set(name, value);
  clearTimeout(timer);
  timer = setTimeout(keepNow, pause);
}

export function keepNow(): void {
  clearTimeout(timer);
  waiting.forEach((value, name) => keep(name, value));
  waiting.clear();
}
