import fc from 'fast-check';
import { expect, test } from 'vitest';
import { compile } from '../../src/outcome/compile.ts';
import { logicToJson } from '../../src/logic/logic-to-json.ts';
import { sentencesToText, textToSentences } from '../../src/handbook/sentences/sentence.ts';
import { readRule, ruleLogic, sayRule } from '../../src/handbook/sentences/rules.ts';
import { speak } from '../../src/handbook/sentences/spoken.ts';
import { speakerOf } from '../../src/handbook/sentences/speaker.ts';
import { unplacedRule } from '../../src/handbook/sentences/unplaced.ts';
import type { Protocol } from '../../src/protocol/protocol.ts';
import { bundled, bundledNames, lessonNames } from '../bundled.ts';
import { seed } from '../agreement/settings.ts';
import { graftedProtocol } from './grafted.ts';
import { spokenProtocol, spokenTexts } from './made-up.ts';

const all = [...bundledNames, ...lessonNames];
const settings = { numRuns: 200, seed };

const logicOf = (protocol: Protocol): unknown => logicToJson(compile(protocol).logic, protocol);

test.each(all)('%s: what runs is what its sentences say, step by step', (name) => {
  const protocol = bundled(name);
  expect(logicOf(graftedProtocol(protocol))).toEqual(logicOf(protocol));
});

test(
  'each sentence of a made-up protocol reads back to what it says, whatever its titles are',
  { timeout: 180_000 },
  () => {
    fc.assert(
      fc.property(spokenTexts, (text) => {
        const protocol = spokenProtocol(text);
        speak(protocol);
        expect(logicOf(graftedProtocol(protocol))).toEqual(logicOf(protocol));
      }),
      settings,
    );
  },
);

test('sentences survive being typed out as lines', { timeout: 180_000 }, () => {
  fc.assert(
    fc.property(spokenTexts, (text) => {
      const protocol = spokenProtocol(text);
      const speaker = speakerOf(protocol);
      for (const rule of protocol.rules) {
        const typed = textToSentences(sentencesToText(sayRule(ruleLogic(rule), speaker)));
        expect(typed && readRule(typed, speaker)).toEqual(unplacedRule(ruleLogic(rule), speaker));
      }
    }),
    { ...settings, numRuns: 100 },
  );
});

test('a line that stands too deep, or that is none, is refused', () => {
  expect(textToSentences('- a:\n    - b\n')).toBeNull();
  expect(textToSentences('a\n')).toBeNull();
  expect(textToSentences('- a:\n  - b\n- c\n')).toEqual([
    { text: 'a:', of: [{ text: 'b', of: [] }] },
    { text: 'c', of: [] },
  ]);
});
