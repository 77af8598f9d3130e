import { signatureOf, type EntryDraft, type PrivateKey } from '../../../../src/index.ts';
import { isAsTyped } from './is-as-typed.ts';
import type { ToDecide } from './to-decide.ts';

/** A problem beside the field of that name; null: about the whole. */
export interface FieldProblem {
  readonly field: string | null;
  readonly says: string;
}

/** What came of it. Unless it was entered, nothing in the record has changed. */
export type Sent =
  | { readonly kind: 'entered'; readonly says: string }
  | { readonly kind: 'refused'; readonly problems: readonly FieldProblem[] };

/** Whoever signs: the name that makes the entry, and the private key, which never leaves this page. */
export interface Signer {
  readonly by: string;
  readonly key: PrivateKey;
}

const noAnswer =
  'The server of the rooms did not answer, so it is not certain whether this was entered. Load the page anew and look at the record before you decide again.';
const notTyped =
  'What the server wants signed is not what was typed here, so nothing was signed or entered. Tell whoever looks after this machine.';

/** Sends a decision, and signs it in this page where entries are signed. Never throws. */
export async function decide(asked: ToDecide, signer: Signer | null): Promise<Sent> {
  const first = await post('decide', bodyOf(asked, null));
  const draft = first?.answer['sign'];
  if (!first || typeof draft !== 'object' || draft === null) return sentOf(first);
  if (!signer) return refused([{ field: 'key', says: 'Still to be given: the file with the private key.' }]);
  const toSign = draft as EntryDraft;
  if (!isAsTyped(toSign, asked)) return refused([{ field: null, says: notTyped }]);
  try {
    const { jws } = await signatureOf(toSign, signer.by, signer.key);
    return sentOf(await post('decide', bodyOf(asked, { at: toSign.at, jws })));
  } catch {
    return refused([{ field: 'key', says: 'This browser cannot sign with this key. Nothing was entered.' }]);
  }
}

const bodyOf = (
  { what, id, head, edition, typed }: ToDecide,
  signed: { readonly at: string; readonly jws: string } | null,
): object => ({ what, id, head, ...edition, ...typed, at: signed?.at ?? null, jws: signed?.jws ?? null });

/** What came of a seal: what holds of all that was asked, and what was said at the end. */
export interface SealSent {
  readonly isSealed: boolean;
  readonly holds: readonly string[];
  readonly says: string;
}

/** Asks for the draft on the disk to be sealed. It can take minutes. Never throws. */
export async function seal(id: string, onDisk: string, authors: readonly string[]): Promise<SealSent> {
  const heard = await post('seal', { id, on_disk: onDisk, authors });
  const { sealed, holds, says } = heard?.answer ?? {};
  const lines = (value: unknown): string[] => (Array.isArray(value) ? value.map(String) : []);
  if (heard?.status === 200 && Array.isArray(sealed)) {
    const all = lines(sealed);
    const told = all.filter((line) => !line.startsWith('Holds: '));
    return { isSealed: true, holds: all.filter((line) => line.startsWith('Holds: ')), says: told.join(' ') };
  }
  return { isSealed: false, holds: lines(holds), says: typeof says === 'string' ? says : noAnswer };
}

interface Heard {
  readonly status: number;
  readonly answer: Readonly<Record<string, unknown>>;
}

async function post(address: string, body: object): Promise<Heard | null> {
  try {
    const response = await fetch(address, {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: JSON.stringify(body),
    });
    const answer: unknown = await response.json();
    const isObject = typeof answer === 'object' && answer !== null;
    return { status: response.status, answer: isObject ? (answer as Heard['answer']) : {} };
  } catch {
    return null;
  }
}

const refused = (problems: readonly FieldProblem[]): Sent => ({ kind: 'refused', problems });

function sentOf(heard: Heard | null): Sent {
  const { entered, says, problems } = heard?.answer ?? {};
  if (heard?.status === 200 && typeof entered === 'string') return { kind: 'entered', says: entered };
  if (Array.isArray(problems)) return refused(problems as readonly FieldProblem[]);
  return refused([{ field: null, says: typeof says === 'string' ? says : noAnswer }]);
}
