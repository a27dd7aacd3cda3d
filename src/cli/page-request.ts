/** What a request to the page's server gets: a file of the page, or a refusal. Pure: it knows the files, not the disk. */

export interface PageRequest {
  readonly method: string;
  /** as it stands in the request line */
  readonly target: string;
  /** the Host header */
  readonly host: string | undefined;
  /** the header by which browsers say where a request comes from */
  readonly fetchSite: string | undefined;
}

export type PageAnswer =
  { readonly file: string } | { readonly refusal: number; readonly text: string };

const refuse = (refusal: number, text: string): PageAnswer => ({ refusal, text });

/** `files` are the names that there are, with `/` between folders. `port` is the server's own. */
export function answerTo(
  { method, target, host, fetchSite }: PageRequest,
  files: ReadonlySet<string>,
  port: number,
): PageAnswer {
  // another name for this machine is how a page from elsewhere would read what is served here
  if (!isOwnHost(host, port)) return refuse(421, 'This is not the address of this page.');
  if (method !== 'GET' && method !== 'HEAD') return refuse(405, 'There is nothing to write to.');
  if (fetchSite !== undefined && !['same-origin', 'none'].includes(fetchSite))
    return refuse(403, 'Only the page itself may ask for this.');
  const name = nameOf(target);
  if (name === null || !files.has(name)) return refuse(404, 'There is no such file.');
  return { file: name };
}

function isOwnHost(host: string | undefined, port: number): boolean {
  return host === `127.0.0.1:${port}` || host === `localhost:${port}`;
}

/** Only names that are among the files are ever read: no path is put together from what is asked for. */
function nameOf(target: string): string | null {
  const path = /^\/[^?#]*/.exec(target)?.[0];
  if (path === undefined) return null;
  return path === '/' ? 'index.html' : path.slice(1);
}

const types: Readonly<Record<string, string>> = {
  html: 'text/html; charset=utf-8',
  js: 'text/javascript; charset=utf-8',
  css: 'text/css; charset=utf-8',
};

const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "connect-src 'self'",
  "worker-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "frame-ancestors 'none'",
].join('; ');

/** The headers of every answer. */
export function headersFor(name: string): Record<string, string> {
  return {
    'Content-Type': types[name.split('.').at(-1) ?? ''] ?? 'application/octet-stream',
    'Content-Security-Policy': policy,
    'X-Content-Type-Options': 'nosniff',
    'X-Frame-Options': 'DENY',
    'Referrer-Policy': 'no-referrer',
    'Cross-Origin-Opener-Policy': 'same-origin',
    'Cross-Origin-Resource-Policy': 'same-origin',
    'Cross-Origin-Embedder-Policy': 'require-corp',
    'Cache-Control': 'no-store',
  };
}
