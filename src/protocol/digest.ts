import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';
import canonicalize from 'canonicalize';
import Fraction from 'fraction.js';
import type { WholeFile } from './based-on/whole-file.ts';
import type { Ladder, Protocol } from './protocol.ts';

/** The number of the language. A change of what a protocol means has a higher one. */
export const language = 1;

/** Keys that hold words for people, and nothing that decides an outcome. */
const wording = new Set(
  (
    'title short meaning about otherwise says because ask do source sources cite link from_memory owners review_by reviewBy accepted ' +
    'alsoCalled set_by setBy tell respond reassess ifNoAnswer stepDown loinc based_on'
  ).split(' '),
);

/**
 * The digests of a protocol: SHA-256 over the canonical JSON (RFC 8785) of the language's number, the file with what it is based on
 * worked in, the digests of that, the dictionary entries that it uses, and its ladder; numbers as decimal text, text in NFC.
 * `logicDigest` leaves the wording out, and from where each part came.
 */
export function digestOf(
  file: WholeFile,
  { observations, ladder, basedOn }: Pick<Protocol, 'observations' | 'ladder' | 'basedOn'>,
): { digest: string; logicDigest: string } {
  const digests = basedOn.length === 0 ? undefined : basedOn.map((parent) => parent.digest);
  const own = { language, protocol: file, based_on: digests };
  const lent = { observations: Object.fromEntries(observations), ladder: withoutStates(ladder) };
  const deciding = { ...own, protocol: withoutReview(file) };
  return { digest: digestOfBoth(own, lent, nothing), logicDigest: digestOfBoth(deciding, lent, wording) };
}

const bare = new WeakMap<Ladder, Ladder>();

/** What a hospital asks of everything on its ladder makes no protocol on it another one, and no sealed edition. */
export function withoutStates(ladder: Ladder): Ladder {
  const { states, ...rest } = ladder;
  if (!states) return ladder;
  const known = bare.get(ladder) ?? rest;
  bare.set(ladder, known);
  return known;
}

/** What is only asked of a protocol as a whole, and decides nothing. */
const review: ReadonlySet<string> = new Set(['ordinary', 'must_say', 'findings', 'hazards', 'must_always']);

const withoutReview = (file: WholeFile): object =>
  Object.fromEntries(Object.entries(file).filter(([key]) => !review.has(key)));

const nothing: ReadonlySet<string> = new Set();

/** The digest of what a protocol says itself together with what it is lent, of which the canonical text is kept. */
function digestOfBoth(
  own: Readonly<Record<string, unknown>>,
  { observations, ladder }: { observations: Readonly<Record<string, object>>; ladder: object },
  leftOut: ReadonlySet<string>,
): string {
  const parts = Object.entries(plain(own, leftOut) as Readonly<Record<string, unknown>>).map(
    ([key, value]): [string, string] => [key, canonicalText(value)],
  );
  const entries = Object.entries(observations).map(([name, each]): [string, string] => [
    name.normalize('NFC'),
    keptText(each, leftOut),
  ]);
  return digestOfText(
    together([...parts, ['observations', together(entries)], ['ladder', keptText(ladder, leftOut)]]),
  );
}

/** Canonical texts of the dictionary's entries and of ladders: data that is never changed, and read again at every change of a protocol. */
const kept = new Map<ReadonlySet<string>, WeakMap<object, string>>([
  [nothing, new WeakMap()],
  [wording, new WeakMap()],
]);

function keptText(part: object, leftOut: ReadonlySet<string>): string {
  const known = kept.get(leftOut)?.get(part);
  if (known !== undefined) return known;
  const text = canonicalText(plain(part, leftOut));
  kept.get(leftOut)?.set(part, text);
  return text;
}

/** An object of canonical JSON, from its keys and the canonical text of what stands under each: in the order of UTF-16 code units. */
const together = (entries: readonly (readonly [string, string])[]): string =>
  `{${entries
    .toSorted(([left], [right]) => (left < right ? -1 : 1))
    .map(([key, text]) => `${JSON.stringify(key)}:${text}`)
    .join(',')}}`;

/** The digest of anything that is made of plain data, wording too: a ward policy with the digests of its protocols. */
export const digestOfParts = (parts: Readonly<Record<string, unknown>>): string =>
  digest(plain({ language, ...parts }, nothing));

/** The same without the words for people. */
export const digestOfLogicParts = (parts: Readonly<Record<string, unknown>>): string =>
  digest(plain({ language, ...parts }, wording));

/** The digest of a text: SHA-256 over its UTF-8 bytes. `digestOfText('')` begins with `sha256:e3b0c442`. */
export const digestOfText = (text: string): string => `sha256:${bytesToHex(sha256(utf8ToBytes(text)))}`;

const digest = (value: unknown): string => digestOfText(canonicalText(value));

const canonicalText = (value: unknown): string => canonicalize(value) ?? '';

function plain(value: unknown, leftOut: ReadonlySet<string>): unknown {
  if (typeof value === 'string') return value.normalize('NFC');
  if (typeof value === 'number' || typeof value === 'bigint') return String(value);
  if (value instanceof Fraction) return value.toFraction();
  if (value instanceof Map) return plain(Object.fromEntries(value as Map<string, unknown>), leftOut);
  if (Array.isArray(value)) return value.map((each) => plain(each, leftOut));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(
    Object.entries(value)
      .filter(([key, each]) => each !== undefined && !leftOut.has(key))
      .map(([key, each]) => [key.normalize('NFC'), plain(each, leftOut)]),
  );
}
