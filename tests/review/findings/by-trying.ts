import { answersOf, type Answers, type RuleAnswer } from '../../../src/outcome/answers.ts';
import { compile } from '../../../src/outcome/compile.ts';
import type { NumberComparison, Observation, Protocol, Rule } from '../../../src/protocol/protocol.ts';
import { comparisonsIn, conditionsOf, rulesNamed } from '../../../src/protocol/walk.ts';
import type { Bounds } from '../../../src/series/bounds.ts';
import type { Box } from '../../../src/review/box.ts';
import { placeWords } from '../../../src/review/changes/making.ts';
import { boundsInBox } from '../../../src/review/findings/answers-in-box.ts';
import { withConstant } from '../../../src/review/findings/with-constant.ts';
import { levels, type MadeUp } from './made-up.ts';

/** A set that was tried, by its values, and what was answered. */
interface Tried {
  readonly values: ReadonlyMap<string, string>;
  readonly bounds: Bounds;
  readonly answers: Answers;
}

/** The findings of a protocol by trying every set: by the kinds that need no key of their own in the file, as sorted names. */
export function byTrying(made: MadeUp): string[] {
  const tried = everySet(made);
  return [
    ...neverMet(made, tried),
    ...together(made, tried),
    ...levelsReached(tried),
    ...steps(made, tried),
    ...excluded(made, tried),
    ...idle(made, tried),
  ].sort();
}

export function everySet({ compiled, document }: MadeUp): Tried[] {
  let boxes: { values: Map<string, string>; box: Box }[] = [
    { values: new Map(), box: { ranges: new Map(), choices: new Map(), absent: new Map() } },
  ];
  for (const observation of compiled.protocol.observations.values())
    boxes = boxes.flatMap(({ values, box }) =>
      valuesOf(observation).map((value) => ({
        values: new Map(values).set(observation.name, value),
        box: put(box, observation, value),
      })),
    );
  return boxes.map(({ values, box }) => {
    const bounds = boundsInBox(box, compiled.protocol, document);
    if (!bounds) throw new Error('a set cannot be read');
    return { values, bounds, answers: answersOf(compiled, bounds) };
  });
}

const valuesOf = ({ kind, possible, choices }: Observation): string[] => {
  const range = possible[0] ?? { low: 0, high: -1 };
  const numbers = [...Array(range.high - range.low + 1).keys()].map((each) => String(each + range.low));
  return [...(kind === 'number' ? numbers : choices.map(({ choice }) => choice)), 'missing', 'unobtainable'];
};

function put(box: Box, { name, kind }: Observation, value: string): Box {
  const lacks = value === 'missing' || value === 'unobtainable';
  if (lacks) return { ...box, absent: new Map(box.absent).set(name, value) };
  if (kind !== 'number') return { ...box, choices: new Map(box.choices).set(name, [value]) };
  return { ...box, ranges: new Map(box.ranges).set(name, [Number(value), Number(value)]) };
}

const answerOf = (rule: Rule, { rules }: Answers): RuleAnswer =>
  rules.find((each) => each.rule.name === rule.name) as RuleAnswer;
const met = (rule: Rule, { answers }: Tried): boolean =>
  answers.applies !== 'no' && answerOf(rule, answers).state === 'met';
export const advised = (rule: Rule, { answers }: Tried): boolean =>
  answers.applies !== 'no' && (answerOf(rule, answers).state === 'met' || answerOf(rule, answers).counts);
const level = ({ answers }: Tried): number => answers.level?.atLeast ?? 0;

const neverMet = ({ compiled }: MadeUp, tried: readonly Tried[]): string[] =>
  compiled.protocol.rules
    .filter((rule) => !tried.some((each) => met(rule, each)))
    .map(({ name }) => `rule ${name} is never met`);

function together({ compiled: { protocol } }: MadeUp, tried: readonly Tried[]): string[] {
  const rules = protocol.rules.filter((rule) => tried.some((each) => met(rule, each)));
  const without = (rule: Rule, other: Rule): boolean =>
    tried.some((each) => met(rule, each) && !met(other, each));
  return rules.flatMap((rule, index) =>
    rules.slice(index + 1).flatMap((other) => {
      if (names(rule, other, protocol) || names(other, rule, protocol)) return [];
      const [one, two] = [without(rule, other), without(other, rule)];
      if (!one && !two) return [`rules ${rule.name} and ${other.name} are always met together`];
      if (!one) return [`rule ${rule.name} is met only where rule ${other.name} is`];
      return two ? [] : [`rule ${other.name} is met only where rule ${rule.name} is`];
    }),
  );
}

