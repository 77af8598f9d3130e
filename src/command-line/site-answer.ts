import { readFile, realpath, stat } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';

/** What is answered to one request, before it is sent. */
export interface SiteAnswer {
  readonly status: number;
  readonly headers: Readonly<Record<string, string>>;
  readonly body: Buffer | string;
}

/** What the answer depends on. */
export interface Site {
  /** The folder of the built rooms. */
  readonly folder: string;
  /** The port that is listened on. */
  readonly port: number;
  /** The protocols as the rooms get them, read anew each time. */
  readonly protocols: () => Promise<string>;
}

export interface SiteRequest {
  readonly method: string;
  /** As it was sent: path and query. */
  readonly url: string;
  /** The `Host` header. */
  readonly host: string | undefined;
}

/** Only what stands on this server is loaded; nothing is sent anywhere else, and no code is made from text. */
const contentPolicy = [
  `default-src 'none'`,
  `script-src 'self'`,
  `worker-src 'self'`,
  `style-src 'self' 'unsafe-inline'`,
  `font-src 'self'`,
  `img-src 'self' data:`,
  `connect-src 'self'`,
  `base-uri 'none'`,
  `form-action 'none'`,
  `frame-ancestors 'none'`,
].join('; ');

const common = {
  'Content-Security-Policy': contentPolicy,
  'X-Content-Type-Options': 'nosniff',
  'Referrer-Policy': 'no-referrer',
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Cache-Control': 'no-store',
} as const;

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
};

/**
 * Answers one request to the rooms. Only GET and HEAD; only for this machine by its own name, so that a page from elsewhere that
 * points its name here gets nothing; only files of the built site.
 */
export async function siteAnswer({ method, url, host }: SiteRequest, site: Site): Promise<SiteAnswer> {
  if (host !== `127.0.0.1:${site.port}` && host !== `localhost:${site.port}`) {
    return refusal(421, 'This is not the address of this server.');
  }
  if (method !== 'GET' && method !== 'HEAD') {
    return { ...refusal(405, 'Only reading is possible here.'), headers: { ...plain, Allow: 'GET, HEAD' } };
  }
  const path = pathOf(url);
  if (path === null) return refusal(400, 'There is no such address.');
  if (path === '/protocols.json') return found('.json', await site.protocols());
  const file = await fileOf(path, site.folder);
  return file ? found(extname(file), await readFile(file)) : refusal(404, 'There is no such file.');
}

const plain = { ...common, 'Content-Type': 'text/plain; charset=utf-8' } as const;

const refusal = (status: number, words: string): SiteAnswer => ({
  status,
  headers: plain,
  body: `${words}\n`,
});

const found = (extension: string, body: Buffer | string): SiteAnswer => ({
  status: 200,
  headers: { ...common, 'Content-Type': types[extension] ?? 'application/octet-stream' },
  body,
});

/** The path without its query, decoded once; null when it is none or holds what no file of the site is called. */
function pathOf(url: string): string | null {
  try {
    const path = decodeURIComponent(url.split(/[?#]/)[0] ?? '');
    return /^\/[\w./-]*$/.test(path) && !path.includes('..') ? path : null;
  } catch {
    return null;
  }
}

/** The file of a path inside a folder; null when there is none there, or a link leads out of it. */
async function fileOf(path: string, folder: string): Promise<string | null> {
  try {
    const root = await realpath(folder);
    const file = await realpath(join(root, path === '/' ? 'index.html' : path));
    return file.startsWith(root + sep) && (await stat(file)).isFile() ? file : null;
  } catch {
    return null;
  }
}
