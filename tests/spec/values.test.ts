/** Each value that cannot be used, by its key: what is found, what is allowed, and where. */
import { describe, expect, it } from 'vitest';
import { bucket, codesOf, inchKeg, messagesOf, specOf, wineCask, withLine } from './texts.js';

describe('a missing key', () => {
  it.each(['vessel', 'units', 'height', 'bilge', 'ends'])('%s is asked for', (key) => {
    const text = wineCask
      .split('\n')
      .filter((line) => !line.startsWith(`${key}:`))
      .join('\n');
    expect(messagesOf(text).map((message) => [message.code, message.key])).toEqual([
      ['missing', key],
    ]);
  });

  it.each(['staves: {}', 'staves:', 'staves: { thickness: 27 }'])(
    'a count of staves is asked for after %s',
    (line) => {
      expect(codesOf(withLine(wineCask, line))).toEqual(['no-staves']);
      expect(codesOf(wineCask.replace(/staves.*\n/, ''))).toEqual(['no-staves']);
    },
  );

  it('in a hoop is asked for by the number of the hoop', () => {
    const text = withLine(
      wineCask,
      'hoops: [{ name: chime, offset: 3, width: 40 }, { name: bilge }]',
    );
    expect(messagesOf(text).map(({ key }) => key)).toEqual(['hoops[1].offset', 'hoops[1].width']);
  });
});

describe('an unknown key', () => {
  it.each([
    ['hieght: 945', 'hieght', 'height'],
    ['staves: { count: 28, thicknes: 27 }', 'staves.thicknes', 'thickness'],
    ['heads: { croze: { dept: 5 } }', 'heads.croze.dept', 'depth'],
    ['heads: { top: { bords: 5 } }', 'heads.top.bords', 'boards'],
    ['hoops: [{ name: chime, offset: 3, width: 40, laps: 3 }]', 'hoops[0].laps', 'lap'],
    ['bung: { diametre: 50 }', 'bung.diametre', 'diameter'],
    ['sheet: { autor: x }', 'sheet.autor', null],
  ])('in %s is named with the nearest known one', (line, key, meant) => {
    const [message, ...others] = messagesOf(withLine(wineCask, line));
    expect(others).toEqual([]);
    expect(message).toMatchObject({ code: 'unknown-key', key });
    if (meant) expect(message!.text).toContain(`\`${meant}\``);
  });

  it('in the wrong section is named with its own', () => {
    const [message] = messagesOf(withLine(wineCask, 'inset: 60'));
    expect(message!.text).toContain('heads.croze');
  });

  it('is shown where the key stands, with all keys that the section knows', () => {
    const [message] = messagesOf(withLine(wineCask, 'howel: { dpeth: 2 }'));
    expect(message).toMatchObject({ line: 8, column: 10, allowed: 'depth, beyondGroove' });
  });

  it('that belongs to the other vessel says so', () => {
    expect(codesOf(withLine(wineCask, 'top: 300'))).toEqual(['key-of-other-vessel']);
    expect(codesOf(withLine(bucket, 'profile: arc'))).toEqual(['key-of-other-vessel']);
    expect(codesOf(withLine(bucket, 'heads: { top: { boards: 3 } }'))).toEqual(['tub-without-top']);
  });
});

describe('a key that stands twice', () => {
  it('is named with the first line, where it stands again', () => {
    const [message] = messagesOf(`${wineCask}height: 900\n`);
    expect(message).toMatchObject({ code: 'key-doubled', key: 'height', line: 8, column: 1 });
    expect(message!.text).toContain('line 4');
    expect(codesOf(withLine(wineCask, 'howel: { depth: 1, depth: 1 }'))).toEqual(['key-doubled']);
  });
});

