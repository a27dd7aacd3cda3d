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
