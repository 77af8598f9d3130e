import { sha256 } from '@noble/hashes/sha2.js';
import { bytesToHex, utf8ToBytes } from '@noble/hashes/utils.js';

/** What is to be saved, and what it was made from. */
export interface ToSave {
  /** The folder of the protocol below the one that is served: `lessons/a_curve`. */
  readonly id: string;
  readonly part: 'protocol' | 'cases';
  readonly text: string;
  /** The digest of the text that the page started from; null: a new file. */
  readonly onDisk: string | null;
}

/** What came of it. Unless it was saved, nothing on the disk has changed. */
export type Saved =
  | { readonly kind: 'saved'; readonly digest: string }
  /** Somebody else has changed the file since the page started; this is what stands there now. Null: it is gone. */
  | { readonly kind: 'changed_on_disk'; readonly digest: string | null; readonly text: string | null }
  /** Words for whoever wanted to save. */
  | { readonly kind: 'refused'; readonly says: string };

/**
 * The digest of a text, as the server finds it in the file that holds it: SHA-256 of its UTF-8 bytes. Made here, as a page that does not
 * come from this machine has no digests of the browser's own.
 *
 * `digestOf('')` begins with `sha256:e3b0c442`.
 */
export const digestOf = (text: string): string => `sha256:${bytesToHex(sha256(utf8ToBytes(text)))}`;

const noAnswer =
  'The server of the rooms did not answer, so it is not certain whether this was saved. Nothing is lost: the text is still in this page. Is the server still running? Then save again.';

/** Saves a text where it came from, if nobody else has changed it there in the meantime. Never throws. */
export async function save({ id, part, text, onDisk }: ToSave): Promise<Saved> {
  try {
    const response = await fetch('save', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify({ id, part, text, on_disk: onDisk }),
    });
    return savedOf(response.status, await response.json(), text);
  } catch {
    return { kind: 'refused', says: noAnswer };
  }
}

/** What an answer means. One that is no answer of the server's means that it is not known whether it was saved. */
function savedOf(status: number, answer: unknown, text: string): Saved {
  const { digest, text: theirs, says } = (answer ?? {}) as Readonly<Record<string, unknown>>;
  if (status === 200 && typeof digest === 'string') return { kind: 'saved', digest };
  if (status === 409 && typeof digest === 'string' && typeof theirs === 'string') {
    // Saved before, but the answer was lost on the way.
    return theirs === text && digest === digestOf(text)
      ? { kind: 'saved', digest }
      : { kind: 'changed_on_disk', digest, text: theirs };
  }
  if (status === 409 && digest === null) return { kind: 'changed_on_disk', digest: null, text: null };
  return { kind: 'refused', says: typeof says === 'string' ? says : noAnswer };
}
