/** The vessel in the middle of the page: a picture of it, with the figures that make it as boxes to type into. */
import { useComputed, useSignal } from '@preact/signals';
import type { JSX } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import { vesselPicture } from '../../index.js';
import { FieldBox } from '../settings/field-box.js';
import { keyOf } from '../state/fields.js';
import { headsApart } from '../state/heads-apart.js';
import { outOfDate, vessel } from '../state/store.js';
import { words } from '../words/index.js';
import { Capacity } from './capacity.js';
import { layOut, type Figure, type Layout, type Room, type Spot } from './layout.js';
import { pathOf } from './path-data.js';

export function VesselView(): JSX.Element {
  const element = useRef<HTMLDivElement>(null);
  const room = useSignal<Room>({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const measure = (): void => {
      const { clientWidth: width, clientHeight: height } = element.current!;
      room.value = { width, height };
    };
    const observer = new ResizeObserver(measure);
    measure();
    observer.observe(element.current!);
    return () => observer.disconnect();
  }, [room]);
  const layout = useComputed(() =>
    vessel.value && room.value.width > 0
      ? layOut(vessel.value, room.value, headsApart.value)
      : null,
  );
  return (
    <section
      class={`vessel${outOfDate.value ? ' out-of-date' : ''}`}
      ref={element}
      aria-label={words.value.vessel.picture}
    >
      {layout.value && <Picture layout={layout.value} room={room.value} />}
      {layout.value?.figures.map((figure) => (
        <FigureBox key={keyOf(figure.field)} figure={figure} />
      ))}
      {layout.value && <Capacity at={layout.value.inside} />}
      {outOfDate.value && <p class="lag">{words.value.vessel.outOfDate}</p>}
    </section>
  );
}

function FigureBox({ figure: { field, label, at } }: { figure: Figure }): JSX.Element {
  return (
    <div class="figure-box" style={{ left: `${at.x}px`, top: `${at.y}px` }}>
      <FieldBox
        field={field}
        place="drawing"
        {...(label !== undefined && { label: words.value.hoops.name(label) })}
      />
    </div>
  );
}

function Picture({ layout, room }: { layout: Layout; room: Room }): JSX.Element {
  const { scale, origin, figures } = layout;
  const { wood, steel, seen } = vesselPicture(vessel.value!);
  const reach = (scale * vessel.value!.spec.height) / 2 + 24;
  const turned = `translate(${origin.x} ${origin.y}) scale(${scale})`;
  const on = (layer: string): string => pathOf(seen.filter((stroke) => stroke.layer === layer));
  return (
    <svg class="picture" width={room.width} height={room.height} aria-hidden="true">
      <Patterns />
      <g transform={turned}>
        <path class="station" d={on('station')} />
        <path class="joint" d={on('joint')} />
        <path class="wood" d={pathOf(wood)} />
        <path class="steel" d={pathOf(steel)} />
      </g>
      <path class="centre" d={`M${origin.x} ${origin.y - reach}V${origin.y + reach}`} />
      {figures.map((figure) => (
        <FigureLine key={keyOf(figure.field)} figure={figure} />
      ))}
    </svg>
  );
}

function Patterns(): JSX.Element {
  return (
    <defs>
      <pattern
        id="grain"
        width="7"
        height="7"
        patternUnits="userSpaceOnUse"
        patternTransform="rotate(45)"
      >
        <path class="hatch" d="M0 0V7" />
      </pattern>
      <marker
        id="arrow"
        viewBox="0 0 12 8"
        refX="12"
        refY="4"
        markerWidth="12"
        markerHeight="8"
        markerUnits="userSpaceOnUse"
        orient="auto-start-reverse"
      >
        <path d="M0 1L12 4L0 7Z" />
      </marker>
    </defs>
  );
}

function FigureLine({ figure: { line, arrows } }: { figure: Figure }): JSX.Element {
  const data = line.map(({ x, y }: Spot, i) => `${i === 0 ? 'M' : 'L'}${x} ${y}`).join('');
  return (
    <path
      class="dimension"
      d={data}
      marker-end="url(#arrow)"
      {...(arrows === 'both' && { 'marker-start': 'url(#arrow)' })}
    />
  );
}
