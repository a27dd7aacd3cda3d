/** The page's server answers this machine, with the page's files, and nobody and nothing else. */
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { answerTo, headersFor, type PageRequest } from '../../src/cli/page-request.js';

const files = new Set(['index.html', 'assets/page.js']);
const asked = (more: Partial<PageRequest> = {}) =>
  answerTo(
    { method: 'GET', target: '/', host: '127.0.0.1:8080', fetchSite: 'none', ...more },
    files,
    8080,
  );

describe('a request', () => {
  it('for the page or one of its files gets that file', () => {
    expect(asked()).toEqual({ file: 'index.html' });
    expect(asked({ target: '/?x=1' })).toEqual({ file: 'index.html' });
    expect(asked({ target: '/assets/page.js', fetchSite: 'same-origin' })).toEqual({
      file: 'assets/page.js',
    });
    expect(asked({ host: 'localhost:8080', fetchSite: undefined })).toEqual({ file: 'index.html' });
    expect(asked({ method: 'HEAD' })).toEqual({ file: 'index.html' });
  });

  it.each([
    undefined,
    'example.org',
    'example.org:8080',
    '127.0.0.1',
    '127.0.0.1:8081',
    '127.0.0.1:8080.example.org',
    '[::1]:8080',
    '',
  ])('under the name %s is refused', (host) => {
    expect(asked({ host })).toMatchObject({ refusal: 421 });
  });

  it.each(['POST', 'PUT', 'DELETE', 'OPTIONS', 'PATCH', ''])('%s is refused', (method) => {
    expect(asked({ method })).toMatchObject({ refusal: 405 });
  });

  it.each(['cross-site', 'same-site', 'anything'])('from %s is refused', (fetchSite) => {
    expect(asked({ fetchSite })).toMatchObject({ refusal: 403 });
  });

  it.each([
    '/../package.json',
    '/assets/../../package.json',
    '/%2e%2e/package.json',
    '/..%2fpackage.json',
    '//etc/passwd',
    '/assets\\..\\x',
    '/assets',
    '/assets/',
    '/index.html/',
    'http://example.org/',
    '*',
    '',
    '/__proto__',
    '/constructor',
  ])('for %s finds nothing', (target) => {
    expect(asked({ target })).toMatchObject({ refusal: 404 });
  });

  it('gets a file of the page or nothing, whatever it asks for', () => {
    fc.assert(
      fc.property(fc.string(), (target) => {
        const answer = asked({ target: `/${target}` });
        expect('file' in answer ? files.has(answer.file) : answer.refusal === 404).toBe(true);
      }),
    );
  });
});

it('every answer forbids other origins, frames and guesses at types', () => {
  const headers = headersFor('index.html');
  expect(headers['Content-Security-Policy']).toContain("default-src 'none'");
  expect(headers['Content-Security-Policy']).not.toContain('unsafe');
  expect(headers).toMatchObject({ 'X-Content-Type-Options': 'nosniff', 'X-Frame-Options': 'DENY' });
  expect(headersFor('x.unknown')['Content-Type']).toBe('application/octet-stream');
});
