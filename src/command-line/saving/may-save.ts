import type { IncomingHttpHeaders } from 'node:http';
import { limits } from '../../document/limits.ts';
import { isOwnHost } from '../site-host.ts';
import type { Refusal } from './refusals.ts';
import { hasToken } from './token.ts';

/** What is known of a request before its body is read. */
export interface SaveHead {
  readonly method: string;
  readonly headers: IncomingHttpHeaders;
}

/** The largest body: as much as the largest text that the kit reads. Exactly this much is taken. */
export const largestBody = limits.bytes;

/**
 * Why a request may not save, seen from its head alone; null when it may. A page from elsewhere can make a browser send a request, but
 * not with the `Origin` of this server, nor with its cookie; and a name that is pointed at this machine is not in `Host` what we are called.
 */
export function mayNotSave(
  { method, headers }: SaveHead,
  { port, token }: { readonly port: number; readonly token: string },
): Refusal | null {
  const { host, origin, cookie } = headers;
  if (!isOwnHost(host, port)) return 'not_this_server';
  if (method !== 'POST') return 'only_post';
  const site = headers['sec-fetch-site'];
  if (site !== undefined && site !== 'same-origin' && site !== 'none') return 'another_page';
  if (origin !== `http://${host}`) return 'another_page';
  if (!hasToken(cookie, port, token)) return 'opened_before';
  if (!/^application\/json(?:\s*;\s*charset="?utf-8"?)?$/i.test(headers['content-type'] ?? ''))
    return 'not_json';
  if ((headers['content-encoding'] ?? 'identity') !== 'identity') return 'not_json';
  return Number(headers['content-length'] ?? 0) > largestBody ? 'too_large' : null;
}
