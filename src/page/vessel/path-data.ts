/** Lines of drawings as path data for the screen: `y` downwards, one path for many lines. */
import { curveData, type Stroke } from '../../index.js';

const flip = ({ x, y }: { x: number; y: number }): { x: number; y: number } => ({ x, y: -y });

export const pathOf = (strokes: readonly Pick<Stroke, 'curve'>[]): string =>
  strokes.map(({ curve }) => curveData(curve, flip)).join('');
