/** What `recut` made of a vessel, for people. */
import { capacityLitres, type Recut, type Vessel } from '../index.js';
import { changesText } from './changes-text.js';
import { pairs } from './columns.js';
import { figureFormat, type FigureFormat } from './figure-format.js';

export function recutText(made: Recut, old: Vessel): string {
  const format = figureFormat(old.spec.units);
  const { litres, length, gap } = format;
  const { residual, vessel } = made;
  const headsBefore = old.heads.bottom.diameter;
  return [
    `capacity ${litres(capacityLitres(old), 1)} -> ${litres(capacityLitres(vessel), 1)}\n`,
    changesText(made.changes, old.spec, format),
    pairs([
      ['head', `${length(headsBefore)} -> ${length(vessel.heads.bottom.diameter)}`],
      ['outside of the spec, off the wood', `${gap(residual.outside)} at most`],
      ['inside', `${gap(residual.inside)} at most`],
    ]),
    grooveText(made, format),
  ].join('');
}

function grooveText({ oldGrooves }: Recut, { length }: FigureFormat): string {
  const lines = oldGrooves.map(({ end, fromEnd, state }) => {
    const words = {
      gone: 'is cut off',
      same: 'stays in use',
      beside: `stays in the chime, its middle ${length(fromEnd)} from the new end: fill it, or plane it into the howel`,
      meets: `lies ${length(fromEnd)} from the new end and runs into the new one: cut more off, or change heads.croze.inset`,
    };
    return `  old groove, ${end}: ${words[state]}\n`;
  });
  return lines.join('');
}
