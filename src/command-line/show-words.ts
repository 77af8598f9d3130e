import type { DecidedIf, Outcome } from '../shape/generated/types.ts';
import { fromDecimal } from '../outcome/decimal.ts';
import { choiceList } from '../outcome/sentences.ts';
import { over } from '../outcome/exact.ts';
import { alone, formatOf } from '../outcome/shown-number.ts';
import type { ObservationEntry, Protocol } from '../protocol/protocol.ts';
import { plainWords } from '../protocol/words.ts';
import { unitByUcum } from '../vocabulary/units.ts';

/** What an observation, a limit or a measure is called, in plain words. */
export function titleOf(name: string, { vocabulary, limits, measures }: Protocol): string {
  return (vocabulary.get(name) ?? limits.get(name) ?? measures.get(name))?.title ?? plainWords(name);
}

export function levelTitle(name: string, { ladder }: Protocol): string {
  return ladder.levels.find((level) => level.name === name)?.title ?? plainWords(name);
}

/** A number of an outcome with its unit in the trade's words: `36.7 °C`. */
export function numberInWords(value: number, unit: string | undefined): string {
  const format = formatOf(unit === undefined ? null : (unitByUcum(unit) ?? null));
  return format.withUnit(alone(fromDecimal(decimalText(value)), format));
}

/** `96 to 104 mmHg`. */
export function rangeInWords(low: number, high: number, unit: string | undefined): string {
  const format = formatOf(unit === undefined ? null : (unitByUcum(unit) ?? null));
  const [from, to] = [low, high].map((value) => alone(fromDecimal(decimalText(value)), format));
  return format.withUnit(`${from} to ${to}`);
}

/** A JSON number as decimal text, without an exponent. */
const decimalText = (value: number): string => {
  const text = String(value);
  return text.includes('e') ? value.toFixed(6).replace(/\.?0+$/, '') : text;
};

/** Words in which a unit stands as a code, as a person writes them: `98.1 [degF]` is `98.1 °F`. */
export function withTradeUnit(words: string): string {
  const [, start, code] = /^(.*) (\S+)$/.exec(words) ?? [];
  const unit = unitByUcum(code ?? '');
  return start !== undefined && unit ? `${start} ${unit.word}` : words;
}

export function choiceTitle(choice: string, observation: ObservationEntry | undefined): string {
  return observation?.choices.find((each) => each.choice === choice)?.title ?? plainWords(choice);
}

/**
 * Values from one to another, both included, as they are said: `90 /min or less`, `91 /min or more`, `below 16 y`.
 */
function spanInWords(
  { from = 0, to = 0, is_lowest: lowest, is_highest: highest }: DecidedIf,
  observation: ObservationEntry,
): string {
  const { unit, stepsPerUnit } = observation;
  const format = formatOf(unit);
  const said = (value: number, more = 0): string => {
    const steps = Math.round(value * stepsPerUnit.valueOf()) + more;
    return format.write(over(steps * Number(stepsPerUnit.d), stepsPerUnit.n), 6).text;
  };
  const isAge = unit?.word === 'y';
  if (lowest && highest) return 'any value';
  // An age is cut between two steps that nobody says.
  if (lowest) return isAge ? `below ${said(to, 1)}` : `${format.withUnit(said(to))} or less`;
  if (highest) return `${format.withUnit(said(from))} or more`;
  if (isAge) return `${said(from)} to below ${said(to, 1)}`;
  return format.withUnit(from === to ? said(from) : `${said(from)} to ${said(to)}`);
}

/** The values of one observation that settle something: `91 % or less`, `responds to pain only or unresponsive`. */
export function valuesInWords(decided: DecidedIf, { vocabulary }: Protocol): string {
  const { observation: name, from, choices = [] } = decided;
  const observation = vocabulary.get(name);
  if (!observation) return '';
  if (from !== undefined) return spanInWords(decided, observation);
  if (choices.length === 0) return 'none of them';
  return choiceList(
    choices.map((choice) => choiceTitle(choice, observation)),
    'or',
  );
}

/** Observations that have a value, and whose range leaves a rule undecided. */
export function roughlyKnown({ rules, missing, would_tell_more: more, ask_first: ask }: Outcome): string[] {
  const listedAlready = new Set([...missing, ...more, ...ask]);
  const waited = rules.flatMap((rule) => rule.waits_for ?? []);
  return [...new Set(waited)].filter((name) => !listedAlready.has(name));
}
