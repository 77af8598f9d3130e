import Fraction from 'fraction.js';
import type { Observation as ObservationInFile } from './generated/dictionary-file.ts';
import { nearMiss } from './near-miss.ts';
import type { Choice, ObservationEntry } from './observation.ts';
import type { Reading } from './read-range.ts';

/** What an observation's kind decides. */
export type Parts = Pick<
  ObservationEntry,
  'unit' | 'stepsPerUnit' | 'possible' | 'plausible' | 'ordinary' | 'ifNotStated' | 'choices'
>;

const yesAndNo: readonly Choice[] = Object.freeze([
  Object.freeze({ choice: 'yes', title: 'yes', meaning: null }),
  Object.freeze({ choice: 'no', title: 'no', meaning: null }),
]);

const noNumber = { unit: null, stepsPerUnit: new Fraction(1), possible: [], plausible: [] } as const;

/** Whether a file says yes: `yes` in YAML 1.2 is a text, and `true` means the same. */
export const isYes = (written: unknown): boolean => written === 'yes' || written === true;

/** Reads what a choice, several of a choice, or yes/no has: its choices, and what is ordinary. Null without choices. */
export function readChoices(
  kind: Exclude<ObservationEntry['kind'], 'number'>,
  plain: ObservationInFile,
  reading: Reading,
): Parts | null {
  const choices = kind === 'yes_no' ? yesAndNo : readList(kind, plain, reading);
  if (!choices) return null;
  const names = choices.map(({ choice }) => choice);
  const ordinary = readOrdinary(kind, plain.ordinary, names, reading);
  const unstated = plain.if_not_stated;
  // Of several, what is unstated is refused elsewhere: it could not say that none of them holds.
  const known =
    unstated === undefined || kind === 'several'
      ? null
      : readOne('if_not_stated', kind, unstated, names, reading);
  return { ...noNumber, choices, ordinary, ifNotStated: known };
}

function readList(
  kind: 'choice' | 'several',
  { choices }: ObservationInFile,
  reading: Reading,
): readonly Choice[] | null {
  const { name, path, report } = reading;
  if (choices === undefined) {
    report('observation_lacks', path, { name, key: 'choices', kind }, { part: 'key' });
    return null;
  }
  const seen = new Set<string>();
  choices.forEach(({ choice }, index) => {
    const at = [...path, 'choices', index, 'choice'];
    if (choice === 'yes' || choice === 'no') report('observation_choice_reserved', at, { name, choice });
    else if (seen.has(choice)) report('observation_choice_twice', at, { name, choice });
    seen.add(choice);
  });
  return Object.freeze(
    choices.map(({ choice, title, meaning }) => Object.freeze({ choice, title, meaning: meaning ?? null })),
  );
}

function readOrdinary(
  kind: Exclude<ObservationEntry['kind'], 'number'>,
  written: ObservationInFile['ordinary'],
  names: readonly string[],
  reading: Reading,
): readonly string[] | null {
  const { name, path, report } = reading;
  if (written === undefined) return null;
  if (kind !== 'several') {
    const one = readOne('ordinary', kind, written, names, reading);
    return one === null ? null : Object.freeze([one]);
  }
  if (!Array.isArray(written)) {
    report('observation_value_unfit', [...path, 'ordinary'], {
      name,
      key: 'ordinary',
      written: String(written),
      kind,
    });
    return null;
  }
  const wrong = written.map(String).flatMap((each, index) => (names.includes(each) ? [] : [{ each, index }]));
  for (const { each, index } of wrong) {
    const facts = { name, key: 'ordinary', written: each, kind };
    report('observation_value_unfit', [...path, 'ordinary', index], facts, {
      nearMiss: nearestOf(each, names),
    });
  }
  return wrong.length > 0 ? null : Object.freeze(written.map(String));
}

function readOne(
  key: string,
  kind: ObservationEntry['kind'],
  written: ObservationInFile['ordinary'],
  names: readonly string[],
  { name, path, report }: Reading,
): string | null {
  const choice =
    kind === 'yes_no' && typeof written === 'boolean' ? (written ? 'yes' : 'no') : String(written);
  if (names.includes(choice)) return choice;
  const facts = { name, key, written: choice, kind };
  report('observation_value_unfit', [...path, key], facts, { nearMiss: nearestOf(choice, names) });
  return null;
}

const nearestOf = (written: string, names: readonly string[]): string | null =>
  nearMiss(
    written,
    names.map((name) => ({ name })),
  );
