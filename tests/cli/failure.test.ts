/** A failure of ours: exit 3, one short message, a trace only on request, nothing written. */
import { expect, test } from 'vitest';
import { Workshop } from './workshop.js';

const argv = ['draw', 'bucket.yaml', '--out', 'out', '--pieces', 'stave'];
const noFont = (): Promise<Uint8Array> => Promise.reject(new Error('the font is gone'));

test('is said to be ours, in two lines', async () => {
  const workshop = new Workshop();
  const { code, out, err } = await workshop.run(argv, { font: noFont });
  expect({ code, out }).toEqual({ code: 3, out: '' });
  expect(err).toBe(
    'staveloft: this is a failure of ours, not of your spec: the font is gone\n' +
      'STAVELOFT_TRACE=1 in the environment shows where.\n',
  );
  expect(workshop.files()).toEqual(['bucket.yaml']);
});

test('shows where on request', async () => {
  const env = { STAVELOFT_TRACE: '1' };
  const { code, err } = await new Workshop().run(argv, { font: noFont, env });
  expect(code).toBe(3);
  expect(err).toMatch(/^\s+at .+failure\.test/m);
});
