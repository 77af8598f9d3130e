import { fromDecimal } from '../outcome/decimal.ts';
import { over, type Exact } from '../outcome/exact.ts';
import { choiceList } from '../outcome/sentences.ts';
import { alone, formatOf } from '../outcome/shown-number.ts';
import type { ObservationEntry, Protocol } from '../protocol/protocol.ts';
import { plainWords } from '../protocol/words.ts';
import type { DecidedIf } from '../shape/generated/types.ts';
import { unitByUcum, type Unit } from '../vocabulary/units.ts';

/** What an observation, a limit or a measure is called, in plain words. */
export function titleOf(name: string, { vocabulary, observations, limits, measures }: Protocol): string {
  const entry = observations.get(name) ?? vocabulary.get(name) ?? limits.get(name) ?? measures.get(name);
  return entry?.title ?? plainWords(name);
}

export const titlesOf = (names: readonly string[], protocol: Protocol): string[] =>
  names.map((name) => titleOf(name, protocol));

/** Where a level stands on the ladder, lowest 0; -1 for none. */
export const rankOf = (level: string | null | undefined, { ladder }: Protocol): number =>
  ladder.levels.findIndex(({ name }) => name === level);

export const levelTitle = (level: string, protocol: Protocol): string =>
  protocol.ladder.levels[rankOf(level, protocol)]?.title ?? plainWords(level);

export const choiceTitle = (choice: string, entry: ObservationEntry | undefined): string =>
  entry?.choices.find((each) => each.choice === choice)?.title ?? plainWords(choice);

/** Something counted in steps. */
interface Stepped {
  readonly unit: Unit | null;
  readonly stepsPerUnit: ObservationEntry['stepsPerUnit'];
}

/** Steps with their unit: `36.7 °C`; an age as it is said: `15 y 11 mo`. */
export function stepsInWords(steps: number, { unit, stepsPerUnit }: Stepped): string {
  const format = formatOf(unit);
  return format.withUnit(alone(exactly(steps, stepsPerUnit), format));
}

const exactly = (steps: number, { n, d }: Stepped['stepsPerUnit']): Exact => over(steps * Number(d), n);

/** A number of an outcome with its unit in the trade's words. */
export function numberInWords(value: number, ucum: string | undefined): string {
  const format = formatOf(ucum === undefined ? null : (unitByUcum(ucum) ?? null));
  return format.withUnit(alone(fromDecimal(decimalText(value)), format));
}

/** A JSON number as decimal text, without an exponent. */
export const decimalText = (value: number): string => {
  const text = String(value);
  return text.includes('e') ? value.toFixed(6).replace(/\.?0+$/, '') : text;
};

/** `96 to 104 mmHg`. */
export function rangeInWords(low: number, high: number, ucum: string | undefined): string {
  const format = formatOf(ucum === undefined ? null : (unitByUcum(ucum) ?? null));
  const [from, to] = [low, high].map((value) => alone(fromDecimal(decimalText(value)), format));
  return format.withUnit(`${from} to ${to}`);
}

/** The values of a `decided_if`: `90 mmHg or less`, `91 to 95 %`, `newly confused or unresponsive`. */
export function decidingInWords(decided: DecidedIf, { vocabulary, observations }: Protocol): string {
  const { observation: name, from, choices = [] } = decided;
  const entry = observations.get(name) ?? vocabulary.get(name);
  if (!entry) return '';
  if (from !== undefined) return spanInWords(decided, entry);
  if (choices.length === 0) return 'none of them';
  return choiceList(
    choices.map((choice) => choiceTitle(choice, entry)),
    'or',
  );
}

/** Values from one to another, both included, as they are said: `90 /min or less`, `91 /min or more`, `below 16 y`. */
function spanInWords(
  { from = 0, to = 0, is_lowest: lowest, is_highest: highest }: DecidedIf,
  { unit, stepsPerUnit }: ObservationEntry,
): string {
  const format = formatOf(unit);
  const said = (value: number, more = 0): string => {
    const steps = Math.round(value * stepsPerUnit.valueOf()) + more;
    return format.write(exactly(steps, stepsPerUnit), 6).text;
  };
  const isAge = unit?.word === 'y';
  if (lowest && highest) return 'any value';
  // An age is cut between two steps that nobody says.
  if (lowest) return isAge ? `below ${said(to, 1)}` : `${format.withUnit(said(to))} or less`;
  if (highest) return `${format.withUnit(said(from))} or more`;
  if (isAge) return `${said(from)} to below ${said(to, 1)}`;
  return format.withUnit(from === to ? said(from) : `${said(from)} to ${said(to)}`);
}

/** Words in which a unit stands as a code, as a person writes them: `98.1 [degF]` is `98.1 °F`. */
export function withTradeUnit(words: string): string {
  const [, start, code] = /^(.*) (\S+)$/.exec(words) ?? [];
  const unit = unitByUcum(code ?? '');
  return start !== undefined && unit ? `${start} ${unit.word}` : words;
}
