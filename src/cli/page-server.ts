/** Serves the workshop page to this machine and to nobody else. */
import { readdirSync, readFileSync } from 'node:fs';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import { join, sep } from 'node:path';
import { answerTo, headersFor } from './page-request.js';

export interface PageServer {
  readonly address: string;
  close(): Promise<void>;
}

/** Port 0 takes a free one. Rejects where the port is taken. */
export async function servePage(folder: string, port: number): Promise<PageServer> {
  const files = filesIn(folder);
  const server = createServer((request, response) => {
    const own = (server.address() as AddressInfo).port;
    answer(request, response, files, own);
  });
  await listening(server, port);
  const { port: taken } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${taken}/`,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

/** Read once, before anybody asks: names that are asked for never touch the disk. */
function filesIn(folder: string): ReadonlyMap<string, Buffer> {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true });
  return new Map(
    entries
      .filter((entry) => entry.isFile())
      .map((entry) => join(entry.parentPath, entry.name))
      .map((path) => [
        path
          .slice(folder.length + 1)
          .split(sep)
          .join('/'),
        readFileSync(path),
      ]),
  );
}

function listening(server: Server, port: number): Promise<void> {
  return new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', resolve);
  });
}

function answer(
  request: IncomingMessage,
  response: ServerResponse,
  files: ReadonlyMap<string, Buffer>,
  port: number,
): void {
  const { method = '', url: target = '', headers } = request;
  const site = headers['sec-fetch-site'];
  const fetchSite = Array.isArray(site) ? site.join() : site;
  const asked = { method, target, host: headers.host, fetchSite };
  const found = answerTo(asked, new Set(files.keys()), port);
  const name = 'file' in found ? found.file : 'refusal.txt';
  const body = 'file' in found ? files.get(found.file)! : Buffer.from(found.text);
  response.writeHead('file' in found ? 200 : found.refusal, {
    ...headersFor(name),
    'Content-Length': body.length,
  });
  response.end(method === 'HEAD' ? undefined : body);
}
