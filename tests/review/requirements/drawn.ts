import type { Answers } from '../../../src/outcome/answers.ts';
import type { Requirement } from '../../../src/protocol/requirements/requirement.ts';
import { drawRules } from '../findings/draw-rules.ts';
import { everySet } from '../findings/by-trying.ts';
import { levels, madeUp, type MadeUp } from '../findings/made-up.ts';

type Values = Readonly<Record<string, string>>;

/** What is asked of each protocol that is made up: as a file says it, and of which sets it is. */
const questions: readonly { readonly asks: object; readonly of?: (values: Values) => boolean }[] = [
  {
    asks: { where: { pulse_a: { at_most: 2 } }, level_at_least: levels[1] },
    of: (is) => Number(is.pulse_a) <= 2,
  },
  {
    asks: { where: { colour: { is: 'blue' } }, level_at_least: levels[2] },
    of: (is) => is.colour === 'blue',
  },
  {
    asks: { where: { gap: { at_least: 3 } }, level_at_most: levels[2] },
    of: (is) => Number(is.pulse_a) - Number(is.pulse_b) >= 3,
  },
  {
    asks: { where: { pulse_a: { unobtainable: true } }, level_at_least: levels[1] },
    of: (is) => is.pulse_a === 'unobtainable',
  },
  { asks: { where: { told: { is: true } }, rule_met: 'rule_1' }, of: (is) => is.told === 'yes' },
  { asks: { never_together: ['rule_1', 'rule_2'] } },
  { asks: { always_some_advice: true } },
  { asks: { getting_worse_never_lowers: { observation: 'pulse_a', going: 'up' } } },
  {
    asks: {
      where: { colour: { one_of: ['pink', 'pale'] } },
      getting_worse_never_lowers: { observation: 'pulse_b', going: 'down', between: [1, 4] },
    },
    of: (is) => is.colour !== 'blue',
  },
  { asks: { getting_worse_never_lowers: { observation: 'colour', through: ['pink', 'pale', 'blue'] } } },
  { asks: { getting_worse_never_lowers: { observation: 'told', through: [false, true] } } },
  { asks: { nothing_hides: { blank: ['pulse_a', 'pulse_b', 'colour'] } } },
  { asks: { nothing_hides: { blank: ['pulse_a', 'told'] } } },
];

/** A made-up protocol with its requirements, and for each of them whether any set at all breaks it. */
export interface Drawn {
  readonly made: MadeUp;
  readonly broken: readonly { readonly requirement: Requirement; readonly isBroken: boolean }[];
}

export function drawn(seed: number): Drawn {
  const made = madeUp({
    rules: drawRules(seed, levels),
    hazards: { harm: { harm: 'Harm.', severity: 'serious', owner: 'The council' } },
    must_always: questions.map(({ asks }, index) => ({
      requirement: `asked_${index}`,
      ...asks,
      controls: ['harm'],
    })),
  });
  const sets = new Map(
    everySet(made).map(({ values, answers }) => [keyOf(Object.fromEntries(values)), answers]),
  );
  return {
    made,
    broken: made.compiled.protocol.requirements.map((requirement, index) => ({
      requirement,
      isBroken: isBroken(requirement, questions[index]?.of ?? (() => true), sets),
    })),
  };
}

const keyOf = (values: Values): string =>
  JSON.stringify(Object.entries(values).sort(([left], [right]) => (left < right ? -1 : 1)));

const lacks = (value: string | undefined): boolean => value === 'missing' || value === 'unobtainable';

/** By asking the evaluator of every set, and of every pair. */
function isBroken(
  { asks, where }: Requirement,
  of: (values: Values) => boolean,
  sets: ReadonlyMap<string, Answers>,
): boolean {
  const mayLack = where && 'kind' in where && where.kind === 'unobtainable' ? ['pulse_a'] : [];
  const about = [...sets]
    .map(([key, answers]) => ({ is: Object.fromEntries(JSON.parse(key) as [string, string][]), answers }))
    .filter(({ is }) => Object.entries(is).every(([name, value]) => mayLack.includes(name) || !lacks(value)))
    .filter(({ is }) => of(is));
  const other = (values: Values): Answers => sets.get(keyOf(values)) as Answers;
  return about.some(({ is, answers }) => {
    switch (asks.kind) {
      case 'level_at_least':
        return level(answers) < asks.level;
      case 'level_at_most':
        return Math.max(level(answers), answers.level?.couldBe ?? 0) > asks.level;
      case 'rule_met':
        return !isMet(answers, asks.rule);
      case 'never_together':
        return asks.rules.every((rule) => isMet(answers, rule));
      case 'always_some_advice':
        return answers.rules.every(
          ({ rule, state, counts }) => rule.says === null || (state !== 'met' && !counts),
        );
      case 'getting_worse_never_lowers': {
        const worse = next(is[asks.observation] as string, asks.way);
        return worse !== null && level(other({ ...is, [asks.observation]: worse })) < level(answers);
      }
      case 'nothing_hides':
        return everyPartOf(asks.blank ?? []).some((part) => {
          const blank = Object.fromEntries(part.map((name) => [name, 'missing']));
          return level(answers) > (other({ ...is, ...blank }).level?.couldBe ?? -1);
        });
      default:
        throw new Error(`${asks.kind} is not asked here`);
    }
  });
}

const level = ({ level: found }: Answers): number => found?.atLeast ?? 0;

const isMet = ({ rules }: Answers, name: string): boolean =>
  rules.some(({ rule, state }) => rule.name === name && state === 'met');

type Way = Extract<Requirement['asks'], { kind: 'getting_worse_never_lowers' }>['way'];

function next(value: string, way: Way): string | null {
  if ('through' in way) {
    const at = way.through.indexOf(value);
    return at < 0 ? null : (way.through[at + 1] ?? null);
  }
  const moved = Number(value) + (way.going === 'up' ? 1 : -1);
  const inside = (each: number): boolean => each >= way.low && each <= way.high;
  return inside(Number(value)) && inside(moved) ? String(moved) : null;
}

const everyPartOf = (names: readonly string[]): string[][] =>
  names.reduce<string[][]>((all, name) => [...all, ...all.map((each) => [...each, name])], [[]]);
