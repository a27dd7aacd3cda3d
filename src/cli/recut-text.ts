/** What `recut` made of a vessel, for people. */
import { capacityLitres, type Recut, type Vessel } from '../index.js';
import { changesText } from './changes-text.js';
import { pairs } from './columns.js';
import { figureFormat, type FigureFormat } from './figure-format.js';
import type { CliWords } from './words.js';

export function recutText(made: Recut, old: Vessel, words: CliWords): string {
  const format = figureFormat(old.spec.units, words);
  const say = words.recut;
  const { litres, length, gap } = format;
  const { residual, vessel } = made;
  const headsBefore = old.heads.bottom.diameter;
  return [
    `${words.changes.capacity(litres(capacityLitres(old), 1), litres(capacityLitres(vessel), 1))}\n`,
    changesText(made.changes, old.spec, format),
    pairs([
      [say.head, `${length(headsBefore)} -> ${length(vessel.heads.bottom.diameter)}`],
      [say.outside, say.atMost(gap(residual.outside))],
      [say.inside, say.atMost(gap(residual.inside))],
    ]),
    grooveText(made, format),
  ].join('');
}

function grooveText({ oldGrooves }: Recut, { length, words }: FigureFormat): string {
  const { groove } = words.recut;
  const lines = oldGrooves.map(({ end, fromEnd, state }) =>
    groove[state](words.ends[end], length(fromEnd)),
  );
  return lines.map((line) => `  ${line}\n`).join('');
}
