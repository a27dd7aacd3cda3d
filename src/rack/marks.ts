/** The order in which marks are read out: A2 comes before A10. */

/** Negative when `a` comes first. Runs of digits count as numbers, all else by code unit, the same on every machine. */
export function readingOrder(a: string, b: string): number {
  const [left, right] = [partsOf(a), partsOf(b)];
  for (const [k, part] of left.entries()) {
    const other = right[k];
    if (other === undefined) return 1;
    if (part === other) continue;
    const [many, few] = [Number(part), Number(other)];
    if (isDigits(part) && isDigits(other) && many !== few) return many - few;
    return part < other ? -1 : 1;
  }
  return left.length - right.length;
}

function partsOf(mark: string): readonly string[] {
  return mark.match(/\d+|\D+/g) ?? [];
}

function isDigits(part: string): boolean {
  return /^\d/.test(part);
}
