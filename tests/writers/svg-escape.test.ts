import fc from 'fast-check';
import { expect, test } from 'vitest';
import { printable } from '../../src/drawing/lettering.js';
import { asciiXml, escapeXml } from '../../src/writers/svg-escape.js';
import { decoded } from './decoded.js';

test.each([
  ['Wine cask – 225 l', 'Wine cask &#8211; 225 l'],
  ['⌀ 56 <b> & "c"', '&#8960; 56 &lt;b&gt; &amp; &quot;c&quot;'],
  ['🛢', '&#128738;'],
])('%s is %s in ASCII', (text, written) => {
  expect(asciiXml(text)).toBe(written);
});

test('any text is ASCII without markup, and reads as it did', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'grapheme' }), (text) => {
      const written = asciiXml(text);
      expect(written).toMatch(/^[ -~]*$/);
      expect(written).not.toMatch(/[<>"']/);
      const named = { '&lt;': '<', '&gt;': '>', '&quot;': '"', '&amp;': '&' } as const;
      const read = decoded(written).replaceAll(
        /&(lt|gt|quot|amp);/g,
        (name) => named[name as keyof typeof named],
      );
      expect(read).toBe(printable(text));
      expect(escapeXml(text)).not.toMatch(/[<>"']/);
    }),
  );
});
