import { readFile, realpath, stat } from 'node:fs/promises';
import { extname, join, sep } from 'node:path';
import { tokenCookie } from './saving/token.ts';
import { siteFiles } from './site-files.ts';
import { commonHeaders, type SiteAnswer } from './site-headers.ts';
import { isOwnHost } from './site-host.ts';

/** What the answer depends on. */
export interface Site {
  /** The folder of the built rooms. */
  readonly folder: string;
  /** The port that is listened on. */
  readonly port: number;
  /** The secret of this start of the server, which the page gets in a cookie. */
  readonly token: string;
  /** The protocols as the rooms get them, read anew each time. */
  readonly protocols: () => Promise<string>;
  /** The text of a sealed edition by its address below the rooms; null when there is none. */
  readonly edition: (address: string) => Promise<string | null>;
}

export interface SiteRequest {
  readonly method: string;
  /** As it was sent: path and query. */
  readonly url: string;
  /** The `Host` header. */
  readonly host: string | undefined;
}

const types: Readonly<Record<string, string>> = {
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.woff2': 'font/woff2',
  '.yaml': 'text/plain; charset=utf-8',
};

/**
 * Answers one request to read something of the rooms. Only GET and HEAD; only for this machine by its own name; only files of the built
 * site.
 */
export async function siteAnswer({ method, url, host }: SiteRequest, site: Site): Promise<SiteAnswer> {
  if (!isOwnHost(host, site.port)) return refusal(421, 'This is not the address of this server.');
  if (method !== 'GET' && method !== 'HEAD') {
    return { ...refusal(405, 'Only reading is possible here.'), headers: { ...plain, Allow: 'GET, HEAD' } };
  }
  const path = pathOf(url);
  if (path === null) return refusal(400, 'There is no such address.');
  if (path === `/${siteFiles.protocols}`) return found('.json', await site.protocols());
  if (path.startsWith(`/${siteFiles.editions}/`)) {
    const text = await site.edition(path.slice(1));
    return text === null ? refusal(404, 'There is no such edition.') : found('.yaml', text);
  }
  const file = await fileOf(path, site.folder);
  if (!file) return refusal(404, 'There is no such file.');
  const answer = found(extname(file), await readFile(file));
  const isPage = extname(file) === '.html';
  const cookie = { 'Set-Cookie': tokenCookie(site.port, site.token) };
  return isPage ? { ...answer, headers: { ...answer.headers, ...cookie } } : answer;
}

const plain = { ...commonHeaders, 'Content-Type': 'text/plain; charset=utf-8' } as const;

const refusal = (status: number, words: string): SiteAnswer => ({
  status,
  headers: plain,
  body: `${words}\n`,
});

const found = (extension: string, body: Buffer | string): SiteAnswer => ({
  status: 200,
  headers: { ...commonHeaders, 'Content-Type': types[extension] ?? 'application/octet-stream' },
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
