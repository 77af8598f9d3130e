import fc from 'fast-check';
import { expect, test } from 'vitest';
import { asRules, isMissed, judge, type RulesSay, type Said } from '../../src/teach/judge.ts';
import { rulesInWords, saidInWords, sayable, verdictInWords } from '../../src/teach/verdict-in-words.ts';

const settled = (level: number): RulesSay => ({ atLeast: level, couldBe: level });

test('of a settled level, below is too little and above is too much', () => {
  expect([0, 1, 2, 3, 4].map((said) => judge(said, settled(2)))).toEqual([
    'too_little',
    'too_little',
    'as_the_rule_says',
    'too_much',
    'too_much',
  ]);
});

test('between what is called for and what it could be, the rules leave it open', () => {
  const open: RulesSay = { atLeast: 1, couldBe: 3 };
  expect([0, 1, 2, 3, 4].map((said) => judge(said, open))).toEqual([
    'too_little',
    'as_the_rule_says',
    'left_open',
    'left_open',
    'too_much',
  ]);
});

test('with nothing called for and not settled, the answer is to complete the set; the lowest level is too little', () => {
  const open: RulesSay = { atLeast: null, couldBe: 3 };
  expect(judge('complete_the_set', open)).toBe('as_the_rule_says');
  expect([0, 1, 3, 4].map((said) => judge(said, open))).toEqual([
    'too_little',
    'left_open',
    'left_open',
    'too_much',
  ]);
});

test('to wait for the set where something is to be done is too little; where nothing is, too much', () => {
  expect(judge('complete_the_set', { atLeast: 1, couldBe: 3 })).toBe('too_little');
  expect(judge('complete_the_set', settled(3))).toBe('too_little');
  expect(judge('complete_the_set', settled(0))).toBe('too_much');
});

test('for another patient only that is the answer, and silence is no all-clear', () => {
  expect(judge('not_for_patient', null)).toBe('as_the_rule_says');
  expect(judge(0, null)).toBe('too_little');
  expect(judge('complete_the_set', null)).toBe('too_little');
  expect(judge(3, null)).toBe('left_open');
  expect(judge('not_for_patient', settled(0))).toBe('too_little');
  expect(judge('not_for_patient', { atLeast: null, couldBe: 0 })).toBe('too_little');
});

const rules: fc.Arbitrary<RulesSay> = fc.oneof(
  fc.constant(null),
  fc.tuple(fc.option(fc.nat(4)), fc.nat(4)).map(([atLeast, couldBe]) => ({
    atLeast,
    couldBe: Math.max(atLeast ?? 0, couldBe),
  })),
);
const said: fc.Arbitrary<Said> = fc.oneof(
  fc.nat(4),
  fc.constantFrom<Said>('complete_the_set', 'not_for_patient'),
);
const ladder = ['Usual round', 'Look again', 'Tell', 'Call', 'Emergency'];

test('what the rules say is always as they say, and nothing else is', () => {
  fc.assert(
    fc.property(rules, said, (found, answer) => {
      expect(judge(answer, found) === 'as_the_rule_says').toBe(answer === asRules(found));
    }),
  );
});

test('a higher level is never a smaller call than a lower one', () => {
  const order = ['too_little', 'as_the_rule_says', 'left_open', 'too_much'];
  fc.assert(
    fc.property(rules, fc.nat(3), (found, level) => {
      expect(order.indexOf(judge(level + 1, found))).toBeGreaterThanOrEqual(
        order.indexOf(judge(level, found)),
      );
    }),
  );
});

test('every answer is told beside your ward’s rule, and never as correct or wrong', () => {
  fc.assert(
    fc.property(rules, said, (found, answer) => {
      const verdict = judge(answer, found);
      const words = verdictInWords(answer, found, verdict);
      expect(words).toMatch(/your ward’s rule/i);
      expect(words).not.toMatch(/correct|wrong|right|mistake|fail/i);
      expect(isMissed(verdict)).toBe(verdict === 'too_little' || verdict === 'too_much');
      expect(rulesInWords(found, ladder)).toContain(saidInWords(asRules(found), ladder));
    }),
  );
});

test('everything on the ladder can be said, the highest first, and that there is no level', () => {
  expect(sayable(ladder)).toEqual([4, 3, 2, 1, 0, 'complete_the_set', 'not_for_patient']);
  expect(rulesInWords({ atLeast: null, couldBe: 4 }, ladder)).toBe(
    'Not settled: complete the set. It could be as high as: Emergency',
  );
  expect(rulesInWords({ atLeast: 1, couldBe: 4 }, ladder)).toBe(
    'Act now on: Look again. It could be as high as: Emergency',
  );
});
