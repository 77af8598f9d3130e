import Fraction from 'fraction.js';
import type {
  Condition,
  Contradiction,
  Limit,
  LookBack,
  LookBackKind,
  NumberComparison,
  Observation,
  Protocol,
  Role,
} from '../../src/protocol/protocol.ts';
import { noDimension } from '../../src/protocol/quantities.ts';
import { ageScale } from '../../src/vocabulary/age.ts';
import { parseDuration } from '../../src/vocabulary/quantity.ts';
import { unitByWord, type Unit } from '../../src/vocabulary/units.ts';

/** What a protocol of these tests reads. Everything that series do not look at is empty. */
export interface Parts {
  readonly observations: readonly Observation[];
  /** What a set may name beside those that the protocol reads. */
  readonly elsewhere?: readonly Observation[];
  readonly contradictions?: readonly Contradiction[];
  readonly limits?: readonly Limit[];
  readonly measures?: Readonly<Record<string, LookBack>>;
}

export function protocolOf({ observations, elsewhere = [], ...parts }: Parts): Protocol {
  const { contradictions = [], limits = [], measures = {} } = parts;
  return {
    name: 'test_protocol',
    edition: 1,
    title: 'A protocol for a test',
    basedOn: [],
    about: null,
    otherwise: null,
    reviewBy: null,
    owners: [],
    sources: new Map(),
    ladder: { name: 'test_ladder', edition: 1, title: 'A ladder for a test', levels: [] },
    applies: null,
    observations: new Map(observations.map((each) => [each.name, each])),
    vocabulary: new Map([...elsewhere, ...observations].map((each) => [each.name, each])),
    contradictions,
    faults: [],
    limits: new Map(limits.map((each) => [each.name, each])),
    measures: new Map(
      Object.entries(measures).map(([name, how]) => {
        const path = ['measures', name];
        const words = { title: name, meaning: null, unit: null };
        return [name, { name, ...words, quantity: noDimension, notReliableWhen: null, how, path }];
      }),
    ),
    rules: [],
    rulesInOrder: [],
    partitions: new Map(),
    ordinary: null,
    mustSay: new Map(),
    hazards: new Map(),
    requirements: [],
    digest: 'sha256:0',
    logicDigest: 'sha256:0',
  };
}

/** A duration in milliseconds: `ms('4 h')`. */
export function ms(text: string): number {
  const found = parseDuration(text);
  if (found === null) throw new TypeError(`${text} is no duration`);
  return found;
}

function unitOf(word: string): Unit {
  const unit = unitByWord(word);
  if (!unit) throw new TypeError(`${word} is no unit`);
  return unit;
}

/** Whole numbers of steps; a band is [ageBelow in steps of age, low, high]. */
type Range = readonly [number, number] | readonly (readonly [number | null, number, number])[];

const bandsOf = (range: Range): Observation['possible'] =>
  range.map((each) => typeof each === 'number')[0]
    ? [{ ageBelow: null, low: range[0] as number, high: range[1] as number }]
    : (range as readonly (readonly [number | null, number, number])[]).map(([ageBelow, low, high]) => ({
        ageBelow,
        low,
        high,
      }));

export interface Options {
  readonly role?: Role;
  readonly goodFor?: string;
  readonly takenWith?: string;
  readonly standing?: boolean;
  readonly ifNotStated?: number | string;
  readonly plausible?: Range;
}

function observation(name: string, options: Options): Observation {
  return {
    name,
    title: name.replaceAll('_', ' '),
    short: name,
    meaning: null,
    kind: 'number',
    unit: null,
    stepsPerUnit: new Fraction(1),
    possible: [],
    plausible: options.plausible ? bandsOf(options.plausible) : [],
    ordinary: null,
    choices: [],
    loinc: null,
    goodFor: options.goodFor === undefined ? null : ms(options.goodFor),
    takenWith: options.takenWith ?? null,
    standing: options.standing ?? false,
    setBy: null,
    ifNotStated: options.ifNotStated ?? null,
    alsoCalled: [],
    role: options.role ?? 'needs',
  };
}

