import type { Protocol } from '../protocol/protocol.ts';
import type { Amounts } from './amounts.ts';
import type { ChoicePlaces } from './choice-in-words.ts';
import type { ConditionReaders } from './condition-readers.ts';
import type { NumberWriter } from './number-in-words.ts';

/** What measures are put into words with. */
export interface Wording {
  readonly protocol: Protocol;
  readonly amounts: Amounts;
  readonly numbers: NumberWriter;
  readonly conditions: ConditionReaders;
  readonly choices: (observation: string) => ChoicePlaces;
  /** Where an input stands in a result. */
  readonly place: (input: string) => number;
}
