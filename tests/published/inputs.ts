/** What an entry of `sources/` hands to a measure. */
export type Inputs = Record<string, number | string>;
export type Measure = (inputs: Inputs) => number | Promise<number>;

export function numberIn(inputs: Inputs, key: string): number {
  const value = inputs[key];
  if (typeof value !== 'number') throw new Error(`${key} must be a number`);
  return value;
}
