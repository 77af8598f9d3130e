import { expect, test } from 'vitest';
import { editionsWording } from '../../src/problems/wording/editions.ts';
import { recordWording } from '../../src/problems/wording/record.ts';
import { codesOfApprovers, codesOfEdition, codesOfRecord } from './kept-pages.ts';
import { keptExamples } from './pages.ts';

// Each problem of a sealed edition, of a record, and of a list of approvers has its page, as those of a protocol have.

test.each(keptExamples)('$name', async ({ code, of, text, found }) => {
  const codes =
    of === 'edition'
      ? codesOfEdition(text)
      : of === 'record'
        ? await codesOfRecord(text)
        : codesOfApprovers(text);
  if (found) expect(codes).toContain(code);
  else expect(codes).toEqual([]);
});

test('every problem has a page, and every page a problem', () => {
  const codes = [...new Set(keptExamples.map(({ code }) => code))];
  expect(codes.sort()).toEqual(Object.keys({ ...editionsWording, ...recordWording }).sort());
});
