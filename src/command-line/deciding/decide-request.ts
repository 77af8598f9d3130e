import { badText, jsonFields } from '../saving/json-fields.ts';
import { isRefused, refused, type Refused } from '../saving/refusals.ts';
import { isId } from '../saving/save-request.ts';

/** What a room asks to be entered in a record. */
export type DecideRequest = {
  /** The folder of the policy below the one that is served. */
  readonly id: string;
  /** The digest of the last entry that the page knows of; null: none. */
  readonly head: string | null;
  /** What was typed, by its name in the entry; not judged. */
  readonly said: Readonly<Record<string, string>>;
  /** The moment and the signature of an entry that was signed in the page; null: it is not signed, or not yet. */
  readonly signed: { readonly at: string; readonly jws: string } | null;
} & (
  | {
      readonly what: 'approve' | 'put_in_force';
      readonly edition: number;
      /** The digest of the edition as the page shows it. */
      readonly digest: string;
    }
  | { readonly what: 'withdraw' }
);

/** What is typed with each kind of decision, each a text. An empty `from` is now. */
const typed = {
  approve: ['by', 'role', 'minute', 'on'],
  put_in_force: ['by', 'because', 'from'],
  withdraw: ['by', 'because', 'instead', 'from'],
} as const;

const isWhat = (what: unknown): what is keyof typeof typed =>
  typeof what === 'string' && Object.hasOwn(typed, what);

/** The decision that a body holds. Refused is all that could be meant in two ways, as with a save. */
export function decideRequestOf(body: Uint8Array): DecideRequest | Refused {
  const found = jsonFields(body);
  if (isRefused(found)) return found;
  const { what, id, head, at, jws } = found;
  if (!isWhat(what)) return refused('other_keys');
  const named = what === 'withdraw' ? [] : ['edition', 'digest'];
  const keys = ['what', 'id', 'head', 'at', 'jws', ...named, ...typed[what]];
  if (Object.keys(found).toSorted().join() !== keys.toSorted().join()) return refused('other_keys');
  if (typeof id !== 'string' || !isDigestOrNull(head)) return refused('other_keys');
  if (!isId(id)) return refused('no_such_id');
  const said: Record<string, string> = {};
  for (const key of typed[what]) {
    const text = found[key];
    if (typeof text !== 'string') return refused('other_keys');
    const bad = badText(text);
    if (bad !== null) return refused(bad);
    said[key] = text.trim();
  }
  const signed = signedOf(at, jws);
  if (signed === 'other_keys') return refused(signed);
  const rest = { id, head, said, signed };
  if (what === 'withdraw') return { what, ...rest };
  const { edition, digest } = found;
  if (!isNumber(edition) || digest === null || !isDigestOrNull(digest)) return refused('other_keys');
  return { what, ...rest, edition, digest };
}

function signedOf(at: unknown, jws: unknown): DecideRequest['signed'] | 'other_keys' {
  if (at === null && jws === null) return null;
  return typeof at === 'string' && typeof jws === 'string' ? { at, jws } : 'other_keys';
}

/** Also what a seal is asked with. */
export interface SealRequest {
  readonly id: string;
  /** The digest of the text of the draft, as the page shows it. */
  readonly onDisk: string;
  readonly authors: readonly string[];
}

/** The request to seal that a body holds. */
export function sealRequestOf(body: Uint8Array): SealRequest | Refused {
  const found = jsonFields(body);
  if (isRefused(found)) return found;
  if (Object.keys(found).toSorted().join() !== 'authors,id,on_disk') return refused('other_keys');
  const { id, authors, on_disk: onDisk } = found;
  if (typeof id !== 'string' || typeof onDisk !== 'string' || !isDigestOrNull(onDisk))
    return refused('other_keys');
  if (!isId(id)) return refused('no_such_id');
  if (!Array.isArray(authors) || authors.length > 50) return refused('other_keys');
  const names: string[] = [];
  for (const author of authors as readonly unknown[]) {
    if (typeof author !== 'string' || author.length > 1000) return refused('other_keys');
    const bad = badText(author);
    if (bad !== null) return refused(bad);
    names.push(author.trim());
  }
  return { id, onDisk, authors: names };
}

const isDigestOrNull = (value: unknown): value is string | null =>
  value === null || (typeof value === 'string' && /^sha256:[0-9a-f]{64}$/.test(value));

const isNumber = (value: unknown): value is number =>
  typeof value === 'number' && Number.isInteger(value) && value >= 1 && value <= 9999;
