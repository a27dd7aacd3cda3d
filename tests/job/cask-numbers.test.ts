/** The numbers of a cask's job sheet against formulas of a circle that are worked here. */
import { describe, expect, test } from 'vitest';
import { Said, templateText } from './sheets.js';

const said = new Said(templateText('wine-cask-225'));

// the spec, in mm
const [height, bilge, ends, count, thickness, trim] = [940, 680, 570, 28, 27, 10];
// the circle through both ends and the bilge: chord `height`, rise 55
const rise = (bilge - ends) / 2;
const rho = ((height / 2) ** 2 + rise ** 2) / (2 * rise);
const outside = (z: number): number => bilge / 2 - rho + Math.sqrt(rho ** 2 - z ** 2);
const inside = (z: number): number => bilge / 2 - rho + Math.sqrt((rho - thickness) ** 2 - z ** 2);
const tangent = Math.tan(Math.PI / count);
// the wall is upright at the bilge: corners stand back by the sagitta
const blank = (bilge / 2) * (1 - Math.cos(Math.PI / count)) + thickness * Math.cos(Math.PI / count);
// of the line halfway through the finished wall, from the middle to the section whose fibre at a depth meets a height
const station = (z: number, depth: number): number =>
  (rho - thickness / 2) * Math.asin(z / (rho - depth));
// the inner face is the longer one where a cask narrows
const sawn = 2 * (station(height / 2, blank) + trim);

const text = (mm: number, decimals = 1): string => mm.toFixed(decimals);
const degrees = (radians: number): string => `${((radians * 180) / Math.PI).toFixed(2)}°`;

test('the size that was asked for', () => {
  const numbers = ['height', '⌀ outside, bilge', '⌀ outside, ends', 'wall', 'staves'];
  expect(numbers.map((name) => said.number(name))).toEqual([
    '940.0',
    '680.0',
    '570.0',
    '27.0',
    '28',
  ]);
});

test('capacity: the circle of the inside, squared and integrated in closed form from head to head', () => {
  // r = c + sqrt(q^2 - z^2): the integral of r^2 from 0 to x, twice
  const x = height / 2 - 60 - 12;
  const [c, q] = [bilge / 2 - rho, rho - thickness];
  const half =
    (c ** 2 + q ** 2) * x -
    x ** 3 / 3 +
    c * (x * Math.sqrt(q ** 2 - x ** 2) + q ** 2 * Math.asin(x / q));
  expect(said.number('capacity')).toBe(`${((2 * Math.PI * half) / 1e6).toFixed(1)} l`);
  expect(said.aim('Test with water', 'filled')).toBe(said.number('capacity'));
});

test('full of water it weighs its litres more than empty', () => {
  const [empty, full, litres] = ['mass, empty', 'mass, full of water', 'capacity'].map((name) =>
    Number.parseFloat(said.number(name)),
  ) as [number, number, number];
  // water of 20 degrees: 0.998 kg a litre; both masses are rounded to a whole kg
  expect(Math.abs(full - empty - 0.998 * litres)).toBeLessThan(1.3);
});

describe('staves', () => {
  test('the blank: as long as its longer face with trim, two to spare', () => {
    expect(said.row('stave blank, with spares').slice(1)).toEqual([
      '28 + 2',
      text(sawn),
      text(bilge * tangent),
      text(blank),
    ]);
    expect(said.step('Plane the blanks').text).toContain(`Saw square to ${text(sawn)},`);
    expect(said.aim('Plane the blanks', 'thickness')).toBe(text(blank));
  });

  test('billets: 2 mm for jointing, 4 mm for planing, 4 % and 7 % for drying, whole mm upwards', () => {
    const [width, thick] = [(bilge * tangent + 2) * 1.04, (blank + 4) * 1.07].map(Math.ceil);
    expect(said.step('Billets').text).toContain(
      `bolts ${Math.ceil(sawn + 40)} long split 30 radially, green ${width}\u00a0×\u00a0${thick};`,
    );
  });

  test('jointing: widths, bevels, and what the staves add up to', () => {
    const bevel = (lean: number): string => degrees(Math.atan(tangent * Math.cos(lean)));
    const end = Math.asin(height / 2 / rho);
    expect(said.step('Joint').text).toBe(
      `Bilge ${text(bilge * tangent)} wide, bevel ${bevel(0)}; ends ${text(ends * tangent)} wide, bevel ${bevel(end)}.`,
    );
    expect(said.aim('Joint', 'laid width')).toBe(text(count * bilge * tangent));
    expect(said.aim('Joint', 'girth before')).toBe(`≥ ${text(count * (bilge * tangent + 2))}`);
  });

  test('hollowed to the inside circle, rounded to the outside circle', () => {
    expect(said.step('Hollow inside').text).toContain(`Radius ${text(bilge / 2 - thickness)} `);
    expect(said.aim('Hollow inside', 'left')).toBe('27.0');
    expect(said.step('Round the outside').text).toContain(`radius ${text(bilge / 2)} `);
    expect(said.aim('Round the outside', 'girth')).toBe(text(Math.PI * bilge));
  });
});

