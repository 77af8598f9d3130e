import { parseTree } from 'jsonc-parser';
import { scanJson } from '../../document/json-scan.ts';
import { refused, type Refused } from './refusals.ts';

/** The keys of the one object that a body holds. Refused is what is no JSON in UTF-8, no object, or has a key twice. */
export function jsonFields(body: Uint8Array): Readonly<Record<string, unknown>> | Refused {
  let found: unknown;
  let json: string;
  try {
    json = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true }).decode(body);
    found = JSON.parse(json);
  } catch {
    return refused('broken');
  }
  if (typeof found !== 'object' || found === null || Array.isArray(found)) return refused('other_keys');
  if (hasKeyTwice(json, Object.keys(found).length)) return refused('other_keys');
  return found as Record<string, unknown>;
}

/** `JSON.parse` silently keeps the last of two equal keys. The look at the depth comes first, as the other parser is recursive. */
const hasKeyTwice = (json: string, count: number): boolean =>
  scanJson(json) !== null || parseTree(json)?.children?.length !== count;

/** Why a text can be kept in no file; null when it can. */
export function badText(text: string): 'no_unicode' | 'no_nul' | null {
  if (/\p{Surrogate}/u.test(text)) return 'no_unicode';
  return text.includes('\0') ? 'no_nul' : null;
}
