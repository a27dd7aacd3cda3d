/** Marks of staves: the next one in the row that somebody has begun. */

/** `7` after `6`, `B08` after `B07`, `A2` after `A`; further on while one is taken. */
export function nextMark(last: string, taken: ReadonlySet<string>): string {
  const [, stem = '', digits = ''] = /^(.*?)(\d{0,9})$/su.exec(last) ?? [];
  let number = digits === '' ? (stem === '' ? 0 : 1) : Number(digits);
  for (;;) {
    number++;
    const mark = stem + String(number).padStart(digits.length, '0');
    if (!taken.has(mark)) return mark;
  }
}
