/** Offsets in a text as lines and columns, both from 1. The lines are only looked for once somebody asks. */

export interface Place {
  line: number;
  column: number;
}

export type PlaceAt = (offset: number) => Place;

export function placesIn(text: string): PlaceAt {
  let starts: number[] | null = null;
  return (offset) => {
    starts ??= lineStarts(text);
    const within = Math.min(Math.max(0, offset), text.length);
    let [low, high] = [0, starts.length];
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (starts[middle]! <= within) low = middle;
      else high = middle;
    }
    return { line: low + 1, column: within - starts[low]! + 1 };
  };
}

function lineStarts(text: string): number[] {
  const starts = [0];
  for (let at = text.indexOf('\n'); at >= 0; at = text.indexOf('\n', at + 1)) starts.push(at + 1);
  return starts;
}
