import { caution } from '../outcome/caution.ts';
import type { Limit, Observation, Protocol } from '../protocol/protocol.ts';
import { unitByWord, type Unit } from '../vocabulary/units.ts';
import { inTakingOrder } from './taking-order.ts';
import { choiceTitle, stepsInWords } from './words.ts';

/** What is to be entered for a reading, as plain data for a page. */
export interface Form {
  readonly name: string;
  readonly title: string;
  readonly edition: number;
  readonly about: string | null;
  /** What is needed, in the order in which a nurse takes it. */
  readonly needs: readonly FieldGroup[];
  /** What only helps. */
  readonly helps: readonly FieldGroup[];
  /** What is known of the patient and holds until it is changed. */
  readonly patient: readonly Field[];
  /** Those that somebody may change for one patient. */
  readonly limits: readonly LimitField[];
  /** Lowest first. */
  readonly levels: readonly { readonly name: string; readonly title: string }[];
  readonly caution: string;
}

export interface FieldGroup {
  readonly heading: string;
  readonly fields: readonly Field[];
}

export interface Field {
  readonly name: string;
  readonly title: string;
  readonly meaning: string | null;
  readonly kind: Observation['kind'];
  /** Units in which it may be entered, its own first; empty for what is no number. */
  readonly units: readonly FieldUnit[];
  /** Whether whole numbers are enough in its own unit. */
  readonly isWhole: boolean;
  readonly choices: readonly {
    readonly choice: string;
    readonly title: string;
    readonly meaning: string | null;
  }[];
  readonly standing: boolean;
  /** Who states it, where the protocol says so. */
  readonly setBy: string | null;
  /** What it counts as while nobody has stated it. */
  readonly ifNotStated: string | null;
}

export interface FieldUnit {
  readonly word: string;
  readonly ucum: string;
}

export interface LimitField {
  readonly name: string;
  readonly title: string;
  readonly unit: FieldUnit | null;
  /** As the file has it: `65 mmHg`. */
  readonly value: string;
  /** Both included: `55 to 85 mmHg`. */
  readonly between: string;
  readonly setBy: string | null;
}

/** Units in which people also measure what the dictionary keeps in its own. */
const alternatives: Readonly<Record<string, readonly string[]>> = {
  mmHg: ['kPa'],
  '°C': ['°F'],
  y: ['mo', 'd'],
  kg: ['lb'],
  cm: ['in'],
};

/** `formOf(protocol).needs[0]?.fields[0]?.name` is what a nurse looks at first. */
export function formOf(protocol: Protocol): Form {
  const all = [...protocol.observations.values()];
  const ofPatient = all.filter(({ standing, role }) => standing || role === 'scope');
  const groups = (role: Observation['role']): FieldGroup[] =>
    inTakingOrder(all.filter((each) => each.role === role && !ofPatient.includes(each))).map(
      ({ heading, entries }) => ({ heading, fields: entries.map(fieldOf) }),
    );
  return {
    name: protocol.name,
    title: protocol.title,
    edition: protocol.edition,
    about: protocol.about,
    needs: groups('needs'),
    helps: groups('helps'),
    patient: [
      ...ofPatient.filter(({ role }) => role === 'scope'),
      ...ofPatient.filter(({ role }) => role !== 'scope'),
    ].map(fieldOf),
    limits: [...protocol.limits.values()].flatMap(limitFieldOf),
    levels: protocol.ladder.levels.map(({ name, title }) => ({ name, title })),
    caution,
  };
}

function fieldOf(observation: Observation): Field {
  const { name, title, meaning, kind, unit, stepsPerUnit, choices, standing, setBy } = observation;
  return {
    name,
    title,
    meaning,
    kind,
    units: unit
      ? [unit, ...(alternatives[unit.word] ?? []).flatMap((word) => unitByWord(word) ?? [])].map(plain)
      : [],
    isWhole: stepsPerUnit.equals(1),
    choices: choices.map(({ choice, title: words, meaning: when }) => ({
      choice,
      title: words,
      meaning: when,
    })),
    standing,
    setBy,
    ifNotStated: assumedInWords(observation),
  };
}

function assumedInWords(observation: Observation): string | null {
  const { ifNotStated } = observation;
  if (ifNotStated === null) return null;
  return typeof ifNotStated === 'number'
    ? stepsInWords(ifNotStated, observation)
    : choiceTitle(ifNotStated, observation);
}

const plain = ({ word, ucum }: Unit): FieldUnit => ({ word, ucum });

function limitFieldOf(limit: Limit): LimitField[] {
  const { name, title, unit, value, between, setBy } = limit;
  if (!between) return [];
  const [low, high] = between.map((steps) => stepsInWords(steps, limit)) as [string, string];
  return [
    {
      name,
      title,
      unit: unit && plain(unit),
      value: stepsInWords(value, limit),
      between: `${low} to ${high}`,
      setBy,
    },
  ];
}
