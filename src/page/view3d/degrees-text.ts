/** An angle as the page writes it. */
import { numberText } from '../words/index.js';

export const degreesText = (degrees: number): string => `${numberText(degrees, 2)}°`;
