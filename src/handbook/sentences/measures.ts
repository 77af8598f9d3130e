import type { Measure, MeasureHow } from '../../protocol/protocol.ts';
import { unitByWord, type Unit } from '../../vocabulary/units.ts';
import { cutAt, every } from './apart.ts';
import { readCondition, sayCondition } from './conditions.ts';
import { readFormula, sayFormula } from './formulas.ts';
import { readLookBack, sayLookBack } from './look-backs.ts';
import { readOperand, sayOperand } from './operands.ts';
import { wordForWord } from './same.ts';
import { clauseAfter, clauseOf, item, plain, whole, type Sentence } from './sentence.ts';
import type { Speaker } from './speaker.ts';
import { readCurve, readPart, sayCurve, sayPart } from './tables.ts';

/** A formula as it is worked out, without the text that it was written in. */
type HowSaid =
  Exclude<MeasureHow, { kind: 'formula' }> | Omit<Extract<MeasureHow, { kind: 'formula' }>, 'text'>;

/** All that decides what a measure comes to. */
export interface MeasureLogic extends Pick<Measure, 'name' | 'unit' | 'notReliableWhen'> {
  readonly how: HowSaid;
}

const blind = 'It is not reliable when ';

/** `The “estimated mean pressure”, in mmHg, is (the systolic pressure + 2 × the diastolic pressure) ÷ 3.` */
export function sayMeasure({ name, unit, how, notReliableWhen }: MeasureLogic, speaker: Speaker): Sentence[] {
  const start = `The ${speaker.things.of(name)}${unit ? `, in ${unit.word},` : ''} is `;
  return [
    whole(start, sayHow(how, unit, speaker)),
    ...(notReliableWhen ? [whole(blind, sayCondition(notReliableWhen, speaker))] : []),
  ];
}

const firstThatFits = (count: number): string => `the first of these ${count} that fits`;
const firstKnown = (count: number): string => `the first of these ${count} that is known`;
const sumOf = (count: number): string =>
  count === 1 ? 'given by this line' : `the sum of the points from these ${count}`;

function sayHow(how: HowSaid, unit: Unit | null, speaker: Speaker): Sentence {
  switch (how.kind) {
    case 'formula':
      return plain(sayFormula(how.formula, speaker));
    case 'curve':
      return sayCurve(how, unit, speaker);
    case 'score':
      return { text: sumOf(how.parts.length), of: how.parts.map((part) => plain(sayPart(part, speaker))) };
    case 'choose':
      return {
        text: firstThatFits(how.entries.length),
        of: how.entries.map(({ when, use }) => {
          const words = sayOperand(use, unit, speaker);
          return when ? item(`${words} when `, sayCondition(when, speaker)) : plain(`otherwise ${words}`);
        }),
      };
    case 'first_known':
      return {
        text: firstKnown(how.of.length),
        of: how.of.map((each) => plain(sayOperand(each, unit, speaker))),
      };
    default:
      return sayLookBack(how, speaker);
  }
}

/** The same back, without places; null for sentences that are not as a measure is said. */
export const readMeasure = (sentences: readonly Sentence[], speaker: Speaker): MeasureLogic | null =>
  wordForWord(readSentences(sentences, speaker), sentences, (measure) => sayMeasure(measure, speaker));

function readSentences([first, second, ...more]: readonly Sentence[], speaker: Speaker): MeasureLogic | null {
  if (!first || more.length > 0) return null;
  const [start, rest] = cutAt(first.text, ' is ') ?? ['', ''];
  const [, label = '', word] = /^The (.*?)(?:, in (\S+),)?$/u.exec(start) ?? [];
  const name = speaker.things.nameOf(label);
  const unit = word === undefined ? null : unitByWord(word);
  const clause = clauseAfter('', { text: rest, of: first.of });
  const how = unit !== undefined && clause && readHow(clause, unit, speaker);
  const when = second && clauseAfter(blind, second);
  const notReliableWhen = when ? readCondition(when, speaker) : null;
  if (name === undefined || unit === undefined || !how || (second && !notReliableWhen)) return null;
  return { name, unit, how, notReliableWhen };
}

function readHow(clause: Sentence, unit: Unit | null, speaker: Speaker): HowSaid | null {
  const { text, of } = clause;
  if (text === sumOf(of.length)) {
    const parts = every(of, (each) => (each.of.length > 0 ? null : readPart(each.text, speaker)));
    return parts && { kind: 'score', parts };
  }
  if (text === firstKnown(of.length)) {
    const operands = every(of, (each) => (each.of.length > 0 ? null : readOperand(each.text, speaker)));
    return operands && { kind: 'first_known', of: operands };
  }
  if (text === firstThatFits(of.length)) {
    const entries = every(of, (each) => readEntry(each, speaker));
    return entries && { kind: 'choose', entries };
  }
  const formula = of.length > 0 ? null : readFormula(text, speaker);
  if (formula) return { kind: 'formula', formula };
  return readCurve(clause, unit, speaker) ?? readLookBack(clause, speaker);
}

type Entry = Extract<MeasureHow, { kind: 'choose' }>['entries'][number];

function readEntry(sentence: Sentence, speaker: Speaker): Entry | null {
  const clause = clauseOf(sentence);
  if (!clause) return null;
  if (clause.text.startsWith('otherwise ')) {
    const use = readOperand(clause.text.slice('otherwise '.length), speaker);
    return use && clause.of.length === 0 ? { when: null, use } : null;
  }
  const [words, condition] = cutAt(clause.text, ' when ') ?? ['', ''];
  const use = readOperand(words, speaker);
  const when = readCondition({ text: condition, of: clause.of }, speaker);
  return use && when && { when, use };
}
