/** What keys do to the view in space. */
import type { VesselScene } from './scene.js';

const step = Math.PI / 18;

export const keys = (scene: VesselScene): Readonly<Record<string, () => void>> => ({
  ArrowLeft: () => scene.turn(-step, 0),
  ArrowRight: () => scene.turn(step, 0),
  ArrowUp: () => scene.turn(0, -step),
  ArrowDown: () => scene.turn(0, step),
  '+': () => scene.zoom(1.2),
  '=': () => scene.zoom(1.2),
  '-': () => scene.zoom(1 / 1.2),
  '0': () => scene.reset(),
});
