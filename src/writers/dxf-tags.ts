/** The grain of a DXF file: pairs of a group code and a value, each on a line of its own, and the handles of objects. */

export type Tag = readonly [code: number, value: string | number];

/** Every line ended by LF. */
export function tagsToText(tags: readonly Tag[]): string {
  return tags.map(([code, value]) => `${code}\n${checked(value)}\n`).join('');
}

/** Throws when a value would break out of its line: whatever comes from outside goes through `dxfText` first. */
export function checked(value: string | number): string | number {
  if (typeof value === 'string' && otherThanAscii.test(value)) {
    throw new RangeError(`not 7-bit text for a DXF: ${value}`);
  }
  return value;
}

const otherThanAscii = /[^\x20-\x7e]/;

/** Hands out the handles by which a file's objects name each other, in order, after the last one given. */
export class Handles {
  constructor(private last = 0) {}

  next(): string {
    this.last += 1;
    return this.last.toString(16).toUpperCase();
  }

  /** how many there are */
  get count(): number {
    return this.last;
  }

  /** the first handle that is still free */
  get seed(): string {
    return (this.last + 1).toString(16).toUpperCase();
  }
}

/** A section of the file, around what stands in it. */
export function section(name: string, content: string): string {
  return `0\nSECTION\n2\n${name}\n${content}0\nENDSEC\n`;
}
