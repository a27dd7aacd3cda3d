/** The options of `draw`, and what can be wrong with them together or with a vessel. */
import {
  fanFault,
  largestPlank,
  mostFanWidths,
  plankFault,
  type DrawOptions,
  type Vessel,
} from '../index.js';
import type { Speaking } from './language-option.js';
import type { Plank, Range } from './option-values.js';

export interface DrawingOptions extends Speaking {
  readonly out: string;
  readonly formats: DrawOptions['formats'];
  readonly pieces?: readonly string[];
  readonly paper?: DrawOptions['paper'];
  readonly printed?: DrawOptions['printed'];
  readonly fan?: Range;
  readonly plank?: Plank;
  readonly lettering?: DrawOptions['letteringAs'];
  readonly replace?: true;
  readonly quiet?: true;
}

/** Why an option has nothing to act on, or null. A mistyped command is better refused than half done. */
export function optionWithoutUse(options: DrawingOptions): string | null {
  const { formats, pieces, paper, printed, fan, plank, lettering } = options;
  if ((paper || printed) && !formats.includes('pdf'))
    return `--${paper ? 'paper' : 'printed'} is for PDF, and --formats leaves pdf out`;
  if (lettering && !formats.includes('dxf'))
    return '--lettering is for DXF, and --formats leaves dxf out';
  if (fan && pieces && !pieces.includes('stave-fan'))
    return '--fan is for the piece stave-fan, and --pieces leaves it out';
  if (plank && pieces && !pieces.includes('head-router'))
    return '--plank is for the piece head-router, and --pieces leaves it out';
  return null;
}

/** Why a vessel cannot have a fan of these widths, or null. */
export function fanThatCannotBe(fan: Range, { spec }: Vessel): string | null {
  const fault = fanFault(inMillimetres(fan, spec.units), spec);
  if (fault === 'fan-too-wide')
    return `--fan: a stave ${fan.to} ${spec.units} wide is more than half of the vessel's diameter`;
  if (fault === 'fan-too-many')
    return `--fan: from ${fan.from} to ${fan.to} ${spec.units} is more than ${mostFanWidths} widths`;
  return null;
}

/** Why boards cannot be cut from such a plank, or null. */
export function plankThatCannotBe({ length, width }: Plank, { spec }: Vessel): string | null {
  const { from, to } = inMillimetres({ from: length, to: width }, spec.units);
  if (plankFault({ width: from, height: to }) === 'plank-too-large')
    return `--plank: ${length} by ${width} ${spec.units} is more than ${largestPlank / 1000} m`;
  return null;
}

export function inMillimetres({ from, to }: Range, units: 'mm' | 'in'): Range {
  const factor = units === 'in' ? 25.4 : 1;
  return { from: from * factor, to: to * factor };
}
