import type { Comparison, Condition, NumberComparison } from '../../protocol/protocol.ts';
import { listed } from '../../protocol/words.ts';
import { between, cutAt, every, partsOf } from './apart.ts';
import { readNamed, readOperand, sayOperand } from './operands.ts';
import { readChoice, readObservation, sayChoice, sayThing, type Speaker } from './speaker.ts';

const hows = { below: 'below', above: 'above', at_most: 'at most', at_least: 'at least' } as const;
const howWords = Object.entries(hows) as [NumberComparison['how'], string][];

const known = 'a value is known for ';
const unknown = 'no value is known for ';
const unobtainable = ' was tried and could not be obtained';
const nobody = 'nobody has reported that ';

/** What has nothing below it, as a clause: `the systolic pressure is below 90 mmHg`. */
export function sayLeaf(leaf: Comparison | Extract<Condition, { kind: 'rule' }>, speaker: Speaker): string {
  switch (leaf.kind) {
    case 'rule':
      return `the rule ${speaker.rules.quoted(leaf.rule)} is met`;
    case 'compare': {
      const { subject, how, to } = leaf;
      const unit = speaker.unitOf(subject.name);
      return `${sayThing(subject.name, speaker)} is ${hows[how]} ${sayOperand(to, unit, speaker)}`;
    }
    case 'one_of': {
      const labels = leaf.choices.map((each) => sayChoice(each, leaf.observation, speaker));
      const thing = sayThing(leaf.observation, speaker);
      const among = speaker.observation(leaf.observation).kind === 'several';
      return `${among ? `among ${thing}` : thing} is ${listed(labels, 'or')}`;
    }
    case 'known':
      return `${leaf.is ? known : unknown}${sayThing(leaf.observation, speaker)}`;
    case 'unobtainable':
      return `${leaf.is ? '' : nobody}${sayThing(leaf.observation, speaker)}${unobtainable}`;
  }
}

/** The same back; null for what is no such clause. Where it stands in a file is not read. */
export function readLeaf(words: string, speaker: Speaker): Condition | null {
  const rule = between(words, 'the rule ', ' is met');
  if (rule !== null) {
    const name = speaker.rules.nameOf(rule);
    return name === undefined ? null : { kind: 'rule', rule: name, path: [] };
  }
  return readFact(words, speaker) ?? readNumberAsked(words, speaker) ?? readChoiceAsked(words, speaker);
}

function readFact(words: string, speaker: Speaker): Condition | null {
  const asked = [
    { kind: 'known', is: true, thing: between(words, known) },
    { kind: 'known', is: false, thing: between(words, unknown) },
    { kind: 'unobtainable', is: false, thing: between(words, nobody, unobtainable) },
    { kind: 'unobtainable', is: true, thing: between(words, '', unobtainable) },
  ] as const;
  const found = asked.find(({ thing }) => thing !== null);
  const observation = readObservation(found?.thing ?? '', speaker);
  return found && observation
    ? { kind: found.kind, observation: observation.name, is: found.is, path: [] }
    : null;
}

function readNumberAsked(words: string, speaker: Speaker): Condition | null {
  const [start, end] = cutAt(words, ' is ') ?? ['', ''];
  const subject = readNamed(start, speaker);
  const [how, said] = howWords.find(([, each]) => end.startsWith(`${each} `)) ?? [];
  if (!subject || how === undefined || said === undefined) return null;
  const to = readOperand(end.slice(said.length + 1), speaker);
  return to && { kind: 'compare', subject, how, to, path: [] };
}

function readChoiceAsked(words: string, speaker: Speaker): Condition | null {
  const [start, end] = cutAt(words, ' is ') ?? ['', ''];
  const among = between(start, 'among ');
  const observation = readObservation(among ?? start, speaker);
  if (!observation || observation.kind === 'number') return null;
  if ((observation.kind === 'several') !== (among !== null)) return null;
  const labels = readListed(end);
  const choices = labels && every(labels, (label) => readChoice(label, observation.name, speaker));
  if (!choices) return null;
  const leaf: Comparison = { kind: 'one_of', observation: observation.name, choices, path: [] };
  return sayLeaf(leaf, speaker) === words ? leaf : null;
}

/** The words of a list `a, b or c`; null when its last two are not joined by `or`. */
function readListed(words: string): string[] | null {
  const [start, last] = cutAt(words, ' or ') ?? [null, words];
  return start === null ? [last] : [...partsOf(start, ', '), last];
}
