import { expect, test } from 'vitest';
import { readRule, ruleLogic, sayRule } from '../../src/handbook/sentences/rules.ts';
import { readMeasure, sayMeasure } from '../../src/handbook/sentences/measures.ts';
import { readLimitLine, sayLimitLine } from '../../src/handbook/sentences/parts.ts';
import { same } from '../../src/handbook/sentences/same.ts';
import { sentencesToText, textToSentences, type Sentence } from '../../src/handbook/sentences/sentence.ts';
import { speakerOf } from '../../src/handbook/sentences/speaker.ts';
import { bundled, bundledNames, lessonNames } from '../bundled.ts';

const word = /[^\s]+/g;
const opposites: Readonly<Record<string, string>> = {
  below: 'above',
  above: 'below',
  most: 'least',
  least: 'most',
  all: 'none',
  both: 'neither',
  neither: 'both',
  lower: 'higher',
  highest: 'lowest',
  included: 'left out',
  '+': '−',
  '−': '+',
  '÷': '×',
};

/** A text with each word left out, with each number one more, and with each word turned into its opposite, in turn. */
function* changesOf(text: string): Generator<string> {
  for (const match of text.matchAll(word)) {
    const [before, found, after] = [
      text.slice(0, match.index),
      match[0],
      text.slice(match.index + match[0].length),
    ];
    if (found !== '-')
      yield before.replace(/ $/, '') + (after.startsWith('\n') ? '' : ' ') + after.trimStart();
    const number = /[0-9]+(?=[^0-9]*$)/.exec(found);
    if (number)
      yield `${before}${found.slice(0, number.index)}${Number(number[0]) + 1}${found.slice(number.index + number[0].length)}${after}`;
    const other = opposites[found];
    if (other !== undefined) yield before + other + after;
  }
}

/** The changed texts that are read to the very same as the text itself. */
function notNoticed(said: readonly Sentence[], read: (said: readonly Sentence[]) => unknown): string[] {
  const meant = read(said);
  expect(meant).not.toBeNull();
  const text = sentencesToText(said);
  return [...changesOf(text)].filter((changed) => {
    const typed = textToSentences(changed);
    return changed !== text && typed !== null && same(read(typed), meant);
  });
}

test.each([...bundledNames, ...lessonNames])(
  '%s: no changed word is read as if it were not changed',
  (name) => {
    const protocol = bundled(name);
    const speaker = speakerOf(protocol);
    for (const rule of protocol.rules)
      expect(notNoticed(sayRule(ruleLogic(rule), speaker), (said) => readRule(said, speaker))).toEqual([]);
    for (const measure of protocol.measures.values())
      expect(notNoticed(sayMeasure(measure, speaker), (said) => readMeasure(said, speaker))).toEqual([]);
    for (const limit of protocol.limits.values())
      expect(
        notNoticed([sayLimitLine(limit, speaker)], ([said]) => said && readLimitLine(said, speaker)),
      ).toEqual([]);
  },
);

test('the changes are made: of one sentence these', () => {
  expect([...changesOf('- a is below 90.\n')]).toContain('- a is below 91.\n');
  expect([...changesOf('- a is below 90.\n')]).toContain('- a is above 90.\n');
  expect([...changesOf('- a is below 90.\n')]).toContain('- a below 90.\n');
});
