/** The command `page` and its server on this machine's own loopback. */
import { request } from 'node:http';
import { connect } from 'node:net';
import { afterEach, describe, expect, it } from 'vitest';
import { servePage, type PageServer } from '../../src/cli/page-server.js';
import { Workshop } from './workshop.js';

const pages = {
  'dist/page/index.html': '<!doctype html><title>Page</title>',
  'dist/page/assets/page.js': 'let a;',
};

async function workshop(): Promise<Workshop> {
  const place = new Workshop({});
  const { mkdirSync } = await import('node:fs');
  mkdirSync(place.path('dist/page/assets'), { recursive: true });
  for (const [name, content] of Object.entries(pages)) place.write(name, content);
  place.write('secret.txt', 'secret');
  return place;
}

interface Got {
  readonly status: number;
  readonly body: string;
  readonly policy: string;
}

/** As it is typed here: the ready-made clients tidy paths before they send them. */
function get(address: string, path: string, headers: Record<string, string> = {}): Promise<Got> {
  const { port } = new URL(address);
  return new Promise((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port, path, headers }, (response) => {
      let body = '';
      response.on('data', (chunk) => (body += String(chunk)));
      response.on('end', () => {
        const policy = String(response.headers['content-security-policy']);
        resolve({ status: response.statusCode!, body, policy });
      });
    });
    asked.on('error', reject);
    asked.end();
  });
}

let server: PageServer | undefined;
afterEach(() => server?.close());

describe('the server', () => {
  it('hands out the page and its files, with strict rules', async () => {
    server = await servePage((await workshop()).path('dist/page'), 0);
    expect(server.address).toMatch(/^http:\/\/127\.0\.0\.1:\d+\/$/);
    const page = await get(server.address, '/');
    expect(page).toMatchObject({ status: 200, body: pages['dist/page/index.html'] });
    expect(page.policy).toContain("script-src 'self'");
    expect((await get(server.address, '/assets/page.js')).body).toBe('let a;');
  });

  it('hands out nothing else', async () => {
    server = await servePage((await workshop()).path('dist/page'), 0);
    for (const path of ['/../../secret.txt', '/%2e%2e/%2e%2e/secret.txt', '/secret.txt'])
      expect((await get(server.address, path)).status).toBe(404);
    expect((await get(server.address, '/', { host: 'example.org' })).status).toBe(421);
  });

  it('does not fall over whatever is sent', async () => {
    server = await servePage((await workshop()).path('dist/page'), 0);
    const port = Number(new URL(server.address).port);
    await new Promise<void>((resolve) => {
      const socket = connect(port, '127.0.0.1', () => socket.end('\0\r\n\r\n'));
      socket.on('close', () => resolve());
      socket.on('error', () => {});
      socket.resume();
    });
    expect((await get(server.address, '/')).status).toBe(200);
  });
});

describe('staveloft page', () => {
  it('says where the page is, shows it, and ends when it is stopped', async () => {
    const place = await workshop();
    const packageFolder = place.folder;
    const { code, out } = await place.run(['page'], { packageFolder });
    expect(code).toBe(0);
    const [, address] = /the page is at (http:\S+)/.exec(out)!;
    expect(out).toContain(`shows ${address}`);
    await expect(get(address!, '/')).rejects.toThrow();
  });

  it('opens nothing with --no-open', async () => {
    const place = await workshop();
    const { out } = await place.run(['page', '--no-open'], { packageFolder: place.folder });
    expect(out).not.toContain('shows');
  });

  it('refuses a port that is taken, and one that is none', async () => {
    const place = await workshop();
    server = await servePage(place.path('dist/page'), 0);
    const { port } = new URL(server.address);
    const packageFolder = place.folder;
    const taken = await place.run(['page', '--port', port], { packageFolder });
    expect(taken).toMatchObject({ code: 2, out: '' });
    expect(taken.err).toContain('another program is using it');
    for (const none of ['0', '65536', 'x', '-1'])
      expect((await place.run(['page', `--port=${none}`], { packageFolder })).code).toBe(2);
  });

  it('says what to do where the page was not built', async () => {
    const place = new Workshop({});
    const { code, err } = await place.run(['page'], { packageFolder: place.folder });
    expect(code).toBe(3);
    expect(err).toContain('npm run build');
  });
});
