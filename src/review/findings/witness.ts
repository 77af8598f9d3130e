import { observationsOfBox } from './observations-of-box.ts';
import type { Box } from '../box.ts';
import { boxToGiven } from '../examples/box-to-given.ts';
import { givenLines, levelLine } from '../examples/case-in-yaml.ts';
import { textToYaml } from '../examples/node-to-yaml.ts';
import { setInWords } from '../set-in-words.ts';
import type { Asking } from './asking.ts';
import type { Witness } from './finding.ts';

/** A set as a case that expects what the protocol says as it stands. Whether that is right is for people to say: it cites no source. */
export function witness(box: Box, name: string, asking: Asking): Witness {
  const { protocol } = asking.compiled;
  const answers = asking.answersTo(box);
  if (!answers) throw new Error(`a set that was found cannot be read: ${name}`);
  const met = answers.rules.filter(({ state }) => state === 'met').map(({ rule }) => rule.name);
  const levels = protocol.ladder.levels.map((level) => level.name);
  const expected = [...levelLine(answers, levels), ...(met.length > 0 ? [`met: [${met.join(', ')}]`] : [])];
  const given = boxToGiven(box, protocol);
  const yaml = [
    `  - case: ${textToYaml(`To be reviewed: ${name}`)}`,
    ...givenLines({ key: 'given', node: given }),
    ...(expected.length > 0
      ? ['    expect:', ...expected.map((line) => `      ${line}`)]
      : ['    expect: {}']),
    '',
  ].join('\n');
  return { words: setInWords(box, observationsOfBox(box, protocol), protocol), yaml };
}
