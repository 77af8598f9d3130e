import { badText, jsonFields } from './json-fields.ts';
import { isRefused, refused, type Refused } from './refusals.ts';

/** What a room asks to be saved. */
export interface SaveRequest {
  /** The folder of the protocol below the one that is served: `lessons/a_curve`. */
  readonly id: string;
  readonly part: Part;
  /** Not judged: a text with problems of the language is a draft. */
  readonly text: string;
  /** The digest of the bytes that the page started from; null: there must be no such file yet. */
  readonly onDisk: string | null;
}

/** All that is ever written. */
export type Part = 'protocol' | 'cases';

const keys = ['id', 'on_disk', 'part', 'text'];

/**
 * The request that a body holds. Refused is all that could be meant in two ways: a key that is missing, unknown or there twice, a name
 * that is not one.
 */
export function saveRequestOf(body: Uint8Array): SaveRequest | Refused {
  const found = jsonFields(body);
  if (isRefused(found)) return found;
  if (Object.keys(found).toSorted().join() !== keys.join()) return refused('other_keys');
  const { id, part, text, on_disk: onDisk } = found;
  if (typeof id !== 'string' || typeof part !== 'string' || typeof text !== 'string')
    return refused('other_keys');
  if (onDisk !== null && !(typeof onDisk === 'string' && /^sha256:[0-9a-f]{64}$/.test(onDisk)))
    return refused('other_keys');
  if (part !== 'protocol' && part !== 'cases') return refused('no_such_part');
  if (!isId(id)) return refused('no_such_id');
  const bad = badText(text);
  if (bad !== null) return refused(bad);
  return { id, part, text, onDisk };
}

/** Names that mean something else than a folder to a system, or to the kit, which looks for no protocol in there. */
const taken = /^(?:con|prn|aux|nul|com\d|lpt\d|node_modules)$/;

/** Whether an id is names with `/` between, each a folder that the kit itself could have made; so it never leads upwards or out. */
export const isId = (id: string): boolean =>
  /^[a-z0-9_]{1,60}(?:\/[a-z0-9_]{1,60}){0,8}$/.test(id) && !id.split('/').some((name) => taken.test(name));
