/** Which heads a vessel has to draw, and what their files and titles are called. */
import type { Head } from '../vessel/head.js';
import type { Vessel } from '../vessel/vessel.js';
import type { Words } from './words/index.js';

export interface NamedHead {
  readonly head: Head;
  /** `head` where one pattern serves the vessel, else `head-top` and `head-bottom` */
  readonly name: string;
  readonly title: string;
}

/** One entry where top and bottom are alike, or where there is a bottom only. */
export function namedHeads({ heads }: Vessel, words: Words): NamedHead[] {
  const { top, bottom } = heads;
  if (!top) return [{ head: bottom, name: 'head', title: words.head.title.bottom }];
  if (sameHead(top, bottom)) return [{ head: top, name: 'head', title: words.head.title.both }];
  return [
    { head: top, name: 'head-top', title: words.head.title.top },
    { head: bottom, name: 'head-bottom', title: words.head.title.bottom },
  ];
}

function sameHead(a: Head, b: Head): boolean {
  return (
    JSON.stringify(a.spec) === JSON.stringify(b.spec) && Math.abs(a.diameter - b.diameter) < 1e-9
  );
}
