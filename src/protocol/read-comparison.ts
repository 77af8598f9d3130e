import type * as File from '../shape/generated/types.ts';
import { nearMiss } from '../vocabulary/near-miss.ts';
import type { Path } from '../problems/place.ts';
import { nearestOf, numberNamed, type Names } from './names.ts';
import type { Comparison, NamedOperand, NumberComparison } from './protocol.ts';
import { readOperand } from './read-operand.ts';
import type { Reading } from './reading.ts';

const hows = ['below', 'above', 'at_most', 'at_least'] as const;

type NumberKey = (typeof hows)[number] | 'between';
type Key = NumberKey | 'is' | 'one_of' | 'known' | 'unobtainable';

/** What is asked of one name: a comparison for each key, null where one could not be read. */
export function readComparisons(
  name: string,
  file: File.Comparison,
  path: Path,
  reading: Reading,
): (Comparison | null)[] {
  const { names, report } = reading;
  const subject = numberNamed(names, name);
  if ((!subject && !names.observations.has(name)) || subject?.kind === 'limit') {
    reportUnknownSubject(name, file, path, reading);
    return [null];
  }
  const keys = (Object.keys(file) as (Key | 'accepted')[]).filter((key) => key !== 'accepted');
  if (keys.length === 0) report('nothing_compared', path, { name });
  return keys.flatMap((key): (Comparison | null)[] => {
    const at = [...path, key];
    if (key === 'known' || key === 'unobtainable') return [readFact(key, name, file[key], at, reading)];
    if (key === 'is' || key === 'one_of') return [readChoice(name, key, file, at, reading)];
    return readNumber(name, key, file, at, reading);
  });
}

function reportUnknownSubject(
  name: string,
  file: File.Comparison,
  path: Path,
  { names, report }: Reading,
): void {
  if (names.unreadable.has(name)) return;
  if (names.declared.has(name)) report('observation_not_listed', path, { name }, { part: 'key' });
  else if (names.limits.has(name)) report('limit_compared', path, { name }, { part: 'key' });
  else if (names.rules.has(name)) report('rule_compared', path, { name }, { part: 'key' });
  else
    report('unknown_name', path, { name }, { part: 'key', nearMiss: () => nearSubject(name, file, names) });
}

/** The nearest name of what can be asked so: no choice where a number is compared, no number where a choice is named. */
function nearSubject(name: string, file: File.Comparison, names: Names): string | null {
  const asksChoice = 'is' in file || 'one_of' in file;
  const asksNumber = [...hows, 'between' as const].some((key) => key in file);
  const fitting = [...names.declared.values()].filter(({ kind }) =>
    kind === 'number' ? !asksChoice : !asksNumber,
  );
  const measures = asksChoice ? [] : [...names.measures].map((each) => ({ name: each }));
  return nearMiss(name, [...fitting, ...measures]);
}

function readFact(
  kind: 'known' | 'unobtainable',
  name: string,
  asked: unknown,
  path: Path,
  { names, report }: Reading,
): Comparison | null {
  if (names.observations.has(name))
    return { kind, observation: name, is: asked === 'yes' || asked === true, path };
  report('fact_of_measure', path, { name, key: kind }, { part: 'key' });
  return null;
}

function readChoice(
  name: string,
  key: 'is' | 'one_of',
  file: File.Comparison,
  path: Path,
  { names, report }: Reading,
): Comparison | null {
  const observation = names.observations.get(name);
  if (!observation || observation.kind === 'number') {
    report('choice_of_number', path, { name, key }, { part: 'key' });
    return null;
  }
  if (key === 'is' && observation.kind === 'several') {
    report('is_of_several', path, { name, choice: String(file.is) }, { part: 'key' });
    return null;
  }
  const asked = key === 'is' ? [yesOrNo(file.is)] : (file.one_of ?? []).map(yesOrNo);
  const choices = observation.choices.map((each) => each.choice);
  const unknown = asked.filter((each) => !choices.includes(each));
  for (const choice of unknown) {
    const at = key === 'is' ? path : [...path, asked.indexOf(choice)];
    report('unknown_choice', at, { name, choice, choices }, { nearMiss: () => nearestOf(choice, choices) });
  }
  return unknown.length > 0 ? null : { kind: 'one_of', observation: name, choices: asked, path };
}

const yesOrNo = (written: unknown): string =>
  written === true ? 'yes' : written === false ? 'no' : String(written);

/** `between` is two comparisons. */
function readNumber(
  name: string,
  key: NumberKey,
  file: File.Comparison,
  path: Path,
  reading: Reading,
): (Comparison | null)[] {
  const subject = numberNamed(reading.names, name);
  if (!subject || subject.kind === 'number' || subject.kind === 'limit') {
    const choices = reading.names.observations.get(name)?.choices.map((each) => each.choice) ?? [];
    reading.report('number_of_choice', path, { name, key, choices }, { part: 'key' });
    return [null];
  }
  const { kind } = subject;
  if (key !== 'between') return [compare({ kind, name }, key, file[key], path, reading)];
  const [from, to] = file.between ?? [];
  return [
    compare({ kind, name }, 'at_least', from, [...path, 0], reading),
    compare({ kind, name }, 'at_most', to, [...path, 1], reading),
  ];
}

function compare(
  subject: NumberComparison['subject'] & NamedOperand,
  how: NumberComparison['how'],
  written: number | string | undefined,
  path: Path,
  reading: Reading,
): Comparison | null {
  const to = written === undefined ? null : readOperand(written, path, reading);
  return to && { kind: 'compare', subject, how, to, path };
}
