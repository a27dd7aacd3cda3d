/** The drawing itself, as its SVG file shows it, and the marks of a measurement. */
import type { JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { svgOrigin, toSvg, type Drawing, type Point } from '../../index.js';

export function Lines({ drawing, viewBox }: { drawing: Drawing; viewBox: string }): JSX.Element {
  const group = useRef<SVGGElement>(null);
  useLayoutEffect(() => {
    const file = new DOMParser().parseFromString(toSvg(drawing), 'image/svg+xml');
    group.current!.replaceChildren(...file.querySelectorAll('svg > g'));
  }, [drawing]);
  const { x, y } = svgOrigin(drawing);
  return (
    <svg class="lines" viewBox={viewBox} aria-hidden="true">
      <g ref={group} transform={`translate(${x} ${-y})`} />
    </svg>
  );
}

export function Marks({ points }: { points: readonly Point[] }): JSX.Element {
  const [from, to] = points;
  return (
    <svg class="marks" aria-hidden="true">
      {from && to && <path d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />}
      {points.map(({ x, y }, i) => (
        <path key={i} d={`M${x - 9} ${y}H${x + 9}M${x} ${y - 9}V${y + 9}`} />
      ))}
    </svg>
  );
}
