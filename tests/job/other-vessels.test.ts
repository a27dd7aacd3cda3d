/** Job sheets of tubs, of uneven staves, of flat insides, in inches, against numbers worked here. */
import { describe, expect, test } from 'vitest';
import { Said, templateText } from './sheets.js';

describe('a bucket', () => {
  const said = new Said(templateText('bucket'));
  // 280 high, 300 wide at the top and 260 at the bottom, 16 staves of 16
  const slope = 20 / 280;
  const cosine = 1 / Math.sqrt(1 + slope ** 2);
  const tangent = Math.tan(Math.PI / 16);

  test('is jointed straight, with one bevel', () => {
    const bevel = (Math.atan(tangent * cosine) * 180) / Math.PI;
    const tilt = (Math.asin(Math.sin(Math.PI / 16) * cosine) * 180) / Math.PI;
    expect(said.step('Joint').text).toBe(
      `Top ${(300 * tangent).toFixed(1)} wide, bottom ${(260 * tangent).toFixed(1)}; bevel ${bevel.toFixed(2)}°, saw square to the edge ${tilt.toFixed(2)}°.`,
    );
    expect(said.aim('Joint', 'laid')).toBe((300 * 16 * tangent).toFixed(1));
  });

  test('has a bottom and no bung, is not bent, and stays open', () => {
    expect(said.titles()).toEqual([
      'Billets',
      'Plane the blanks',
      'Joint',
      'Hollow inside',
      'Raise',
      'Trim, chime',
      'Croze',
      'Round the outside',
      'Bottom',
      'Set the bottom',
      'Hoops',
      'Test with water',
      'Finish',
    ]);
    expect(said.step('Bottom').measures).toHaveLength(1);
    expect(said.step('Finish').caution).not.toContain('gas');
    expect(said.step('Test with water').caution).toContain('level stand');
  });

  test('stands in its hoop at a tenth of its height, no fire being meant', () => {
    // 28 below the top the outside is 296 wide; the stave leans, so 28 of height are a little more of its length
    expect(said.aim('Raise', `girth in the hoop, ${(28 / cosine).toFixed(1)} down`)).toBe(
      (296 * 16 * tangent).toFixed(1),
    );
  });

  test('says of each hoop to which end it belongs', () => {
    const [upper, lower] = said.form.list.rows.filter(([piece]) => piece!.startsWith('strap'));
    expect(upper![0]).toMatch(/hoop, top$/);
    expect(lower![0]).toMatch(/hoop, bottom$/);
    expect(said.step('Hoops').text).toMatch(
      /From the end: chime [\d.]+ \(top\) · chime [\d.]+ \(bottom\)\.$/,
    );
  });
});

describe('uneven staves', () => {
  const said = new Said(templateText('cask-110'));
  const widths = [
    66, 72, 70, 58, 80, 74, 62, 77, 69, 92, 64, 71, 83, 60, 75, 68, 73, 66, 79, 61, 70, 76, 65, 74,
  ];

  test('carry their own widths on their labels, in ring order', () => {
    expect(said.form.labels.texts).toEqual([
      ...widths.map((width, i) => `${i + 1} ↑ ${width}.0`),
      '+1 ↑ 92.0',
      '+2 ↑ 92.0',
    ]);
    expect(said.step('Joint').text).toContain('on its label');
    expect(said.row('stave blank, with spares')[3]).toBe('58.0 – 92.0');
  });

  test('add up on the bench, and close where their angles do', () => {
    const laid = widths.reduce((sum, width) => sum + width, 0);
    expect(said.aim('Joint', 'laid')).toBe(laid.toFixed(1));
    // sum of atan(w / D) = pi, halving the doubt
    let [low, high] = [500, 600];
    for (let i = 0; i < 60; i += 1) {
      const middle = (low + high) / 2;
      const angles = widths.reduce((sum, width) => sum + Math.atan(width / middle), 0);
      if (angles > Math.PI) low = middle;
      else high = middle;
    }
    expect(said.aim('Round the outside', 'girth')).toBe((Math.PI * low).toFixed(1));
  });

  test('the widest takes the bung', () => {
    expect(said.step('Raise').text).toContain('The widest is the bung stave.');
  });
});

test('a flat inside is not hollowed, its blank is as thick as its wall, and the corners widen the groove', () => {
  const flat = new Said(
    templateText('wine-cask-225').replace('inside: hollowed', 'inside: flat    '),
  );
  expect(flat.titles()).not.toContain('Hollow inside');
  expect(flat.aim('Plane the blanks', 'thickness')).toBe('27.0');
  const rho = (470 ** 2 + 55 ** 2) / 110;
  const inside = 340 - rho + Math.sqrt((rho - 27) ** 2 - 410 ** 2);
  expect(flat.aim('Croze', 'compass, top')).toBe((inside / Math.cos(Math.PI / 28) + 7).toFixed(1));
});

test('a flat outside is not rounded', () => {
  expect(new Said(templateText('straight-vat')).titles()).not.toContain('Round the outside');
});

test('inches: decimals, and to measure by the nearest 32nd; gallons of 231 cubic inches; pounds', () => {
  const said = new Said(templateText('keg-10-inches'));
  expect(said.form.numbers.heading).toBe('The vessel, all lengths in inches');
  expect(said.number('height')).toBe('13.500');
  const laid = 10.125 * 16 * Math.tan(Math.PI / 16);
  expect(said.aim('Joint', 'laid')).toBe(`${laid.toFixed(3)} (32 7/32)`);
  const [, litres, gallons] = /^([\d.]+) l \(([\d.]+) gal\)$/.exec(said.number('capacity'))!;
  expect(Number(gallons)).toBeCloseTo((Number(litres) * 1000) / (231 * 2.54 ** 3), 2);
  expect(said.number('mass, empty')).toMatch(/^[\d.]+ lb$/);
  // bolts in eighths
  const bolt = Number(/bolts ([\d.]+) long/.exec(said.step('Billets').text)![1]);
  expect(bolt * 8).toBe(Math.round(bolt * 8));
});

test('heads that differ are said one by one', () => {
  const said = new Said(templateText('keg-30'));
  const pieces = said.form.list.rows.map(([piece]) => piece!);
  expect(pieces.filter((piece) => piece.startsWith('top head'))).not.toEqual([]);
  expect(pieces.filter((piece) => piece.startsWith('bottom'))).not.toEqual([]);
  const differing = templateText('keg-30').replace(
    'top: { widths: [78, 76, 82, 76] }',
    'top: { widths: [78, 76, 82, 76], croze: { inset: 45 } }',
  );
  expect(new Said(differing).step('Croze').text).toMatch(
    /top: Groove .*middle 45\.0 .*bottom: Groove /,
  );
});
