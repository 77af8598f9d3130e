import { timeInWords } from '../outcome/time-in-words.ts';
import type { Protocol } from '../protocol/protocol.ts';
import { listed } from '../protocol/words.ts';
import type { AssumedValue, EarlierValue, Outcome } from '../shape/generated/types.ts';
import type { Sheet } from './sheet.ts';
import { choiceTitle, numberInWords, rangeInWords, titleOf, titlesOf, withTradeUnit } from './words.ts';

/** The heading below which limits stand that somebody changed for the patient. */
export const changedLimits = 'Limits changed for this patient';

/** What else is to be known of the values: assumed, earlier, changed, converted, not read. */
export function sheetFacts(outcome: Outcome, protocol: Protocol): Sheet['facts'] {
  const taken = outcome.taken.map(
    (each) =>
      `${titleOf(each.observation, protocol)}: ${withTradeUnit(each.given)} is taken as ${withTradeUnit(each.as)}`,
  );
  const all = [
    {
      heading: 'Not stated by anybody, so it counts as',
      items: outcome.applies === 'no' ? [] : outcome.assumed.map((each) => assumed(each, protocol)),
    },
    {
      heading: 'Earlier values that stand in: take them again',
      items: outcome.stands_in.map((each) => earlier(each, protocol)),
    },
    { heading: changedLimits, items: outcome.limits.map((each) => limit(each, protocol)) },
    { heading: 'Converted or rounded', items: taken },
    {
      heading: 'Given, but not read by this protocol',
      items: outcome.unused.length === 0 ? [] : [listed(titlesOf(outcome.unused, protocol))],
    },
    { heading: 'Based on', items: (outcome.based_on ?? []).flatMap((each) => basis(each, protocol)) },
  ];
  return all.filter(({ items }) => items.length > 0);
}

function assumed({ observation: name, value, unit }: AssumedValue, protocol: Protocol): string {
  const observation = protocol.observations.get(name);
  const words = typeof value === 'number' ? numberInWords(value, unit) : choiceTitle(value, observation);
  const by = observation?.setBy ?? null;
  return `${titleOf(name, protocol)}: ${words}${by === null ? '' : ` (to be stated by: ${by})`}`;
}

function earlier(
  { observation: name, at, value, low, high, unit }: EarlierValue,
  protocol: Protocol,
): string {
  const observation = protocol.observations.get(name);
  const words = (): string => {
    if (low !== undefined && high !== undefined) return rangeInWords(low, high, unit);
    if (typeof value === 'number') return numberInWords(value, unit);
    if (typeof value === 'string') return choiceTitle(value, observation);
    return listed((value ?? []).map((choice) => choiceTitle(choice, observation))) || 'none';
  };
  return `${titleOf(name, protocol)}: ${words()}, taken ${timeInWords(at)}`;
}

function limit(
  { limit: name, value, unit, by, reason, until }: Outcome['limits'][number],
  protocol: Protocol,
): string {
  const why = reason === undefined ? '' : `, because: ${reason}`;
  const end = until === undefined ? '' : `, until ${timeInWords(until)}`;
  return `${titleOf(name, protocol)}: ${numberInWords(value, unit)}, by ${by}${why}${end}`;
}

/** A protocol that this one is based on, and what is changed of it: values of limits, and rules withdrawn, each with the reason. */
function basis(
  { protocol: name, edition, title, limits, withdrawn }: NonNullable<Outcome['based_on']>[number],
  protocol: Protocol,
): string[] {
  return [
    `${name}, edition ${edition}: ${title}`,
    ...limits.map(
      ({ limit: each, value, instead_of: before, unit, because }) =>
        `Changed: ${titleOf(each, protocol)}: ${numberInWords(value, unit)} instead of ${numberInWords(before, unit)}, because: ${because}`,
    ),
    ...withdrawn.map((rule) => `Withdrawn: ${rule.title}, because: ${rule.because}`),
  ];
}