describe('the ring', () => {
  test('girth before fire: the polygon in the raising hoop, and how far down the sawn stave', () => {
    // the hoop sits at a twentieth of the height
    const z = height / 2 - height / 20;
    const down = sawn / 2 - station(z, 0);
    expect(said.aim('Raise', `girth before fire, ${text(down)} down the stave`)).toBe(
      text(2 * outside(z) * count * tangent),
    );
  });

  test('girth at the bilge while outer faces are flat, the truss hoop, the stretch', () => {
    expect(said.aim('Fire and bend', 'girth')).toBe(text(bilge * count * tangent));
    const quarter = 2 * outside(0.3 * height) * count * tangent;
    expect(said.step('Fire and bend').text).toContain(`(quarter: girth ${text(quarter)})`);
    const stretch = (100 * thickness) / 2 / (rho - thickness / 2);
    expect(said.step('Fire and bend').text).toContain(`stretches ${text(stretch, 2)} %`);
  });

  test('height when trimmed', () => {
    expect(said.aim('Trim, chime', 'height')).toBe('940.0');
    expect(said.step('Trim, chime').text).toContain('bevel 40.00° from the end, 10.0 left flat');
  });
});

describe('heads', () => {
  // howel 2, groove 5 deep with its middle 60 inside the end
  const groove = inside(height / 2 - 60) + 2 + 5;

  test('the compass reaches the bottom of the groove, and the head fills it', () => {
    for (const end of ['top', 'bottom']) {
      expect(said.aim('Croze', `compass, ${end}`)).toBe(text(groove));
      expect(said.aim('Heads', `⌀ ${end}`)).toBe(text(2 * groove));
    }
    expect(said.step('Croze').text).toContain(
      'Groove 6.0 wide, 5.0 deep, middle 60.0 from the end',
    );
  });

  test('boards: a sixth of the head wide, the longest chord in each and 20 mm more', () => {
    const width = (2 * groove) / 6;
    const chord = (y: number): string => text(2 * Math.sqrt(groove ** 2 - y ** 2) + 20);
    const boards = [
      ['1, 6', 2 * width],
      ['2, 5', width],
      ['3, 4', 0],
    ] as const;
    for (const [numbers, y] of boards)
      expect(said.row(`head: board ${numbers}`).slice(1)).toEqual([
        '4',
        chord(y),
        text(width),
        '27.0',
      ]);
  });

  test('the end opens by as much girth as belongs to its radius', () => {
    const [, radius, girth] = /opens ([\d.]+) in radius, ([\d.]+) in girth/.exec(
      said.step('Set the heads').text,
    )!;
    // the head passes the narrowest place of the inside, which lies between the end and the groove
    expect(Number(radius)).toBeGreaterThan(groove - inside(height / 2 - 60) - 0.1);
    expect(Number(radius)).toBeLessThan(groove - inside(height / 2) + 0.1);
    expect(Number(girth)).toBeCloseTo(2 * Math.PI * Number(radius), -0.5);
  });
});

test('straps: the smaller girth in the middle of the strap, lap, less the driving', () => {
  const hoops = [
    ['chime', 3, 40, 1.8],
    ['quarter', 105, 32, 1.5],
    ['bilge', 255, 35, 1.5],
  ] as const;
  for (const [name, offset, width, steel] of hoops) {
    const near = Math.asin((height / 2 - offset) / rho);
    // a chord of the circle
    const far = near - 2 * Math.asin(width / 2 / rho);
    const radius = (angle: number): number => bilge / 2 - rho + rho * Math.cos(angle);
    const growth = radius(far) - radius(near);
    const slope = Math.asin(growth / width);
    const driving = Math.min(
      0.002 * 2 * Math.PI * radius(near),
      (2 * Math.PI * growth * 10) / width,
    );
    const cut = 2 * Math.PI * (radius(near) + (steel / 2) * Math.cos(slope)) + 70 - driving;
    expect(said.row(`strap, ${name} hoop`).slice(1)).toEqual([
      '2',
      text(cut),
      text(width),
      text(steel),
    ]);
  }
  expect(said.step('Hoops').text).toContain('chime 3.0 · quarter 105.0 · bilge 255.0.');
});
