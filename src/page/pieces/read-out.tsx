/** What is under the pointer, or in the middle; what was measured. */
import type { JSX } from 'preact';
import type { Drawing, Point } from '../../index.js';
import { vessel } from '../state/store.js';
import { lengthWords, numberText, words } from '../words/index.js';
import type { Measured } from './measuring.js';
import { staveStation } from './stave-station.js';

interface ReadOutProps {
  readonly piece: string;
  readonly drawing: Drawing;
  readonly at: Point;
  readonly measuring: boolean;
  readonly measured: Measured | null;
}

export function ReadOut({ piece, drawing, at, measuring, measured }: ReadOutProps): JSX.Element {
  const { viewer } = words.value;
  const full = drawing.scale ?? 1;
  const length = (mm: number): string => lengthWords(mm / full);
  const station = vessel.value && staveStation(vessel.value, piece, at.x);
  return (
    <div class="read-out">
      <output aria-live="off" data-read="place">
        {station
          ? viewer.station(
              lengthWords(station.station),
              lengthWords(station.width),
              `${numberText(station.bevelDegrees, 2)}°`,
              lengthWords(station.thickness),
            )
          : viewer.place(length(at.x), length(at.y))}
      </output>
      {measuring && (
        <output aria-live="polite" data-read="measured">
          {measured
            ? viewer.measured(length(measured.distance), length(measured.dx), length(measured.dy))
            : viewer.takePoints}
        </output>
      )}
    </div>
  );
}
