/** Changes to a spec's text leave the rest of it alone. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { planVessel } from '../../../src/index.js';
import {
  has,
  lookInto,
  parseSpec,
  removeFromSpec,
  setInSpec,
  textAt,
} from '../../../src/page/state/edit-spec.js';

const spec = `# mine
vessel: cask
title: "a: b"  # its name
height:   945   # overall
bilge: 678
staves: { count: 28, thickness: 27 } # oak
bung: none
sheet: { number: 007 }
`;

describe('setting a key', () => {
  it('changes its characters and no others', () => {
    expect(setInSpec(spec, ['height'], 950.5)).toBe(spec.replace('945', '950.5'));
    expect(setInSpec(spec, ['staves', 'count'], 30)).toBe(spec.replace('28', '30'));
    expect(setInSpec(spec, ['height'], '37 3/8')).toBe(spec.replace('945', '37 3/8'));
  });

  it('keeps text as text', () => {
    for (const title of ['c: d # e', '<script>alert(1)</script>', "it's", '- x', 'true', '{', '']) {
      const changed = setInSpec(spec, ['title'], title)!;
      expect(textAt(parseSpec(changed), ['title'])).toBe(title);
      expect(planVessel(`${changed}units: mm\nends: 572\n`, 'x').vessel!.spec.title).toBe(title);
    }
  });

  it('adds keys and groups that are not there, and keeps comments and odd numbers', () => {
    const changed = setInSpec(spec, ['heads', 'croze', 'inset'], 55)!;
    expect(textAt(parseSpec(changed), ['heads', 'croze', 'inset'])).toBe('55');
    for (const kept of ['# mine', '# overall', '# oak', '# its name', '007'])
      expect(changed).toContain(kept);
  });

  it('makes a group of a word that stood for none', () => {
    const changed = setInSpec(spec, ['bung', 'diameter'], 50)!;
    expect(textAt(parseSpec(changed), ['bung', 'diameter'])).toBe('50');
  });

  it('writes lists on one line', () => {
    const changed = setInSpec(spec, ['staves', 'widths'], [62, '2 1/2'])!;
    expect(changed).toContain('widths: [ 62, 2 1/2 ]');
    expect(textAt(parseSpec(changed), ['staves', 'widths'])).toBe('62, 2 1/2');
  });

  it('begins a spec where there is none', () => {
    expect(setInSpec('', ['height'], 945)).toBe('height: 945\n');
  });

  it('does nothing to a text that is not YAML', () => {
    expect(setInSpec('a: [', ['height'], 945)).toBeNull();
    expect(removeFromSpec('a: [', ['height'])).toBeNull();
  });
});

describe('looking into a text', () => {
  it('finds what is written, not what YAML makes of it', () => {
    const odd =
      'sheet: { number: 007, date: 2026-01-05, owner: "null", creator: ~ }\nbilge: 1.50\nends:\n';
    for (const document of [lookInto(odd).document, parseSpec(odd)]) {
      expect(textAt(document, ['sheet', 'number'])).toBe('007');
      expect(textAt(document, ['sheet', 'date'])).toBe('2026-01-05');
      expect(textAt(document, ['sheet', 'owner'])).toBe('null');
      expect(textAt(document, ['sheet', 'creator'])).toBe('~');
      expect(textAt(document, ['bilge'])).toBe('1.50');
      expect(textAt(document, ['ends'])).toBe('');
      expect(textAt(document, ['height'])).toBeNull();
    }
  });

  it('parses a text once, and shows it as it is after every kind of change made from it', () => {
    const seen = lookInto(spec);
    setInSpec(spec, ['heads', 'croze', 'inset'], 55);
    setInSpec(spec, ['bung', 'diameter'], 50);
    removeFromSpec(spec, ['staves']);
    expect(lookInto(spec)).toBe(seen);
    expect(has(seen.document, ['heads'])).toBe(false);
    expect(textAt(seen.document, ['bung'])).toBe('none');
    expect(textAt(seen.document, ['staves', 'count'])).toBe('28');
  });
});

describe('taking a key away', () => {
  it('leaves the rest, and no empty group', () => {
    const without = removeFromSpec(spec, ['sheet', 'number'])!;
    expect(has(parseSpec(without), ['sheet'])).toBe(false);
    expect(without).toContain('# overall');
  });

  it('is nothing where the key is not there', () => {
    expect(removeFromSpec(spec, ['howel', 'depth'])).toBe(spec);
  });
});

const templates = fileURLToPath(new URL('../../../templates', import.meta.url));

it.each(readdirSync(templates).filter((name) => name.endsWith('.yaml')))(
  '%s: its height can be set, and nothing else changes',
  (name) => {
    const text = readFileSync(join(templates, name), 'utf8');
    const before = textAt(parseSpec(text), ['height'])!;
    const changed = setInSpec(text, ['height'], `${before}1`)!;
    expect(setInSpec(changed, ['height'], before)).toBe(text);
  },
);
