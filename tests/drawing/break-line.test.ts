import { expect, it } from 'vitest';
import { breakLine } from '../../src/drawing/break-line.js';
import { boundsOf } from '../../src/geometry/measure.js';

it('crosses from edge to edge and past both, and swings to both sides alike in the middle', () => {
  const { vertices, closed } = breakLine(50, 30, -10);
  expect(closed).toBe(false);
  expect(boundsOf({ vertices, closed })).toEqual({ minX: 48, maxX: 52, minY: -12, maxY: 32 });
  expect(vertices[0]).toMatchObject({ x: 50, y: 32 });
  expect(vertices.at(-1)).toMatchObject({ x: 50, y: -12 });
  // turned by half a circle about its middle it is itself
  const turned = vertices.map(({ x, y }) => ({ x: 100 - x, y: 20 - y })).reverse();
  turned.forEach((point, i) => expect(vertices[i]).toMatchObject(point));
});
