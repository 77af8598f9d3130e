import type { Condition, Fault, Limit, Partition, Protocol } from '../../protocol/protocol.ts';
import { cutAt } from './apart.ts';
import { readCondition, readItems, sayCondition } from './conditions.ts';
import { fromSteps, readIn, readNumber, sayNumber, toWholeSteps } from './numbers.ts';
import { wordForWord } from './same.ts';
import { clauseAfter, item, plain, whole, type Sentence } from './sentence.ts';
import { readObservation, sayThing, type Speaker } from './speaker.ts';

export type LimitLogic = Pick<Limit, 'name' | 'unit' | 'value' | 'between' | 'setBy'>;
export type FaultLogic = Pick<Fault, 'name' | 'when' | 'readsHigh' | 'readsLow'>;

const forPatients = 'This protocol is for a patient when ';
const forAll = 'This protocol is for every patient.';

/** For whom a protocol is. */
export const sayApplies = ({ applies }: Pick<Protocol, 'applies'>, speaker: Speaker): Sentence =>
  applies ? whole(forPatients, sayCondition(applies, speaker)) : plain(forAll);

/** The condition in braces, as null is an answer too: for every patient. */
export const readApplies = (sentence: Sentence, speaker: Speaker): { applies: Condition | null } | null =>
  wordForWord(readPatients(sentence, speaker), sentence, (read) => sayApplies(read, speaker));

function readPatients(sentence: Sentence, speaker: Speaker): { applies: Condition | null } | null {
  if (sentence.text === forAll && sentence.of.length === 0) return { applies: null };
  const clause = clauseAfter(forPatients, sentence);
  const applies = clause && readCondition(clause, speaker);
  return applies && { applies };
}

const exactly = (count: number): string => `In every set exactly one of these ${count} holds`;

/** What must have no hole and no overlap. */
export const sayPartition = ({ of }: Pick<Partition, 'of'>, speaker: Speaker): Sentence =>
  whole(exactly(of.length), { text: '', of: of.map((each) => item('', sayCondition(each, speaker))) });

export function readPartition({ text, of }: Sentence, speaker: Speaker): { of: readonly Condition[] } | null {
  const read = readItems(of, speaker);
  return read && text === `${exactly(of.length)}:` ? { of: read } : null;
}

/** `The limit “lowest acceptable mean pressure” is 65 mmHg; it may be changed for one patient, from 55 mmHg to 85 mmHg, by: prescriber.` */
export function sayLimitLine(limit: Limit, { things }: Speaker): Sentence {
  const said = (steps: number): string => sayNumber(fromSteps(steps, limit.stepsPerUnit), limit.unit);
  const { between: bounds, setBy } = limit;
  const by = setBy === null ? '' : `, by: ${setBy}`;
  const change = bounds
    ? `it may be changed for one patient, from ${said(bounds[0])} to ${said(bounds[1])}`
    : 'nobody may change it for a patient';
  return plain(`The limit ${things.quoted(limit.name)} is ${said(limit.value)}; ${change}${by}.`);
}

export const readLimitLine = (sentence: Sentence, speaker: Speaker): LimitLogic | null =>
  wordForWord(readLimitParts(sentence, speaker), sentence, (read) => {
    const limit = speaker.protocol.limits.get(read.name);
    return limit && sayLimitLine({ ...limit, ...read }, speaker);
  });

function readLimitParts(sentence: Sentence, { protocol, things }: Speaker): LimitLogic | null {
  const clause = clauseAfter('The limit ', sentence);
  const [label, rest] = cutAt(clause?.text ?? '', ' is ') ?? ['', ''];
  const limit = protocol.limits.get(things.nameOf(label) ?? '');
  const [, value = '', low, high, by] =
    /^([^;]+); (?:nobody may change it for a patient|it may be changed for one patient, from ([^;,]+) to ([^;,]+?))(?:, by: (.+))?$/u.exec(
      rest,
    ) ?? [];
  const number = readNumber(value);
  if (!limit || !number || (clause?.of.length ?? 1) > 0) return null;
  const steps = (words: string): number | null => {
    const read = readIn(words, number.unit);
    return read && toWholeSteps(read, limit.stepsPerUnit);
  };
  const [at, from, to] = [steps(value), low === undefined ? null : steps(low), steps(high ?? value)];
  if (at === null || to === null || (low !== undefined && from === null)) return null;
  const between = from === null ? null : ([from, to] as const);
  return { name: limit.name, unit: number.unit, value: at, between, setBy: by ?? null };
}

const amounts = { lower: 'readsHigh', higher: 'readsLow' } as const;

/** `The fault “arm hangs” is there when …`, and what it does to which number. */
export function sayFault({ name, when, readsHigh, readsLow }: FaultLogic, speaker: Speaker): Sentence[] {
  const said = (way: keyof typeof amounts, by: ReadonlyMap<string, number>): Sentence[] =>
    [...by].map(([observation, steps]) => {
      const { stepsPerUnit, unit } = speaker.observation(observation);
      const amount = sayNumber(fromSteps(steps, stepsPerUnit), unit);
      return plain(`Then ${sayThing(observation, speaker)} may truly be ${way} by up to ${amount}.`);
    });
  return [
    whole(`The fault ${speaker.faults.quoted(name)} is there when `, sayCondition(when, speaker)),
    ...said('lower', readsHigh),
    ...said('higher', readsLow),
  ];
}

export const readFault = (sentences: readonly Sentence[], speaker: Speaker): FaultLogic | null =>
  wordForWord(readFaultParts(sentences, speaker), sentences, (fault) => sayFault(fault, speaker));

function readFaultParts([first, ...rest]: readonly Sentence[], speaker: Speaker): FaultLogic | null {
  const [label, condition] = cutAt(first?.text.replace(/^The fault /, '') ?? '', ' is there when ') ?? [
    '',
    '',
  ];
  const name = speaker.faults.nameOf(label);
  const clause = first && clauseAfter('', { text: condition, of: first.of });
  const when = clause && readCondition(clause, speaker);
  const by = { readsHigh: new Map<string, number>(), readsLow: new Map<string, number>() };
  for (const { text, of } of rest) {
    const [, thing = '', way, amount = ''] =
      /^Then (.*) may truly be (lower|higher) by up to (.*)\.$/u.exec(text) ?? [];
    const observation = readObservation(thing, speaker);
    const read = observation && readIn(amount, observation.unit);
    const steps = read && toWholeSteps(read, observation.stepsPerUnit);
    if (steps === null || !observation || of.length > 0) return null;
    by[amounts[way as keyof typeof amounts]].set(observation.name, steps);
  }
  return name !== undefined && when ? { name, when, ...by } : null;
}