/** A number in steps of one unit, or of a part of it. */
export function number(
  name: string,
  unit: string,
  possible: Range,
  options: Options & { readonly stepsPerUnit?: number } = {},
): Observation {
  return {
    ...observation(name, options),
    unit: unitOf(unit),
    stepsPerUnit: new Fraction(options.stepsPerUnit ?? 1),
    possible: bandsOf(possible),
  };
}

/** The age: a year is 5844 steps, a day 16. */
export function age(options: Options = {}): Observation {
  return {
    ...observation('age', options),
    ...ageScale,
    possible: [{ ageBelow: null, low: 0, high: 130 * 5844 }],
  };
}

function ofChoices(
  kind: 'choice' | 'several' | 'yes_no',
  name: string,
  choices: readonly string[],
  options: Options,
): Observation {
  const all = choices.map((choice) => ({ choice, title: choice.replaceAll('_', ' '), meaning: null }));
  return { ...observation(name, options), kind, choices: all };
}

export const choice = (name: string, choices: readonly string[], options: Options = {}): Observation =>
  ofChoices('choice', name, choices, options);
export const several = (name: string, choices: readonly string[], options: Options = {}): Observation =>
  ofChoices('several', name, choices, options);
export const yesNo = (name: string, options: Options = {}): Observation =>
  ofChoices('yes_no', name, ['yes', 'no'], options);

export function limit(
  name: string,
  unit: string,
  value: number,
  between: readonly [number, number] | null,
): Limit {
  const title = name.replaceAll('_', ' ');
  const path = ['limits', name];
  return {
    name,
    title,
    unit: unitOf(unit),
    stepsPerUnit: new Fraction(1),
    value,
    between,
    setBy: null,
    path,
  };
}

const path: readonly string[] = [];

/** `compare('systolic', 'below', 90)`; `compare('systolic', 'below', '12 kPa')` reads a unit; `'mean_floor'` is a limit. */
export function compare(name: string, how: NumberComparison['how'], to: number | string): Condition {
  const subject = { kind: 'observation', name } as const;
  if (typeof to === 'string' && /^[a-z]/.test(to)) {
    return { kind: 'compare', subject, how, to: { kind: 'limit', name: to }, path };
  }
  const [digits, word] = String(to).split(' ');
  const unit = word === undefined ? null : unitOf(word);
  return {
    kind: 'compare',
    subject,
    how,
    to: { kind: 'number', value: new Fraction(digits ?? 0), unit },
    path,
  };
}

export const is = (name: string, ...choices: string[]): Condition => ({
  kind: 'one_of',
  observation: name,
  choices,
  path,
});
export const known = (name: string, asked = true): Condition => ({
  kind: 'known',
  observation: name,
  is: asked,
  path,
});
export const unobtainable = (name: string, asked = true): Condition => ({
  kind: 'unobtainable',
  observation: name,
  is: asked,
  path,
});
export const all = (...of: Condition[]): Condition => ({ kind: 'all', of, path });
export const any = (...of: Condition[]): Condition => ({ kind: 'any', of, path });
export const none = (...of: Condition[]): Condition => ({ kind: 'none', of, path });
export const atLeastOf = (count: number, ...of: Condition[]): Condition => ({
  kind: 'at_least_of',
  count,
  of,
  path,
});

/** `lookBack('highest', 'systolic', '4 h')`. */
export function lookBack(
  kind: Exclude<LookBackKind, 'held'>,
  of: string,
  over: string,
  more: { readonly where?: Condition; readonly leftOut?: boolean } = {},
): LookBack {
  return {
    kind,
    observation: of,
    condition: null,
    where: more.where ?? null,
    over: ms(over),
    presentSet: more.leftOut ? 'left_out' : 'included',
    longestGap: null,
  };
}

export function held(condition: Condition, over: string, longestGap: string | null = null): LookBack {
  return {
    kind: 'held',
    observation: null,
    condition,
    where: null,
    over: ms(over),
    presentSet: 'included',
    longestGap: longestGap === null ? null : ms(longestGap),
  };
}
