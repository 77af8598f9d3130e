import type { Asks } from '../../protocol/requirements/requirement.ts';
import { between, cutAt, every } from './apart.ts';
import { wordForWord } from './same.ts';
import { plain, type Sentence } from './sentence.ts';
import type { Speaker } from './speaker.ts';
import { readHiding, readWorse, sayHiding, sayWorse } from './pairs.ts';

const atLeast = 'The level is at least ';
const atMost = 'The level is at most ';
const noHigher = ', and could be no higher.';
const ruleMet = 'The rule ';
const isMet = ' is met.';
const never = (count: number): string => `These ${count} rules are never all met:`;

/** Kinds that say the same of every protocol. */
const fixed = {
  no_level: 'There is no level: this is not for such a patient.',
  fault_never_lowers:
    'Of two sets that differ only in what tells of faults of technique, the one with a fault has no lower level than the one without.',
  always_some_advice: 'A rule that says, asks or does something is met.',
} as const;

/** What a requirement asks, as one sentence: `The level is at least “Call the doctor”.` */
export function sayAsks(asks: Asks, speaker: Speaker): Sentence {
  const { levels, rules, protocol } = speaker;
  const title = (level: number): string => levels.quoted(protocol.ladder.levels[level]?.name ?? '');
  switch (asks.kind) {
    case 'level_at_least':
      return plain(`${atLeast}${title(asks.level)}.`);
    case 'level_at_most':
      return plain(`${atMost}${title(asks.level)}${noHigher}`);
    case 'rule_met':
      return plain(`${ruleMet}${rules.quoted(asks.rule)}${isMet}`);
    case 'never_together':
      return {
        text: never(asks.rules.length),
        of: asks.rules.map((each) => plain(rules.quoted(each))),
      };
    case 'getting_worse_never_lowers':
      return sayWorse(asks, speaker);
    case 'nothing_hides':
      return sayHiding(asks, speaker);
    default:
      return plain(fixed[asks.kind]);
  }
}

/** The same back; null for what is not said so. */
export const readAsks = (sentence: Sentence, speaker: Speaker): Asks | null =>
  wordForWord(readKind(sentence, speaker), sentence, (asks) => sayAsks(asks, speaker));

function readKind(sentence: Sentence, speaker: Speaker): Asks | null {
  const { text, of } = sentence;
  const kinds = Object.keys(fixed) as (keyof typeof fixed)[];
  const known = kinds.find((kind) => fixed[kind] === text);
  if (known) return { kind: known };
  return (
    readLevel(text, speaker) ??
    readRules(text, of, speaker) ??
    readWorse(sentence, speaker) ??
    readHiding(sentence, speaker)
  );
}

function readLevel(text: string, { levels, protocol }: Speaker): Asks | null {
  const found = (label: string | null): number =>
    protocol.ladder.levels.findIndex(({ name }) => label !== null && name === levels.nameOf(label));
  const [least, most] = [found(between(text, atLeast, '.')), found(between(text, atMost, noHigher))];
  if (least >= 0) return { kind: 'level_at_least', level: least };
  return most >= 0 ? { kind: 'level_at_most', level: most } : null;
}

function readRules(text: string, of: readonly Sentence[], { rules }: Speaker): Asks | null {
  const rule = rules.nameOf(cutAt(between(text, ruleMet) ?? '', isMet)?.[0] ?? '');
  if (rule !== undefined) return { kind: 'rule_met', rule };
  const names = every(of, (each) => rules.nameOf(each.text) ?? null);
  return names && text === never(names.length) ? { kind: 'never_together', rules: names } : null;
}