describe('a length', () => {
  it.each([
    ['height: -945', 'length-too-small'],
    ['height: 0', 'length-too-small'],
    ['height: 1e300', 'length-too-large'],
    ['height: 5000.1', 'length-too-large'],
    ['height: .inf', 'not-finite'],
    ['height: -.inf', 'not-finite'],
    ['height: .nan', 'not-finite'],
    ['height:', 'not-a-length'],
    ['height: true', 'not-a-length'],
    ['height: tall', 'not-a-length'],
    ['height: [945]', 'not-a-length'],
    ['height: { mm: 945 }', 'not-a-length'],
    ['height: "945"', 'quoted-number'],
    ['height: 94,5', 'comma-in-number'],
    ['height: 945 mm', 'unit-in-length'],
    ['height: 94.5cm', 'unit-in-length'],
    ['height: 37 3/8"', 'unit-in-length'],
    ['height: 37 3/8', 'fraction-in-millimetres'],
    ['staves: { count: 28, thickness: 151 }', 'length-too-large'],
    ['chime: { flat: -1 }', 'length-too-small'],
    ['heads: { clearance: -21 }', 'length-too-small'],
  ])('in millimetres is not %s', (line, code) => {
    const [message, ...others] = messagesOf(withLine(wineCask, line));
    expect(message!.code).toBe(code);
    expect(message!.allowed).toMatch(/^-?[\d.]+ to \d+ mm$/);
    expect(others).toEqual([]);
  });

  it('in inches is not a text that only looks like one', () => {
    for (const raw of ['37 9/8', '1/0', '37 3/8 in', 'x'])
      expect(codesOf(withLine(inchKeg, `height: ${raw}`))).toHaveLength(1);
  });

  it('that would suit the other units asks whether they are meant', () => {
    const [small] = messagesOf(withLine(wineCask, 'height: 37.2'));
    expect(small).toMatchObject({
      line: 7,
      column: 9,
      key: 'height',
      found: '37.2 mm',
      allowed: '50 to 5000 mm',
    });
    expect(small!.text).toContain('`units: in`');
    const [large] = messagesOf(withLine(inchKeg, 'height: 340'));
    expect(large).toMatchObject({ found: '340 in', allowed: '1.97 to 196.85 in' });
    expect(large!.text).toContain('`units: mm`');
  });

  it('may be at either limit', () => {
    expect(
      specOf(withLine(wineCask, 'heads: { clearance: -20, crossGrain: 50 }')).heads.bottom,
    ).toMatchObject({
      clearance: -20,
      crossGrain: 50,
    });
  });
});

describe('a number', () => {
  it.each([
    ['staves: { count: 5 }', 'number-out-of-range', '6 to 80'],
    ['staves: { count: 81 }', 'number-out-of-range', '6 to 80'],
    ['staves: { count: 28.5 }', 'not-whole', '6 to 80'],
    ['staves: { count: many }', 'not-a-number', '6 to 80'],
    ['staves: { count: .inf }', 'not-finite', '6 to 80'],
    ['staves: { count: 28, neutral: 1.1 }', 'number-out-of-range', '0 to 1'],
    ['chime: { bevelDegrees: 90 }', 'number-out-of-range', '5 to 85 degrees'],
    ['heads: { boards: 0 }', 'number-out-of-range', '1 to 60'],
  ])('cannot be as in %s', (line, code, allowed) => {
    expect(messagesOf(withLine(wineCask, line))).toMatchObject([{ code, allowed }]);
  });
});

describe('a choice', () => {
  it('names the words there are, and the one that was meant', () => {
    const [message] = messagesOf(withLine(wineCask, 'profile: parabolic'));
    expect(message).toMatchObject({
      code: 'not-a-choice',
      allowed: 'arc, parabola, ellipse, measured',
    });
    expect(message!.text).toContain('`parabola`');
  });

  it('of vessel or units that does not exist is the only fault', () => {
    expect(codesOf(withLine(wineCask, 'vessel: barrel'))).toEqual(['not-a-choice']);
    expect(codesOf(withLine(bucket, 'vessel: 3'))).toEqual(['not-a-choice']);
    expect(codesOf(withLine(wineCask, 'units: cm'))).toEqual(['not-a-choice']);
    expect(codesOf(withLine(inchKeg, 'units: inch'))).toEqual(['not-a-choice']);
  });

  it('of a measured profile is not built yet', () => {
    expect(messagesOf(withLine(wineCask, 'profile: measured'))).toMatchObject([
      { code: 'profile-not-built', line: 8, column: 10 },
    ]);
  });
});

describe('a section', () => {
  it.each([
    'chime: 40',
    'heads: [6]',
    'howel: deep',
    'heads: { croze: 5 }',
    'sheet: x',
    'staves: 28',
  ])('cannot be %s', (line) => {
    expect(codesOf(withLine(wineCask, line))).toEqual(['not-a-group']);
  });
  it('that is opened and left empty says nothing', () => {
    const text = `${wineCask}chime:\nhowel:\nheads: { top: , croze: }\nsheet:\n`;
    expect(specOf(text)).toEqual(specOf(wineCask));
  });
});

