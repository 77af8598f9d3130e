import { parse } from 'yaml';
import { catalogue } from '../../src/problems/catalogue.ts';
import { reporter, type Finding } from '../../src/problems/problem.ts';
import type { Observation } from '../../src/vocabulary/generated/dictionary-file.ts';
import { readObservation } from '../../src/vocabulary/dictionary.ts';

/** Observations in which nothing is wrong. */
export const bases = parse(`
number: { title: drain output, kind: number, unit: mL/h, step: 1, possible: [0, 3000] }
colour: { title: colour of the drain, kind: choice, choices: [{ choice: clear, title: clear }, { choice: bloody, title: bloody }] }
several: { title: colour of the drain, kind: several, choices: [{ choice: clear, title: clear }, { choice: bloody, title: bloody }] }
yes_no: { title: drain in place, kind: yes_no }
`) as Readonly<Record<'number' | 'colour' | 'several' | 'yes_no', Observation>>;

/** Lines that replace those of a base; a line without a value takes its line away. */
type Change = Readonly<Record<string, unknown>>;

interface Fault {
  readonly fault: string;
  readonly of: keyof typeof bases;
  /** A change that is still right. */
  readonly right?: Change;
  readonly wrong: Change;
  /** Code, part and place of the one problem. */
  readonly problem: string;
  /** Words that its sentence holds. */
  readonly words: string;
}

