import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { beginReadEdition } from '../../src/editions/read-edition.ts';
import { sealed } from '../../src/editions/seal.ts';

const path = new URL('../../protocols/early_warning_score/editions/1.yaml', import.meta.url);
const text = readFileSync(path, 'utf8');

/** The edition with its first sealed answer put otherwise, and sealed again: only running its cases shows that. */
function withOtherAnswer(): string {
  const body = text.slice(0, text.lastIndexOf('seal: '));
  const at = body.indexOf('settled: ', body.indexOf('\noutcomes:'));
  const word = /^settled: (true|false)/.exec(body.slice(at))?.[1] ?? 'none';
  return sealed(
    `${body.slice(0, at)}settled: ${word === 'true' ? 'false' : 'true'}${body.slice(at + 9 + word.length)}`,
  );
}

test('an edition is begun, and may answer once its cases are run', () => {
  const begun = beginReadEdition('1.yaml', text);
  expect(begun.problems).toEqual([]);
  expect(begun.reader).not.toBeNull();
  const { file, ...finished } = begun.finish();
  expect(finished).toEqual({ reader: begun.reader, problems: [] });
  expect(file?.digest).toMatch(/^sha256:/);
});

test('an edition that answers otherwise than it was sealed is begun, and never answers', () => {
  const begun = beginReadEdition('1.yaml', withOtherAnswer());
  expect(begun.reader).not.toBeNull();
  const { reader, problems } = begun.finish();
  expect(reader).toBeNull();
  expect(problems.map(({ code }) => code)).toEqual(['edition_answers_otherwise']);
});

test('an edition of which a letter was changed is not even begun', () => {
  const begun = beginReadEdition('1.yaml', text.replace('kit: ', 'kit:  '));
  expect(begun.reader).toBeNull();
  expect(begun.problems.map(({ code }) => code)).toEqual(['edition_changed']);
  expect(begun.finish()).toEqual({ reader: null, file: null, problems: begun.problems });
});
