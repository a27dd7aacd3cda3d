import { describe, expect, it } from 'vitest';
import { readStock, type StockReading } from '../../src/rack/stock.js';
import { describeStockIssue, stockWords } from '../../src/rack/stock-words.js';

const faults = (reading: StockReading): string[] =>
  reading.issues.map(({ code, line, column }) => `${line}:${column} ${code}`);
const widths = (text: string, units: 'mm' | 'in' = 'mm'): number[] | undefined =>
  readStock(text, units).stock?.staves.map(({ width }) => width);

describe('a rack list', () => {
  it('gives staves with all that is said of them', () => {
    const text =
      'mark,width,length,thickness,bung,note\nA1,71.5,960,30,yes,knot at 200\nA2,72,,,no,\nA3,73,,,,\n';
    const { stock, issues } = readStock(text, 'mm');
    expect(issues).toEqual([]);
    expect(stock!.staves).toEqual([
      { mark: 'A1', width: 71.5, length: 960, thickness: 30, bung: true, note: 'knot at 200' },
      { mark: 'A2', width: 72, length: null, thickness: null, bung: false, note: '' },
      { mark: 'A3', width: 73, length: null, thickness: null, bung: null, note: '' },
    ]);
    expect(stock!.step).toBe(0.5);
  });

  it('takes any order of columns, semicolons with decimal commas, tabs, and a byte order mark', () => {
    expect(widths('\uFEFFWidth;Mark\r\n71,5;A1\r\n72;A2\r\n')).toEqual([71.5, 72]);
    expect(widths('mark\twidth\nA1\t71.5\n')).toEqual([71.5]);
    expect(widths('mark,width\nA1,"71,5"\n')).toEqual([71.5]);
  });

  it('takes inches with fractions, by the units asked for or those in the heading', () => {
    expect(widths('mark,width\nA1,2 13/16\nA2,3"\n', 'in')).toEqual([71.4375, 76.19999999999999]);
    expect(widths('mark,width (in)\nA1,2 1/2\n')).toEqual([63.5]);
    expect(widths('mark,width mm\nA1,63.5\n', 'in')).toEqual([63.5]);
  });

  it('takes the mean of two readings, and asks when they lie more than 1 mm apart', () => {
    expect(widths('mark,width\nA1,71.5/72\n')).toEqual([71.75]);
    const { stock, issues } = readStock('mark,width\nA1,71/73.5\n', 'mm');
    expect(stock!.staves[0]!.width).toBe(72.25);
    expect(issues).toMatchObject([{ severity: 'warning', code: 'readings-apart', detail: '2.5' }]);
    // the step is that of the readings, not of their means
    expect(readStock('mark,width\nA1,71/72\n', 'mm').stock!.step).toBe(1);
  });

  it('is refused whole, with every fault at its place', () => {
    const reading = readStock(
      'mark,width,bung\nA1,71.5,yes\nA1,72,no\n,70,\nA3,wide,\nA4,,\nA5,7,\nA6,715,\nA7,70,maybe\nA8,70,,x\n',
      'mm',
    );
    expect(reading.stock).toBeNull();
    expect(faults(reading)).toEqual([
      '3:1 mark-doubled',
      '4:1 mark-missing',
      '5:4 length-unreadable',
      '6:4 width-missing',
      '7:4 width-absurd',
      '8:4 width-absurd',
      '9:7 bung-unreadable',
      '10:8 fields-extra',
    ]);
  });

  it('needs a heading with mark and width, each once', () => {
    expect(faults(readStock('', 'mm'))).toEqual(['1:1 empty']);
    expect(faults(readStock('A1,71.5\nA2,72\n', 'mm'))).toContain('1:1 heading-missing');
    expect(faults(readStock('mark,length\nA,900\n', 'mm'))).toEqual(['1:1 heading-missing']);
    expect(faults(readStock('mark,width,width\nA,70,71\n', 'mm'))).toContain(
      '1:12 heading-doubled',
    );
  });

  it("warns of a column that it doesn't know, and reads the rest", () => {
    const reading = readStock('mark,width,colour\nA,70,red\n', 'mm');
    expect(faults(reading)).toEqual(['1:12 heading-unknown']);
    expect(reading.stock!.staves).toHaveLength(1);
  });

  it('says what to do about a decimal comma between commas', () => {
    const { issues } = readStock('mark,width\nA1,71,5\n', 'mm');
    expect(describeStockIssue(issues[0]!, 'rack.csv')).toBe(
      'rack.csv:2:7: error: "5" stands beyond the last column. ' +
        'A decimal comma needs quotes, or semicolons between the columns.',
    );
  });

  describe('in another unit than it is read in', () => {
    const list = (heading: string, of: (i: number) => string): string =>
      `${heading}\n${Array.from({ length: 30 }, (_, i) => `s${i},${of(i)}`).join('\n')}\n`;
    const millimetres = list('mark,width', (i) => String(60 + i));
    const inches = list('mark,width', (i) => (i % 2 === 0 ? '2 13/16' : '2.75'));

    it('has one fault, which tells how to head the column', () => {
      const { stock, issues } = readStock(millimetres, 'in');
      expect(stock).toBeNull();
      expect(issues.map((issue) => describeStockIssue(issue, 'rack.csv'))).toEqual([
        'rack.csv:2:4: error: "60" and nearly all of this column were read as inches and are not a stave\'s; ' +
          'as millimetres they would be: head the column "width (mm)", and likewise others that are in millimetres.',
      ]);
      expect(readStock(millimetres.replace('width', 'width (mm)'), 'in').issues).toEqual([]);
    });

    it('has one fault too where inches were read as millimetres, fractions and all', () => {
      const { stock, issues } = readStock(inches, 'mm');
      expect(stock).toBeNull();
      expect(issues).toMatchObject([
        { code: 'unit-mistaken', line: 2, column: 4, found: '2 13/16', detail: 'width (in)' },
      ]);
      expect(readStock(inches.replace('width', 'width (in)'), 'mm').issues).toEqual([]);
    });

    it('has the same fault in German and in French', async () => {
      const [issue] = readStock(millimetres, 'in').issues;
      const [german, french] = [await stockWords.de(), await stockWords.fr()];
      expect(describeStockIssue(issue!, 'a', german)).toContain('als Zoll gelesen');
      expect(describeStockIssue(issue!, 'a', german)).toContain('"width (mm)"');
      expect(describeStockIssue(issue!, 'a', french)).toContain('lus en pouces');
      expect(describeStockIssue(issue!, 'a', french)).toContain('"width (mm)"');
    });

    it('has a fault for each column, and keeps those of another kind', () => {
      const both = list('mark,width,length', (i) => `${60 + i},${i === 3 ? 'long' : 960}`);
      expect(faults(readStock(both, 'in'))).toEqual([
        '2:4 unit-mistaken',
        '2:7 unit-mistaken',
        '5:7 length-unreadable',
      ]);
    });

    it('is not assumed where some are right, or staves are few, or neither unit cures them', () => {
      const mixed = list('mark,width', (i) => (i % 5 === 0 ? '3' : '70'));
      expect(
        faults(readStock(mixed, 'in')).filter((fault) => fault.endsWith('absurd')),
      ).toHaveLength(24);
      expect(faults(readStock('mark,width\nA,60\nB,61\n', 'in'))).toEqual([
        '2:3 width-absurd',
        '3:3 width-absurd',
      ]);
      const absurd = list('mark,width', () => '5000');
      expect(faults(readStock(absurd, 'in'))).toHaveLength(30);
    });
  });

  it("takes no mark that can't be printed", () => {
    expect(faults(readStock('mark,width\n"A\n1",70\n', 'mm'))).toEqual(['2:1 mark-unprintable']);
  });

  it('of a thousand rows is read', () => {
    const rows = Array.from({ length: 1000 }, (_, i) => `s${i},${60 + (i % 80) / 2}`);
    expect(widths(`mark,width\n${rows.join('\n')}`)).toHaveLength(1000);
  });
});
