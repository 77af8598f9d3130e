import type { AssumedValue, EarlierValue, Outcome } from '../shape/generated/types.ts';
import { timeInWords } from '../outcome/time-in-words.ts';
import type { Protocol } from '../protocol/protocol.ts';
import { listed } from '../protocol/words.ts';
import type { Page } from './page.ts';
import { showBasedOn } from './show-based-on.ts';
import { choiceTitle, numberInWords, rangeInWords, titleOf, withTradeUnit } from './show-words.ts';

/** What else is to be known of the values: assumed, earlier, changed, converted, not read. */
export function showFacts(outcome: Outcome, protocol: Protocol, page: Page): void {
  if (outcome.applies !== 'no')
    section('Not stated by anybody, so it counts as', outcome.assumed.map(assumed(protocol)), page);
  section('Earlier values that stand in: take them again', outcome.stands_in.map(earlier(protocol)), page);
  section('Limits changed for this patient', outcome.limits.map(limit(protocol)), page);
  const taken = outcome.taken.map(
    (each) =>
      `${titleOf(each.observation, protocol)}: ${withTradeUnit(each.given)} is taken as ${withTradeUnit(each.as)}`,
  );
  section('Converted or rounded', taken, page);
  const unused = listed(outcome.unused.map((name) => titleOf(name, protocol)));
  section('Given, but not read by this protocol', unused === '' ? [] : [unused], page);
  showBasedOn(outcome, protocol, page);
}

function section(heading: string, items: readonly string[], page: Page): void {
  if (items.length === 0) return;
  page.heading(heading);
  for (const item of items) page.item(item);
}

const assumed =
  (protocol: Protocol) =>
  ({ observation: name, value, unit }: AssumedValue): string => {
    const observation = protocol.observations.get(name);
    const words = typeof value === 'number' ? numberInWords(value, unit) : choiceTitle(value, observation);
    const by = observation?.setBy ?? null;
    return `${titleOf(name, protocol)}: ${words}${by === null ? '' : ` (to be stated by: ${by})`}`;
  };

const earlier =
  (protocol: Protocol) =>
  ({ observation: name, at, value, low, high, unit }: EarlierValue): string => {
    const observation = protocol.observations.get(name);
    const words = (): string => {
      if (low !== undefined && high !== undefined) return rangeInWords(low, high, unit);
      if (typeof value === 'number') return numberInWords(value, unit);
      if (typeof value === 'string') return choiceTitle(value, observation);
      return listed((value ?? []).map((choice) => choiceTitle(choice, observation))) || 'none';
    };
    return `${titleOf(name, protocol)}: ${words()}, taken ${timeInWords(at)}`;
  };

const limit =
  (protocol: Protocol) =>
  ({ limit: name, value, unit, by, reason, until }: Outcome['limits'][number]): string => {
    const why = reason === undefined ? '' : `, because: ${reason}`;
    const end = until === undefined ? '' : `, until ${timeInWords(until)}`;
    return `${titleOf(name, protocol)}: ${numberInWords(value, unit)}, by ${by}${why}${end}`;
  };
