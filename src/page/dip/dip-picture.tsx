/** The vessel from the side with its wood, and the level that the rod has found. */
import type { JSX } from 'preact';
import { vesselPicture, type Posture, type Vessel } from '../../index.js';
import { pathOf } from '../vessel/path-data.js';

interface Props {
  readonly vessel: Vessel;
  readonly posture: Posture;
  /** mm on the rod */
  readonly depth: number;
}

export function DipPicture({ vessel, posture, depth }: Props): JSX.Element {
  const { spec, wall, heads, profile } = vessel;
  const end = spec.height / 2;
  const radius = Math.max(profile.radius(0), profile.radius(end), profile.radius(-end));
  const lies = posture === 'lying';
  const [width, height] = lies ? [spec.height, 2 * radius] : [2 * radius, spec.height];
  const bottom = heads.bottom.insideFace;
  const top = heads.top?.insideFace ?? end;
  const lowest = Math.max(wall.insideRadius(0), wall.insideRadius(top), wall.insideRadius(bottom));
  const level = lies ? lowest - depth : -(bottom + depth);
  const room = 0.06 * Math.max(width, height);
  const box = [-width / 2 - room, -height / 2 - room, width + 2 * room, height + 2 * room];
  const bungSide = pathOf(vesselPicture(vessel).wood);
  const otherSide = pathOf(vesselPicture({ ...vessel, spec: { ...spec, bung: null } }).wood);
  // the bung is on the right of the section: upwards when the vessel lies
  const turn = lies ? 'rotate(-90)' : '';
  return (
    <svg class="level" viewBox={box.join(' ')} aria-hidden="true">
      <defs>
        <clipPath id="wet">
          <rect x={-width} y={level} width={2 * width} height={2 * height} />
        </clipPath>
      </defs>
      <g transform={turn}>
        <path class="inside" d={insidePath(vessel, bottom, top)} />
      </g>
      <g clip-path="url(#wet)">
        <path class="wet" d={insidePath(vessel, bottom, top)} transform={turn} />
      </g>
      <g transform={turn}>
        <path class="wood" d={bungSide} />
        <path class="wood" d={otherSide} transform="scale(-1 1)" />
      </g>
      <path class="rod" d={`M0 ${-height / 2 - room}V${lies ? lowest : -bottom}`} />
      <path class="dimension" d={`M${-width / 2} ${level}H${width / 2}`} />
    </svg>
  );
}

const samples = 24;

/** The inside between the heads, closed, `y` downwards. */
function insidePath({ wall }: Vessel, bottom: number, top: number): string {
  const heights = Array.from(
    { length: samples + 1 },
    (_, i) => bottom + ((top - bottom) * i) / samples,
  );
  const right = heights.map((z) => `${wall.insideRadius(z)} ${-z}`);
  const left = [...heights].reverse().map((z) => `${-wall.insideRadius(z)} ${-z}`);
  return `M${[...right, ...left].join('L')}Z`;
}
