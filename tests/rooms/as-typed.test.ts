import { expect, test } from 'vitest';
import { isAsTyped } from '../../editor/src/review/decide/is-as-typed.ts';
import type { ToDecide } from '../../editor/src/review/decide/to-decide.ts';
import type { EntryDraft } from '../../src/index.ts';

// What a page lets somebody sign.

const digest = (digit: string): string => `sha256:${digit.repeat(64)}`;
const at = '2026-03-03T12:00:00Z';
const asked: ToDecide = {
  what: 'put_in_force',
  id: 'wards/small_ward',
  head: digest('a'),
  edition: { edition: 2, digest: digest('b') },
  typed: { by: 'Dr Ash', because: ' Agreed. ', from: '' },
};
const put = {
  edition: 2,
  digest: digest('b'),
  seal: digest('c'),
  from: at,
  by: 'Dr Ash',
  because: 'Agreed.',
};
const draft: EntryDraft = { record: 'small_ward', entry: 5, before: digest('a'), at, in_force: put };

test('an entry that says what was typed may be signed', () => {
  expect(isAsTyped(draft, asked)).toBe(true);
});

test.each<readonly [string, EntryDraft]>([
  ['another record', { ...draft, record: 'other_ward' }],
  ['another record before it', { ...draft, before: digest('d') }],
  ['another edition', { ...draft, in_force: { ...put, edition: 3 } }],
  ['another digest', { ...draft, in_force: { ...put, digest: digest('d') } }],
  ['another person', { ...draft, in_force: { ...put, by: 'Dr Elm' } }],
  ['another reason', { ...draft, in_force: { ...put, because: 'Agreed by all.' } }],
  ['another time than at once', { ...draft, in_force: { ...put, from: '2026-03-04T12:00:00Z' } }],
  [
    'another decision',
    {
      record: 'small_ward',
      entry: 5,
      before: digest('a'),
      at,
      approved: { ...put, role: 'Doctor', minute: '1', on: '2026-03-03' },
    },
  ],
  ['a second decision', { ...draft, withdrawn: { from: at, by: 'Dr Ash', because: 'x', instead: 'y' } }],
])('%s may not', (_, other) => {
  expect(isAsTyped(other, asked)).toBe(false);
});

test('a stated time is the one that is signed', () => {
  const later = { ...asked, typed: { ...asked.typed, from: '2026-03-04T12:00:00+00:00' } };
  expect(isAsTyped(draft, later)).toBe(false);
  expect(isAsTyped({ ...draft, in_force: { ...put, from: '2026-03-04T12:00:00+00:00' } }, later)).toBe(true);
});
