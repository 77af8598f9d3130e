import type { EntryDraft } from '../../../../src/index.ts';
import type { ToDecide } from './to-decide.ts';

const bodies = { approve: 'approved', put_in_force: 'in_force', withdraw: 'withdrawn' } as const;

/** What stands in every entry beside what was decided. */
const frame = ['record', 'entry', 'before', 'at'];

/**
 * Whether an entry that is to be signed says what was typed here, and nothing else: on the record that this page knows, for the edition
 * that it shows. Nobody signs what she has not read.
 */
export function isAsTyped(draft: EntryDraft, { what, id, head, edition, typed }: ToDecide): boolean {
  const body: object | undefined = draft[bodies[what]];
  const others = Object.keys(draft).filter((key) => !frame.includes(key));
  if (body === undefined || others.join() !== bodies[what]) return false;
  if (draft.record !== id.split('/').at(-1) || draft.before !== head) return false;
  const said: Readonly<Record<string, unknown>> = { ...body };
  const from = typed['from'] === '' ? { from: draft.at } : {};
  const expected: Readonly<Record<string, unknown>> = { ...typed, ...from, ...edition };
  // The seal is that of the file with this digest; a page shows editions by their digests.
  const names = new Set([...Object.keys(said), ...Object.keys(expected)].filter((name) => name !== 'seal'));
  return [...names].every((name) => {
    const value = expected[name];
    return said[name] === (typeof value === 'string' ? value.trim() : value);
  });
}
