import { expect, test } from 'vitest';
import type { SiteProtocol } from '../../editor/src/common/site-protocol.ts';
import { chosenSides, sideChoices } from '../../editor/src/review/sides/side-choices.ts';

const bare: SiteProtocol = {
  kind: 'ward',
  id: 'small_ward',
  title: 'A small ward',
  file: 'small_ward/ward.yaml',
  text: '',
  ladder: null,
  cases: null,
};

const edition = (number: number): NonNullable<SiteProtocol['editions']>[number] => ({
  edition: number,
  digest: '',
  logic_digest: '',
  sealed_on: '',
  authors: [],
  file: `small_ward/editions/${number}.yaml`,
  address: `editions/small_ward/${number}.yaml`,
});

const record = (number: number): NonNullable<SiteProtocol['record']> => ({
  holds: true,
  problems: [],
  head: null,
  in_force: { edition: number, digest: '', from: '', since: '', by: '', because: '' },
  withdrawn: null,
  planned: [],
  ends: null,
  approvers: null,
  editions: [],
  entries: [],
});

const sealed = { ...bare, editions: [edition(1), edition(2), edition(3)] };
const inForce = { ...sealed, record: record(2) };

test('without a sealed edition there is nothing to compare the draft with', () => {
  expect(chosenSides(bare, null)).toEqual({ before: null, after: 'draft' });
  expect(sideChoices(bare).map(({ name }) => name)).toEqual(['draft']);
});

test('what is in force is compared with the draft; without a record, what was sealed last', () => {
  expect(chosenSides(inForce, null)).toEqual({ before: '2', after: 'draft' });
  expect(chosenSides(sealed, null)).toEqual({ before: '3', after: 'draft' });
  expect(sideChoices(inForce)[1]?.label).toBe('Edition 2, in force');
});

test('the address chooses both sides, as far as they are there', () => {
  expect(chosenSides(inForce, ['1', '3'])).toEqual({ before: '1', after: '3' });
  expect(chosenSides(inForce, ['draft', '1'])).toEqual({ before: 'draft', after: '1' });
  expect(chosenSides(inForce, ['7', '8'])).toEqual({ before: '2', after: 'draft' });
});