/** One mistake each, with a neighbour that is none. */
export const faults = parse(`
- { fault: no unit, of: number, wrong: { unit: }, problem: observation_lacks key /, words: '"unit"' }
- { fault: no step, of: number, wrong: { step: }, problem: observation_lacks key /, words: '"step"' }
- { fault: no possible range, of: number, wrong: { possible: }, problem: observation_lacks key /, words: '"possible"' }
- { fault: no choices, of: colour, wrong: { choices: }, problem: observation_lacks key /, words: '"choices"' }
- { fault: several without choices, of: several, wrong: { choices: }, problem: observation_lacks key /, words: several of a choice }

- { fault: a number with choices, of: number, wrong: { choices: [] }, problem: observation_key_unfit key /choices, words: is a number }
- { fault: a choice with a unit, of: colour, wrong: { unit: mL }, problem: observation_key_unfit key /unit, words: one of several }
- { fault: a choice with a range, of: colour, wrong: { plausible: [0, 1] }, problem: observation_key_unfit key /plausible, words: says nothing }
- { fault: yes or no with choices, of: yes_no, wrong: { choices: [] }, problem: observation_key_unfit key /choices, words: yes or no }
- { fault: several taken for stated, of: several, right: { standing: yes }, wrong: { standing: yes, if_not_stated: clear }, problem: observation_key_unfit key /if_not_stated, words: several of a choice }

- { fault: unstated but not standing, of: yes_no, right: { standing: yes, if_not_stated: no }, wrong: { if_not_stated: no }, problem: observation_only_standing key /if_not_stated, words: a missing value stays missing }
- { fault: set by but not standing, of: yes_no, right: { standing: true, set_by: prescriber }, wrong: { standing: no, set_by: prescriber }, problem: observation_only_standing key /set_by, words: '"set_by"' }
- { fault: good for a time but standing, of: yes_no, right: { good_for: 4 h }, wrong: { good_for: 4 h, standing: yes }, problem: observation_never_standing key /good_for, words: until it is changed }
- { fault: in a group but standing, of: yes_no, right: { taken_with: drain }, wrong: { taken_with: drain, standing: yes }, problem: observation_never_standing key /taken_with, words: until it is changed }

- { fault: unknown unit, of: number, wrong: { unit: ml/hr }, problem: unknown_unit value /unit, words: '"ml/hr"' }
- { fault: step that is no number, of: number, wrong: { step: one }, problem: not_a_quantity value /step, words: '"one"' }
- { fault: step of too many digits, of: number, wrong: { step: "0.1234567890123456" }, problem: too_many_digits value /step, words: at most 15 }
- { fault: step of nothing, of: number, wrong: { step: 0 }, problem: observation_step value /step, words: above zero }
- { fault: step below nothing, of: number, wrong: { step: -1 }, problem: observation_step value /step, words: above zero }
- { fault: step that measures something else, of: number, right: { step: 0.0001 L/min }, wrong: { step: 1 mmHg }, problem: observation_step_unit value /step, words: mmHg }

- { fault: range of three, of: number, wrong: { possible: [0, 1, 2] }, problem: observation_range_form value /possible, words: neither }
- { fault: range of one number, of: number, wrong: { possible: [0] }, problem: observation_range_form value /possible, words: neither }
- { fault: a number beside a band, of: number, wrong: { possible: [0, { from: 1, to: 2 }] }, problem: observation_range_form value /possible, words: neither }
- { fault: range the wrong way, of: number, wrong: { possible: [3000, 0] }, problem: observation_range_reversed value /possible, words: 3000 down to 0 mL/h }
- { fault: range the wrong way by one step, of: number, right: { possible: [5, 5] }, wrong: { possible: [6, 5] }, problem: observation_range_reversed value /possible, words: 6 down to 5 }
- { fault: range off the step, of: number, right: { step: 0.5, possible: [0.5, 9] }, wrong: { step: 0.5, possible: [0.2, 9] }, problem: observation_off_step value /possible/0, words: 0.2 mL/h }
- { fault: end of a band off the step, of: number, wrong: { possible: [{ from: 0, to: 9.5 }] }, problem: observation_off_step value /possible/0/to, words: "9.5" }
- { fault: exponent in a range, of: number, wrong: { possible: [0, 1e21] }, problem: not_a_quantity value /possible/1, words: 1e+21 }
- { fault: range too large to be exact, of: number, wrong: { step: 0.00001, possible: [0, 900000000000] }, problem: observation_too_large value /possible/1, words: too large }

- { fault: band without an end, of: number, right: { possible: [{ age_below: 1 y, from: 0, to: 9 }, { from: 0, to: 99 }] }, wrong: { possible: [{ from: 0, to: 9 }, { from: 0, to: 99 }] }, problem: observation_band_open value /possible/0, words: others follow }
- { fault: last band with an end, of: number, right: { possible: [{ from: 0, to: 9 }] }, wrong: { possible: [{ age_below: 99 y, from: 0, to: 9 }] }, problem: observation_band_last value /possible/0/age_below, words: ends at 99 y }
- { fault: bands out of order, of: number, right: { possible: [{ age_below: 28 d, from: 0, to: 9 }, { age_below: 3 mo, from: 0, to: 9 }, { from: 0, to: 9 }] }, wrong: { possible: [{ age_below: 3 mo, from: 0, to: 9 }, { age_below: 28 d, from: 0, to: 9 }, { from: 0, to: 9 }] }, problem: observation_band_order value /possible/1/age_below, words: 28 d comes after 3 mo }
- { fault: two bands of one age, of: number, right: { possible: [{ age_below: 11 mo, from: 0, to: 9 }, { age_below: 1 y, from: 0, to: 9 }, { from: 0, to: 9 }] }, wrong: { possible: [{ age_below: 12 mo, from: 0, to: 9 }, { age_below: 1 y, from: 0, to: 9 }, { from: 0, to: 9 }] }, problem: observation_band_order value /possible/1/age_below, words: 1 y comes after 12 mo }
- { fault: age without a unit, of: number, wrong: { possible: [{ age_below: 1, from: 0, to: 9 }, { from: 0, to: 9 }] }, problem: observation_band_age value /possible/0/age_below, words: '"1"' }
- { fault: age in another unit, of: number, wrong: { possible: [{ age_below: 1 kg, from: 0, to: 9 }, { from: 0, to: 9 }] }, problem: observation_band_age value /possible/0/age_below, words: '"1 kg"' }
- { fault: age of nothing, of: number, wrong: { possible: [{ age_below: 0 y, from: 0, to: 9 }, { from: 0, to: 9 }] }, problem: observation_band_age value /possible/0/age_below, words: above zero }
- { fault: age off its step, of: number, right: { possible: [{ age_below: 0.0625 d, from: 0, to: 9 }, { from: 0, to: 9 }] }, wrong: { possible: [{ age_below: 0.05 d, from: 0, to: 9 }, { from: 0, to: 9 }] }, problem: observation_band_age value /possible/0/age_below, words: sixteenth of a day }
- { fault: age in an unknown unit, of: number, wrong: { possible: [{ age_below: 1 year, from: 0, to: 9 }, { from: 0, to: 9 }] }, problem: observation_band_age value /possible/0/age_below, words: '"1 year"' }

- { fault: plausible beyond possible, of: number, right: { plausible: [0, 3000] }, wrong: { plausible: [0, 3001] }, problem: observation_plausible_wide value /plausible, words: inside 0 to 3000 mL/h }
- { fault: plausible beyond possible at one age, of: number, right: { possible: [{ age_below: 1 y, from: 0, to: 9 }, { from: 0, to: 99 }], plausible: [{ age_below: 1 y, from: 0, to: 9 }, { from: 0, to: 50 }] }, wrong: { possible: [{ age_below: 1 y, from: 0, to: 9 }, { from: 0, to: 99 }], plausible: [{ age_below: 2 y, from: 0, to: 50 }, { from: 0, to: 50 }] }, problem: observation_plausible_wide value /plausible/0, words: for ages below 2 y }
- { fault: plausible beyond possible in adults, of: number, right: { possible: [{ age_below: 28 d, from: 0, to: 99 }, { from: 0, to: 9 }], plausible: [0, 9] }, wrong: { possible: [{ age_below: 28 d, from: 0, to: 99 }, { from: 0, to: 9 }], plausible: [{ age_below: 28 d, from: 0, to: 9 }, { from: 0, to: 10 }] }, problem: observation_plausible_wide value /plausible/1, words: for ages from 28 d }
- { fault: ordinary beyond possible, of: number, right: { ordinary: 3000 }, wrong: { ordinary: 3001 }, problem: observation_value_outside value /ordinary, words: possible in an adult }
- { fault: ordinary beyond plausible, of: number, right: { plausible: [10, 50], ordinary: 10 }, wrong: { plausible: [10, 50], ordinary: 9 }, problem: observation_value_outside value /ordinary, words: plausible in an adult }
- { fault: unstated beyond possible, of: number, right: { standing: yes, if_not_stated: 0 }, wrong: { standing: yes, if_not_stated: -1 }, problem: observation_value_outside value /if_not_stated, words: possible at every age }
- { fault: ordinary off the step, of: number, right: { ordinary: 2 }, wrong: { ordinary: 2.5 }, problem: observation_off_step value /ordinary, words: "2.5" }
- { fault: ordinary in words, of: number, wrong: { ordinary: little }, problem: observation_value_unfit value /ordinary, words: '"little"' }

- { fault: ordinary not among the choices, of: colour, right: { ordinary: clear }, wrong: { ordinary: cleer }, problem: observation_value_unfit value /ordinary, words: one of its choices }
- { fault: unstated not among the choices, of: colour, right: { standing: yes, if_not_stated: clear }, wrong: { standing: yes, if_not_stated: white }, problem: observation_value_unfit value /if_not_stated, words: '"white"' }
- { fault: ordinary neither yes nor no, of: yes_no, right: { ordinary: false }, wrong: { ordinary: maybe }, problem: observation_value_unfit value /ordinary, words: yes or no }
- { fault: ordinary of several that is no list, of: several, right: { ordinary: [] }, wrong: { ordinary: clear }, problem: observation_value_unfit value /ordinary, words: a list of its choices }
- { fault: ordinary of several beyond its choices, of: several, right: { ordinary: [bloody] }, wrong: { ordinary: [clear, red] }, problem: observation_value_unfit value /ordinary/1, words: '"red"' }
- { fault: choice named twice, of: colour, wrong: { choices: [{ choice: clear, title: clear }, { choice: clear, title: like water }] }, problem: observation_choice_twice value /choices/1/choice, words: named twice }
- { fault: choice called yes, of: colour, wrong: { choices: [{ choice: clear, title: clear }, { choice: yes, title: yes }] }, problem: observation_choice_reserved value /choices/1/choice, words: yes or no }
- { fault: no whole number of milliseconds, of: yes_no, right: { good_for: 0.001 s }, wrong: { good_for: 0.0001 s }, problem: observation_duration value /good_for, words: 0.0001 s }
`) as readonly Fault[];

/** A base with lines changed. */
export function changed(of: keyof typeof bases, change: Change = {}): Observation {
  const lines = Object.entries({ ...bases[of], ...change }).filter(([, value]) => value !== null);
  return Object.fromEntries(lines) as unknown as Observation;
}

/** What the reader makes of an observation, and what it finds. */
export function read(
  plain: Observation,
  name = 'drain',
): { entry: ReturnType<typeof readObservation>; findings: Finding[] } {
  const findings: Finding[] = [];
  return { entry: readObservation(name, plain, ['observations', name], reporter(findings)), findings };
}

/** What was found, each as code, part and place inside the observation. */
export const found = ({ findings }: { readonly findings: readonly Finding[] }): string[] =>
  findings.map(({ code, path, part }) => `${code} ${part} /${path.slice(2).join('/')}`);

/** The sentence of a problem, and what was expected. */
export function says({ code, facts }: Finding): string {
  const entry = catalogue[code] as {
    readonly says: (facts: unknown) => string;
    readonly expected: ((facts: unknown) => string) | null;
  };
  return [entry.says(facts), entry.expected?.(facts) ?? ''].join(' ').trim();
}
