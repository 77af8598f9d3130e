import { parse } from 'yaml';
import { judge, type Protocol } from './oracle.ts';

/** Lowest first. */
const levels = ['low', 'mid', 'high'] as const;

/** What every protocol of the tables declares. Each row says which of them are needed and which help. */
const declared = `
observations:
  declares:
    a: { title: a, kind: number, step: 1, possible: [0, 6] }
    b: { title: b, kind: number, step: 0.5, possible: [0, 3] }
    d: { title: d, kind: number, step: 1, possible: [-3, 3] }
    kept: { title: kept, kind: number, step: 1, possible: [0, 6], good_for: 1 h }
    pair: { title: pair, kind: number, step: 1, possible: [0, 6], good_for: 4 h, taken_with: both }
    other: { title: other, kind: number, step: 1, possible: [0, 6], good_for: 4 h, taken_with: both }
    c: { title: c, kind: choice, choices: [{ choice: red, title: red }, { choice: green, title: green }, { choice: blue, title: blue }] }
    s: { title: s, kind: several, choices: [{ choice: x, title: x }, { choice: z, title: z }] }
    f: { title: f, kind: yes_no }
    g: { title: g, kind: yes_no, good_for: 1 h }
`;

/** One rule, of the level `mid`. */
export const one = (when: string, more = ''): string =>
  `rules: [{ rule: one, when: ${when}${more}, level: mid }]`;

/** A time of one morning: `clock('08:00')`. */
export const clock = (time: string): string => `2026-03-02T${time}:00Z`;

/** The sets of one morning: what each says, by its time. */
export const morning = (
  sets: Readonly<Record<string, Readonly<Record<string, unknown>>>>,
  more = {},
): unknown => ({
  ...more,
  sets: Object.entries(sets).map(([time, says]) => ({ at: clock(time), ...says })),
});

/** One row: a protocol, a set or series, and what the laws say of it, worked out by hand. */
export interface Row {
  /** The law in one sentence. */
  readonly that: string;
  readonly needs?: readonly string[];
  readonly helps?: readonly string[];
  /** The rest of the protocol. */
  readonly protocol: string;
  readonly set: unknown;
  /** Of each rule its state; `counts` where it counts without being met, `explained` where it is. */
  readonly rules?: Readonly<Record<string, string>>;
  /** `at_least could_be settled` or `at_least could_be open`; `none` where there is no level. */
  readonly level?: string;
  /** `low high`, `value`, or `none`. */
  readonly measures?: Readonly<Record<string, string>>;
  readonly applies?: 'yes' | 'no' | 'unsure';
}

type Verdict = ReturnType<typeof judge>;

function rulesOf({ rules }: Verdict): Record<string, string> {
  const words = Object.entries(rules).map(([name, { state, counts, explained }]) => {
    const counting = counts === (state === 'met') ? [] : [counts ? 'counts' : 'does not count'];
    return [name, [state, ...counting, ...(explained ? ['explained'] : [])].join(' ')] as const;
  });
  return Object.fromEntries(words);
}

function measuresOf({ measures }: Verdict): Record<string, string> {
  const shown = Object.entries(measures).map(([name, hull]) => {
    if (hull === null) return [name, 'none'] as const;
    return [name, hull.low === hull.high ? hull.low : `${hull.low} ${hull.high}`] as const;
  });
  return Object.fromEntries(shown);
}

const levelOf = ({ level }: Verdict): string =>
  level === null
    ? 'none'
    : `${level.at_least ?? 'null'} ${level.could_be} ${level.settled ? 'settled' : 'open'}`;

function textOf({ needs = [], helps = [], protocol }: Row): string {
  const lists = { needs, helps };
  const roles = Object.entries(lists).map(([role, names]) =>
    names.length ? `  ${role}: [${names.join(', ')}]\n` : '',
  );
  return `${declared}${roles.join('')}${protocol}`;
}

type Answer = Readonly<Record<string, unknown>>;

/** What the row states; what it leaves out is not asked. */
export function stated({ rules, level, measures, applies = 'yes' }: Row): Answer {
  const told = Object.entries({ rules, level, measures }).filter(([, what]) => what !== undefined);
  return { applies, ...Object.fromEntries(told) };
}

/** What the judge says of as much as the row states. */
export function judged(row: Row): Answer {
  const verdict = judge(parse(textOf(row)) as Protocol, levels, row.set);
  const found: Answer = {
    applies: verdict.applies,
    rules: rulesOf(verdict),
    level: levelOf(verdict),
    measures: measuresOf(verdict),
  };
  const asked = Object.keys(stated(row));
  return Object.fromEntries(Object.entries(found).filter(([name]) => asked.includes(name)));
}
