import { describe, expect, it } from 'vitest';
import { drawingOf, label, strokes } from '../../src/drawing/build.js';
import { paperView } from '../../src/drawing/for-paper.js';
import { line } from '../../src/geometry/curve.js';

const rule = (length: number) => strokes('outline', line({ x: 0, y: 0 }, { x: length, y: 0 }));
const legend = { notes: ['broken'], tables: [] };

describe('the view for paper', () => {
  it('is the drawing itself when it has no shorter one', () => {
    const drawing = drawingOf('a', 'A', rule(2000));
    expect(paperView(drawing)).toEqual(drawing);
  });

  it('has the shorter lines, lettering and legend under the same name, title and subject', () => {
    const part = { ...rule(200), letterings: label('short', { x: 0, y: 5 }).letterings };
    const whole = {
      ...drawingOf('a', 'A', rule(2000)),
      subject: 'S',
      forPaper: { ...part, legend },
    };
    expect(paperView(whole)).toEqual({ name: 'a', title: 'A', subject: 'S', ...part, legend });
  });
});
