import { expect, test } from 'vitest';
import { meaningWording } from '../../src/problems/wording/meaning.ts';
import { basedOnWording } from '../../src/problems/wording/based-on.ts';
import { casesWording } from '../../src/problems/wording/cases.ts';
import { faultsWording } from '../../src/problems/wording/faults.ts';
import { requirementsWording } from '../../src/problems/wording/requirements.ts';
import { wardWording } from '../../src/problems/wording/ward.ts';
import { codes, examples, problemsOf, wholeText } from './pages.ts';

test.each(examples)('$name', ({ code, of, parents, text, found }) => {
  const problems = problemsOf(of, wholeText(of, text), parents);
  const codesFound = problems.map((problem) => problem.code);
  if (found) expect(codesFound).toContain(code);
  else expect(problems.map((problem) => `${problem.code}: ${problem.says}`).join('\n')).toBe('');
});

test('every problem of what a file means has a page, and every page a problem', () => {
  expect(codes.sort()).toEqual(
    Object.keys({
      ...meaningWording,
      ...basedOnWording,
      ...casesWording,
      ...faultsWording,
      ...wardWording,
      ...requirementsWording,
    }).sort(),
  );
});