function names(rule: Rule, other: Rule, protocol: Protocol): boolean {
  const named = [rule.when, rule.unless?.when ?? null].flatMap(rulesNamed);
  return named.some((name) => {
    const next = protocol.rules.find((each) => each.name === name) as Rule;
    return next === other || names(next, other, protocol);
  });
}

function levelsReached(tried: readonly Tried[]): string[] {
  const reached = new Set(tried.filter(({ answers }) => answers.applies !== 'no').map(level));
  const settled = tried.some(({ answers }) => answers.level?.settled && answers.level.atLeast === 0);
  if (!settled) reached.delete(0);
  else reached.add(0);
  return levels.flatMap((name, index) => (reached.has(index) ? [] : [`level ${name} is never reached`]));
}

function steps({ compiled: { protocol } }: MadeUp, tried: readonly Tried[]): string[] {
  const numbers = [...protocol.observations.values()]
    .filter(({ kind }) => kind === 'number')
    .map(({ name }) => name);
  const byKey = new Map(tried.map((each) => [keyOf(each.values), each]));
  const found = new Map<string, number>();
  for (const from of tried) {
    if (!isWhole(from, protocol) || from.answers.applies !== 'yes') continue;
    for (const name of numbers) {
      for (const by of [1, -1]) {
        const to = byKey.get(
          keyOf(new Map(from.values).set(name, String(Number(from.values.get(name)) + by))),
        );
        if (!to || to.answers.applies !== 'yes' || level(to) > level(from) - 2) continue;
        for (const rule of protocol.rules) {
          if (!advised(rule, from) || calledBy(rule, from) !== level(from)) continue;
          const key = `${rule.name} ${level(from)} ${name}`;
          found.set(key, Math.min(found.get(key) ?? Infinity, level(to)));
        }
      }
    }
  }
  return protocol.rules.flatMap((rule) =>
    [...new Set([rule.level ?? 0, rule.explainedBy?.level ?? 0])].flatMap((from) => {
      const lowest = numbers.flatMap((name) => {
        const to = found.get(`${rule.name} ${from} ${name}`);
        return to === undefined ? [] : [{ name, to }];
      });
      return [...new Set(lowest.map(({ to }) => to))].map((to) => {
        const of = lowest.filter((each) => each.to === to).map(({ name }) => name);
        return `rule ${rule.name}, one step of ${of.join(', ')}: ${levels[from] ?? ''} to ${levels[to] ?? ''}`;
      });
    }),
  );
}

const keyOf = (values: ReadonlyMap<string, string>): string => [...values.values()].join(' ');

export const isWhole = ({ values }: Tried, { observations }: Protocol): boolean =>
  [...values].every(
    ([name, value]) => observations.get(name)?.role === 'helps' || !/missing|unobtainable/.test(value),
  );

function calledBy(rule: Rule, { answers }: Tried): number {
  const explained = answerOf(rule, answers).explained ? rule.explainedBy?.level : null;
  return explained ?? rule.level ?? -1;
}

function excluded({ compiled: { protocol } }: MadeUp, tried: readonly Tried[]): string[] {
  return protocol.rules.flatMap((rule) =>
    rule.do.flatMap(({ id, excludes }) =>
      excludes.flatMap((second) =>
        protocol.rules
          .filter((other) => other.do.some((each) => each.id === second))
          .filter((other) => tried.some((each) => advised(rule, each) && advised(other, each)))
          .map(
            (other) =>
              `${id} excludes ${second}: both advised by ${[...new Set([rule.name, other.name])].join(' and ')}`,
          ),
      ),
    ),
  );
}

/** Comparisons without which every rule comes out the same for every set. */
function idle({ compiled: { protocol }, document }: MadeUp, tried: readonly Tried[]): string[] {
  const comparisons = conditionsOf(protocol).flatMap((condition) =>
    [...comparisonsIn(condition)].filter((each): each is NumberComparison => each.kind === 'compare'),
  );
  const isIdle = (comparison: NumberComparison): boolean =>
    [true, false].some((holds) => {
      const changed = compile(withConstant(protocol, comparison, holds));
      return tried.every(({ bounds, answers }) => stateOf(answersOf(changed, bounds)) === stateOf(answers));
    });
  return comparisons.filter(isIdle).map(({ path }) => `${placeWords(path, document)} changes nothing`);
}

const stateOf = ({ applies, level: at, rules }: Answers): string =>
  JSON.stringify([applies, at, rules.map(({ rule, ...state }) => ({ ...state, name: rule.name }))]);
