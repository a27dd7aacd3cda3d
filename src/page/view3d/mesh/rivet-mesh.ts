/** The head of a rivet: a dome on a flat. */
import type { MeshMaker, Place } from './mesh.js';

const around = 16;
const rings = 4;

/** A place on the strap, and two ways along it and the way out, each of length 1, which make a right hand. */
export interface Seat {
  readonly at: Place;
  readonly along: Place;
  readonly across: Place;
  readonly out: Place;
}

/** Adds a piece of a ball of this width and height. */
export function rivetHeadOn(make: MeshMaker, seat: Seat, width: number, height: number): void {
  // radius of a ball whose cap of that height is so wide, by the intersecting chords
  const ball = ((width / 2) ** 2 + height ** 2) / (2 * height);
  const reach = Math.acos(1 - height / ball);
  const circles = Array.from({ length: rings + 1 }, (_, k) => {
    const down = reach * (1 - k / rings);
    return circle(seat, ball * Math.sin(down), ball * Math.cos(down) - (ball - height));
  });
  make.patch(circles);
  make.patch([circle(seat, 0, 0), circles[0]!]);
  make.edge(circles[0]!);
}

/** Anticlockwise seen from outside. */
function circle({ at, along, across, out }: Seat, radius: number, up: number): Place[] {
  const places = Array.from({ length: around }, (_, i): Place => {
    const turn = (i / around) * 2 * Math.PI;
    const [a, b] = [radius * Math.cos(turn), radius * Math.sin(turn)];
    const part = (k: 0 | 1 | 2): number => at[k] + a * along[k] + b * across[k] + up * out[k];
    return [part(0), part(1), part(2)];
  });
  return [...places, places[0]!];
}
