import { error } from '../entry.ts';

type Named = { name: string };
type Written = { written: string };

const aTime = (): string =>
  'a time with its offset, for example 2026-03-02T12:05:00Z or 2026-03-02T17:50:00+05:45';
const list = (words: readonly string[]): string => words.join(', ');

/** Problems of a set or a series: why it cannot be asked about. */
export const setWording = {
  // Names
  set_unknown_observation: error(
    (f: Named) => `"${f.name}" is not an observation that the dictionary or the protocol knows.`,
    () => 'the name of an observation',
  ),
  set_observation_beside_sets: error(
    (f: Named) => `"${f.name}" stands beside "sets", so nobody can tell when it was taken.`,
    () => 'each observation inside one of the sets',
  ),
  set_not_standing: error(
    (f: Named) =>
      `"${f.name}" is observed anew each time; it cannot be stated as holding until it is changed.`,
    (f) => `"${f.name}" in a set, with the time at which it was taken`,
  ),
  set_unknown_limit: error(
    (f: Named) => `"${f.name}" is not a limit of the protocol.`,
    () => 'the name of a limit that the protocol declares',
  ),

  // Values
  set_wrong_kind: error(
    (f: Named & Written & { kind: string }) => `${f.written} is no value for "${f.name}".`,
    (f) => f.kind,
  ),
  set_text_for_number: error(
    (f: Named & Written & { unit: string | null }) =>
      `"${f.written}" for "${f.name}" is a text; a number belongs here.`,
    (f) =>
      f.unit === null
        ? 'a number without quotation marks'
        : `a number without quotation marks, in ${f.unit} or with its unit beside it under "unit"`,
  ),
  set_unknown_choice: error(
    (f: Named & { choice: string; choices: readonly string[] }) =>
      `"${f.choice}" is not a choice of "${f.name}".`,
    (f) => `one of ${list(f.choices)}`,
  ),
  set_choice_twice: error(
    (f: Named & { choice: string }) => `"${f.choice}" stands twice for "${f.name}".`,
    () => 'each choice once',
  ),

  // Units
  set_unknown_unit: error(
    (f: { unit: string; example: string }) => `"${f.unit}" is not a unit that this kit knows.`,
    (f) => `a unit, for example ${f.example}`,
  ),
  set_unit_mismatch: error(
    (f: Named & { unit: string; own: string }) => `"${f.name}" cannot be measured in ${f.unit}.`,
    (f) => `${f.own}, or a unit that measures the same`,
  ),
  set_unit_of_choice: error(
    (f: Named) => `"${f.name}" is not a number, so it has no unit.`,
    () => '"unit" left out',
  ),
  set_unit_twice: error(
    (f: Named & Written) => `The unit of "${f.name}" is said twice: in "${f.written}" and beside it.`,
    () => 'the unit once',
  ),

  // Parts that make no sense together
  set_says_nothing: error(
    (f: Named) => `Nothing is said of "${f.name}" here.`,
    () => 'value, low or high, unobtainable, declined, above_device or below_device; or the name left out',
  ),
  set_no_says_nothing: error(
    (f: Named & { key: string }) => `"${f.key}: no" says nothing of "${f.name}".`,
    (f) => `the value; or ${f.key} with the reason; or the name left out`,
  ),
  set_parts_clash: error(
    (f: Named & { first: string; second: string }) =>
      `"${f.first}" and "${f.second}" cannot both be said of "${f.name}".`,
    () => 'one of the two',
  ),
  set_range_of_choice: error(
    (f: Named & { key: string }) => `"${f.name}" is not a number, so "${f.key}" cannot be said of it.`,
    () => 'the value, unobtainable or declined',
  ),
  set_low_above_high: error(
    (f: Named & { low: string; high: string }) =>
      `The low end of "${f.name}", ${f.low}, is higher than its high end, ${f.high}.`,
    () => 'low not higher than high',
  ),
  set_value_outside_range: error(
    (f: Named & { value: string; end: string; key: string }) =>
      `The value of "${f.name}", ${f.value}, is ${f.key === 'low' ? 'lower' : 'higher'} than its own ${f.key} end, ${f.end}.`,
    () => 'a value from low to high',
  ),

  // Times
  set_time_unreadable: error((f: Written) => `"${f.written}" cannot be read as a time.`, aTime),
  set_time_without_offset: error(
    (f: Written) =>
      `"${f.written}" does not say in which time zone; the same clock time is another moment elsewhere.`,
    aTime,
  ),
  set_time_too_fine: error(
    (f: Written) => `"${f.written}" is finer than a thousandth of a second.`,
    () => 'at most three decimals of a second',
  ),
  set_time_impossible: error((f: Written) => `There is no such time as "${f.written}".`, aTime),
  set_time_leap_second: error(
    (f: Written) => `"${f.written}" is a leap second, which other clocks do not show.`,
    () => 'seconds from 00 to 59',
  ),
  set_never_holds: error(
    (f: Named & { from: string; until: string }) =>
      `"${f.name}" would never hold: it ends at ${f.until}, which is not after its beginning, ${f.from}.`,
    () => 'until later than at',
  ),
  set_time_needed: error(
    (f: Named & { key: string }) =>
      `"${f.name}" holds only for a time, but the set does not say when it was taken, so nobody can tell whether it holds.`,
    () => 'at: with the time of the set',
  ),

  set_more_problems: error(
    (f: { more: number }) => `There are ${f.more} more problems like these in the set.`,
  ),
} as const;
