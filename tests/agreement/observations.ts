import type { Draw } from './draw.ts';

export type Kind = 'number' | 'choice' | 'several' | 'yes_no';
/** `scope`: read by `applies_when` only. */
export type Role = 'needs' | 'helps' | 'scope' | 'standing';

/** An observation that a generated protocol declares. Numbers are whole steps. */
export interface Subject {
  readonly name: string;
  readonly kind: Kind;
  readonly role: Role;
  /** Steps in one unit: 1, 2 or 10. */
  readonly perUnit: number;
  readonly low: number;
  readonly high: number;
  readonly choices: readonly string[];
  /** How many values it can have. */
  readonly size: number;
  readonly goodFor: string | null;
  readonly group: string | null;
  /** What a standing fact is while nobody has stated it. */
  readonly assumed: string | number | null;
}

/** A whole number of steps as the number that stands in a file: 13 steps of 0.1 are 1.3. */
export const decimal = (subject: { readonly perUnit: number }, steps: number): number =>
  Number((steps / subject.perUnit).toFixed(2));

const choiceNames = ['first', 'second', 'third', 'fourth'];

function numberOf(draw: Draw, negative: boolean) {
  const perUnit = draw.one([1, 1, 2, 10]);
  const low = draw.one(negative ? [-3, 0, 2, 5] : [1, 2, 5, 12]);
  const size = draw.whole(3, 9);
  return { perUnit, low, high: low + size - 1, choices: [], size };
}

function choicesOf(draw: Draw, kind: Kind) {
  const choices =
    kind === 'yes_no' ? ['yes', 'no'] : choiceNames.slice(0, draw.whole(2, kind === 'choice' ? 4 : 3));
  const size = kind === 'several' ? 2 ** choices.length : choices.length;
  return { perUnit: 1, low: 0, high: 0, choices, size };
}

function roleOf(draw: Draw, first: boolean): Role {
  if (first || draw.chance(55)) return 'needs';
  return draw.one<Role>(['helps', 'helps', 'helps', 'standing', 'scope']);
}

function subjectOf(draw: Draw, index: number, plain: boolean, series: boolean): Subject {
  const kind =
    index === 0 || draw.chance(45) ? 'number' : draw.one<Kind>(['number', 'choice', 'several', 'yes_no']);
  const role = roleOf(draw, index === 0);
  const values = kind === 'number' ? numberOf(draw, plain) : choicesOf(draw, kind);
  const stays = series && role !== 'standing' && draw.chance(70);
  const assumes = role === 'standing' && kind !== 'several' && draw.chance(50);
  return {
    name: `${{ number: 'num', choice: 'opt', several: 'many', yes_no: 'flag' }[kind]}_${'abcdef'[index]}`,
    kind,
    role,
    ...values,
    goodFor: stays ? draw.one(['30 min', '1 h', '2 h', '240 min']) : null,
    group: series && role !== 'standing' && draw.chance(25) ? 'together' : null,
    assumed: !assumes
      ? null
      : kind === 'number'
        ? decimal(values, values.low + 1)
        : (values.choices[0] ?? null),
  };
}

/** Two to five observations, whose values combine in at most `most` ways. */
export function drawSubjects(draw: Draw, plain: boolean, series: boolean, most: number): readonly Subject[] {
  const wanted = draw.whole(2, 5);
  const found: Subject[] = [];
  let ways = 1;
  for (let index = 0; index < wanted; index += 1) {
    const subject = subjectOf(draw, index, plain, series);
    if (ways * subject.size > most) break;
    ways *= subject.size;
    found.push(subject);
  }
  return found;
}

/** The observation as it stands under `declares`. */
export function declared(subject: Subject, unit: string | null): Record<string, unknown> {
  const { kind, choices, goodFor, group } = subject;
  return {
    title: subject.name.replace('_', ' '),
    kind,
    ...(kind === 'number' ? { unit: unit ?? 'points' } : {}),
    ...(kind === 'number'
      ? {
          step: decimal(subject, 1),
          possible: [decimal(subject, subject.low), decimal(subject, subject.high)],
        }
      : {}),
    ...(kind === 'choice' || kind === 'several'
      ? { choices: choices.map((choice) => ({ choice, title: choice })) }
      : {}),
    ...(goodFor ? { good_for: goodFor } : {}),
    ...(group ? { taken_with: group } : {}),
  };
}
