/** The vessel and its boxes fit the screen, whatever the vessel and the screen. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { planVessel } from '../../../src/index.js';
import { boxSize, layOut, type Spot } from '../../../src/page/vessel/layout.js';

const templates = fileURLToPath(new URL('../../../templates', import.meta.url));
const screens = [
  { width: 360, height: 480 },
  { width: 820, height: 800 },
  { width: 1366, height: 680 },
];

describe.each(readdirSync(templates).filter((name) => name.endsWith('.yaml')))('%s', (name) => {
  const vessel = planVessel(readFileSync(join(templates, name), 'utf8'), name).vessel!;

  it.each(screens)('on $width by $height: boxes lie inside and clear of one another', (room) => {
    const { figures, scale } = layOut(vessel, room);
    expect(scale).toBeGreaterThan(0);
    for (const { at } of figures) {
      expect(at.x - boxSize.width / 2).toBeGreaterThanOrEqual(0);
      expect(at.x + boxSize.width / 2).toBeLessThanOrEqual(room.width);
      expect(at.y - boxSize.height / 2).toBeGreaterThanOrEqual(-1);
      expect(at.y + boxSize.height / 2).toBeLessThanOrEqual(room.height + 1);
    }
    for (const [i, a] of figures.entries())
      for (const b of figures.slice(i + 1)) {
        const apart =
          Math.abs(a.at.x - b.at.x) >= boxSize.width - 1 ||
          Math.abs(a.at.y - b.at.y) >= boxSize.height - 1;
        expect(apart, `${a.field.path.join('.')} and ${b.field.path.join('.')}`).toBe(true);
      }
  });

  it.each(screens)('on $width by $height: no leader crosses a box', (room) => {
    const { figures } = layOut(vessel, room);
    for (const { line, field } of figures.filter(({ arrows }) => arrows === 'last')) {
      const [from, to] = line as [Spot, Spot];
      for (const other of figures)
        for (let k = 0; k <= 100; k++) {
          const x = from.x + (k / 100) * (to.x - from.x);
          const y = from.y + (k / 100) * (to.y - from.y);
          const inside =
            Math.abs(x - other.at.x) < boxSize.width / 2 - 1 &&
            Math.abs(y - other.at.y) < boxSize.height / 2 - 1;
          expect(inside, `${field.path.join('.')} over ${other.field.path.join('.')}`).toBe(false);
        }
    }
  });

  it('ends the leader of a hoop on that hoop', () => {
    const { figures, scale } = layOut(vessel, screens[2]!);
    const [high, low] = figures.find(({ field }) => field.path[0] === 'height')!.line;
    const hoops = figures.filter(({ field }) => field.path[0] === 'hoops');
    expect(hoops).toHaveLength(vessel.spec.hoops.length);
    for (const { field, line } of hoops) {
      const { end, offset, width } = vessel.spec.hoops[Number(field.path[1])]!;
      const fromEnd = end === 'bottom' ? low!.y - line[1]!.y : line[1]!.y - high!.y;
      expect(fromEnd / scale).toBeGreaterThan(offset);
      expect(fromEnd / scale).toBeLessThan(offset + width);
    }
  });

  it('ends dimension lines at the vessel’s own sizes', () => {
    const { figures, scale } = layOut(vessel, screens[2]!);
    const height = figures.find(({ field }) => field.path[0] === 'height')!;
    const [a, b] = height.line;
    expect(Math.abs(a!.y - b!.y)).toBeCloseTo(vessel.spec.height * scale, 6);
  });
});

it('boxes of hoops that crowd together are moved apart, none off the screen', () => {
  const hoops = [3, 40, 77, 114].map(
    (offset) => `{ name: at ${offset}, end: top, offset: ${offset}, width: 30 }`,
  );
  const text =
    'vessel: cask\nunits: mm\nheight: 945\nbilge: 678\nends: 572\nstaves: { count: 28 }\n' +
    `hoops: [${hoops.join(', ')}]\n`;
  const { figures } = layOut(planVessel(text, 'test.yaml').vessel!, screens[1]!);
  const ys = figures.filter(({ field }) => field.path[0] === 'hoops').map(({ at }) => at.y);
  expect(ys).toHaveLength(4);
  expect(ys[0]).toBeGreaterThanOrEqual(boxSize.height / 2);
  ys.slice(1).forEach((y, i) => expect(y - ys[i]!).toBeGreaterThanOrEqual(boxSize.height));
});
