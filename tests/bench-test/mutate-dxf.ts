/** Spoils a DXF text on purpose, so that the bench can show that it notices. */

type Pair = [code: string, value: string];
type EditEntity = (pairs: Pair[], layer: string) => Pair[];

/** Every entity passed through `edit`; header and tables stay as they are. */
function editEntities(text: string, edit: EditEntity): string {
  const lines = text.split(/\r?\n/);
  const pairs: Pair[] = [];
  for (let i = 0; i + 1 < lines.length; i += 2) pairs.push([lines[i] ?? '', lines[i + 1] ?? '']);
  const start = pairs.findIndex(([code, value]) => code.trim() === '2' && value === 'ENTITIES') + 1;
  const length = pairs.slice(start).findIndex(([, value]) => value === 'ENDSEC');
  const entities: Pair[][] = [];
  for (const pair of pairs.slice(start, start + length)) {
    if (pair[0].trim() === '0') entities.push([pair]);
    else entities.at(-1)?.push(pair);
  }
  const edited = entities.map((entity) => edit(entity, valueOf(entity, '8')));
  const all = [...pairs.slice(0, start), ...edited.flat(), ...pairs.slice(start + length)];
  return all.map(([code, value]) => `${code}\n${value}`).join('\n') + '\n';
}

const valueOf = (pairs: Pair[], code: string): string =>
  pairs.find(([c]) => c.trim() === code)?.[1] ?? '';
const isCurve = (pairs: Pair[]): boolean => pairs[0]?.[1] === 'LWPOLYLINE';

function mapValue(pairs: Pair[], codes: string[], change: (x: number) => number): Pair[] {
  return pairs.map(([code, value]): Pair => {
    if (!codes.includes(code.trim())) return [code, value];
    return [code, String(change(Number(value)))];
  });
}

function onCurves(text: string, layer: string, edit: (pairs: Pair[]) => Pair[]): string {
  return editEntities(text, (pairs, on) => (on === layer && isCurve(pairs) ? edit(pairs) : pairs));
}

/** One long edge of a closed curve (its corners above the centre line) moved outwards. */
export const edgeMoved = (text: string, layer: string, by: number): string =>
  onCurves(text, layer, (pairs) => mapValue(pairs, ['20'], (y) => (y > 0 ? y + by : y)));

/** Every coordinate multiplied, as when inches are taken for millimetres. */
export const scaled = (text: string, factor: number): string =>
  editEntities(text, (pairs) => mapValue(pairs, ['10', '20', '11', '21'], (x) => x * factor));

/** Stretched along the piece only. */
export const stretched = (text: string, layer: string, factor: number): string =>
  onCurves(text, layer, (pairs) => mapValue(pairs, ['10'], (x) => x * factor));

/** One arc of a curve replaced by its chord: the one with the largest bulge. */
export const arcFlattened = (text: string, layer: string): string =>
  onCurves(text, layer, (pairs) => {
    const bulges = pairs
      .filter(([code]) => code.trim() === '42')
      .map(([, v]) => Math.abs(Number(v)));
    const largest = Math.max(...bulges);
    return mapValue(pairs, ['42'], (b) => (Math.abs(b) === largest ? 0 : b));
  });

/** Arcs bent the other way. */
export const arcsReversed = (text: string, layer: string): string =>
  onCurves(text, layer, (pairs) => mapValue(pairs, ['42'], (b) => -b));

/** A closed curve left open. */
export const opened = (text: string, layer: string): string =>
  onCurves(text, layer, (pairs) => mapValue(pairs, ['70'], () => 0));

/** The curve drawn twice. */
export const doubled = (text: string, layer: string): string =>
  onCurves(text, layer, (pairs) => [...pairs, ...pairs]);

/** Two layers exchanged. */
export const layersSwapped = (text: string, one: string, other: string): string =>
  editEntities(text, (pairs, layer) => {
    const target = layer === one ? other : layer === other ? one : layer;
    return pairs.map(([code, value]): Pair =>
      code.trim() === '8' ? [code, target] : [code, value],
    );
  });

/** The header's unit changed. */
export const unitChanged = (text: string, unit: number): string =>
  text.replace(/(\$INSUNITS\r?\n\s*70\r?\n\s*)4/, `$1${unit}`);

/** What stands on a layer taken away. */
export const layerEmptied = (text: string, layer: string): string =>
  editEntities(text, (pairs, on) => (on === layer ? [] : pairs));
