import type { Observation } from '../protocol/protocol.ts';
import type { Present, SeriesFacts } from '../series/bounds.ts';
import { hows } from './sentences.ts';
import { timeInWords } from './time-in-words.ts';

/** What the evaluator found for one way of taking earlier values. */
export interface View {
  /** Inputs, then steps. */
  readonly result: Float64Array;
  readonly facts: SeriesFacts;
  /** Whether earlier values count as missing here, or stand in. */
  readonly wide: boolean;
  /** How each measure came about, in words, once it has been asked. */
  readonly hows: Map<string, string>;
}

/** Reads one answer in a result; truths are 1 and 0. */
export type Read = (result: Float64Array) => number;

const noValue: ReadonlySet<Present['state']> = new Set(['missing', 'refused', 'unobtainable', 'declined']);

/** Whether an observation has no value in the present set: nothing at all, or only one of an earlier set. */
export const lacks = (present: Present | undefined): boolean =>
  !present || noValue.has(present.state) || present.state === 'earlier';

/** What is to be said in brackets after an observation; empty for a value of the present set. */
export function stateInWords({ name }: Observation, { facts, wide }: View): string {
  const present = facts.present.get(name);
  switch (present?.state) {
    case 'given':
    case 'standing':
      return '';
    case 'earlier':
      return wide ? hows.notTaken : hows.takenAt(timeInWords(present.atText ?? ''));
    case 'assumed':
      return hows.assumed;
    case 'unobtainable':
      return hows.notObtained;
    case 'declined':
      return hows.declined;
    case 'refused':
      return hows.refused;
    default:
      return hows.notTaken;
  }
}

/** Whether an observation has a value in a view. */
export function hasValue(name: string, { facts, wide }: View): boolean {
  const present = facts.present.get(name);
  return present !== undefined && !noValue.has(present.state) && !(wide && present.state === 'earlier');
}
