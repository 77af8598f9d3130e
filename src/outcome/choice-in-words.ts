import type { Observation } from '../protocol/protocol.ts';
import { choiceList } from './sentences.ts';
import { hasValue, stateInWords, type View } from './view.ts';

/** Where the flags of an observation's choices stand in a result. */
export interface ChoicePlaces {
  readonly may: readonly number[];
  /** Only of a several. */
  readonly sure: readonly number[];
}

/** The choices that an observation may be: `alert`; `pain or unresponsive`; of a several those that are in: `talking and moving`. */
function choicesInWords({ choices, kind }: Observation, { may }: ChoicePlaces, { result }: View): string {
  const titles: string[] = [];
  for (let index = 0; index < choices.length; index += 1)
    if (result[may[index] as number] !== 0) titles.push(choices[index]?.title ?? '');
  if (kind !== 'several') return choiceList(titles, 'or');
  return titles.length === 0 ? 'none' : choiceList(titles, 'and');
}

/** What an observation that is no number is, and what is to be said of that in brackets. */
export function choiceValue(
  observation: Observation,
  places: ChoicePlaces,
  view: View,
): { readonly values: string; readonly how: string } {
  const how = stateInWords(observation, view);
  if (!hasValue(observation.name, view)) return { values: how, how: '' };
  return { values: choicesInWords(observation, places, view), how };
}