describe('a list', () => {
  const hoops = (n: number) =>
    Array.from({ length: n }, (_, i) => `{ name: h${i}, end: top, offset: ${i}, width: 9 }`).join(
      ', ',
    );
  it.each([
    ['hoops: none', 'not-a-list'],
    ['hoops:', 'not-a-list'],
    ['hoops: { name: chime }', 'not-a-list'],
    ['hoops: [chime]', 'not-a-group'],
    [`hoops: [${hoops(41)}]`, 'list-too-long'],
    ['staves: { widths: [60, 60] }', 'list-too-short'],
    ['heads: { widths: [] }', 'list-too-short'],
  ])('cannot be %s', (line, code) => {
    expect(codesOf(withLine(wineCask, line))).toEqual([code]);
  });
  it('of hoops may be empty, or forty long', () => {
    expect(specOf(withLine(wineCask, 'hoops: []')).hoops).toEqual([]);
    expect(specOf(withLine(wineCask, `hoops: [${hoops(40)}]`)).hoops).toHaveLength(40);
  });
});

describe('a text', () => {
  it.each([
    ['title: |\n  one\n  two', 'text-of-several-lines'],
    ['title: "one\\ntwo"', 'text-of-several-lines'],
    ['title: "one\\Ltwo"', 'text-of-several-lines'],
    ['title: "bell\\a"', 'text-unprintable'],
    ['title: "escape\\e[31m"', 'text-unprintable'],
    ['title: "turned\\u202Eround"', 'text-unprintable'],
    ['title: "half \\uD800"', 'text-unprintable'],
    [`title: ${'x'.repeat(121)}`, 'text-too-long'],
    ['title: [a]', 'not-text'],
    ['sheet: { owner: "a\\tb" }', 'text-unprintable'],
    [`sheet: { owner: ${'x'.repeat(81)} }`, 'text-too-long'],
  ])('cannot be %s', (line, code) => {
    expect(codesOf(withLine(wineCask, line))).toEqual([code]);
  });

  it('may be markup, a path, or anything else that is one line of text', () => {
    for (const title of [
      '<b>Cask</b> & "more"',
      '../../etc',
      "O'Neil; 50 % ⌀ 68",
      '樽 🛢',
      'x'.repeat(120),
    ])
      expect(specOf(withLine(wineCask, `title: ${JSON.stringify(title)}`)).title).toBe(title);
  });

  it('is taken as typed, even where YAML would see a date, a number or a truth value', () => {
    const sheet = 'sheet: { date: 2026-01-05, number: 007, owner: 1.50, creator: true, approved: }';
    expect(specOf(withLine(wineCask, sheet)).sheet).toEqual({
      date: '2026-01-05',
      number: '007',
      owner: '1.50',
      creator: 'true',
      approved: '',
    });
    expect(specOf(withLine(wineCask, 'title: 225')).title).toBe('225');
  });
});

describe('the name of a hoop', () => {
  it.each([
    '../x',
    '..',
    'a/b',
    'a\\b',
    '"a\\nb"',
    'a:b',
    '"."',
    '""',
    '" "',
    '-x',
    'a..b',
    'x'.repeat(41),
  ])('becomes part of a file name and cannot be %s', (name) =>
    expect(
      codesOf(withLine(wineCask, `hoops: [{ name: ${name}, offset: 3, width: 40 }]`)),
    ).toHaveLength(1),
  );
  it.each(['chime', 'No. 3', 'Viertelreif', 'cerceau-à', '3', 'a_b'])('may be %s', (name) => {
    const text = withLine(wineCask, `hoops: [{ name: ${name}, offset: 3, width: 40 }]`);
    expect(specOf(text).hoops[0]!.name).toBe(name);
  });
});

describe('the bung', () => {
  it('may be left out with none or null', () => {
    for (const none of ['none', 'null', '~', ''])
      expect(specOf(withLine(wineCask, `bung: ${none}`)).bung).toBeNull();
  });
  it('is a group of keys otherwise', () => {
    expect(codesOf(withLine(wineCask, 'bung: 50'))).toEqual(['not-a-bung']);
    expect(codesOf(withLine(wineCask, 'bung: { diameter: 999 }'))).toEqual(['length-too-large']);
    expect(specOf(withLine(bucket, 'bung: { diameter: 25 }')).bung).toEqual({ diameter: 25 });
  });
});

describe('several faults', () => {
  it('are all shown at once, in the order of the file', () => {
    const messages = messagesOf(
      'vessel: cask\ntitle: "a\\nb"\nunits: mm\nheight: tall\nbilge: 500\nends: 600\nstaves: { count: 4, widths: [60] }\nfoo: 1\n',
    );
    expect(messages.map(({ code, line }) => `${line} ${code}`)).toEqual([
      '2 text-of-several-lines',
      '4 not-a-length',
      '5 bilge-below-ends',
      '7 number-out-of-range',
      '7 list-too-short',
      '8 unknown-key',
    ]);
  });
});
