import type { Compiled } from '../../../src/outcome/compile.ts';
import { answerOf } from '../../../src/review/compare/case-changes.ts';
import type { Comparison } from '../../../src/review/compare/comparison.ts';
import { levelInWords } from '../../../src/review/compare/levels-in-words.ts';
import { pointToSet, seriesOf } from '../../../src/review/compare/point-to-series.ts';
import { sideOf, type Compared } from '../../../src/review/compare/side.ts';
import { spaceOf } from '../../../src/review/compare/space.ts';
import { guarded } from '../kit.ts';

/** Observations with few values, so that every set can be tried. */
const declared = `observations:
  needs: [warmth, push, pull]
  helps: [mood, signs]
  declares:
    warmth: { title: warmth, kind: number, unit: mmHg, step: 1, possible: [0, 9], ordinary: 5 }
    push: { title: push, kind: number, unit: mmHg, step: 1, possible: [1, 13], ordinary: 6 }
    pull: { title: pull, kind: number, unit: mmHg, step: 1, possible: [0, 12], ordinary: 6 }
    mood: { title: mood, kind: choice, choices: [{ choice: calm, title: calm }, { choice: cross, title: cross }, { choice: sad, title: sad }], ordinary: calm }
    signs: { title: signs, kind: several, choices: [{ choice: red, title: red }, { choice: hot, title: hot }], ordinary: [] }
`;

/** A small protocol with these parts below its observations. */
export const small = (parts: string, ladder?: string): Compiled =>
  guarded(`${declared}${parts}`, 'cases: []\n', ladder).compiled;

/** What every set comes out as on both sides, one by one, by the whole way of a set. */
export function everyOne(
  before: Compared,
  after: Compared,
): { readonly levels: Counts; readonly rules: Counts; readonly all: number } {
  const sides = [sideOf(before), sideOf(after)] as const;
  const space = spaceOf(sides);
  const [levels, rules] = [new Map<string, number>(), new Map<string, number>()];
  let all = 0;
  for (const point of pointsOf(space.dimensions)) {
    all += 1;
    const series = seriesOf([pointToSet(Float64Array.from(point), space)]);
    const [was, is] = [answerOf(sides[0], series), answerOf(sides[1], series)];
    const [from, to] = [levelInWords(was.level, sides[0].ladder), levelInWords(is.level, sides[1].ladder)];
    if (from !== to) add(levels, `${from} > ${to}`);
    for (const rule of new Set([...was.states.keys(), ...is.states.keys()])) {
      const [one, other] = [was.states.get(rule) ?? 'not_met', is.states.get(rule) ?? 'not_met'];
      if (one !== other) add(rules, `${rule}: ${one} > ${other}`);
    }
  }
  return { levels, rules, all };
}

export type Counts = ReadonlyMap<string, number>;

const add = (counts: Map<string, number>, key: string): void =>
  void counts.set(key, (counts.get(key) ?? 0) + 1);

function* pointsOf(
  dimensions: readonly { readonly low: number; readonly high: number }[],
  at = 0,
): Generator<number[]> {
  const dimension = dimensions[at];
  if (!dimension) {
    yield [];
    return;
  }
  for (let value = dimension.low; value <= dimension.high; value += 1)
    for (const rest of pointsOf(dimensions, at + 1)) yield [value, ...rest];
}

/** The same counts as a comparison tells them. */
export function told({ levels, rules }: Comparison): { readonly levels: Counts; readonly rules: Counts } {
  const found = [new Map<string, number>(), new Map<string, number>()] as const;
  for (const { before, after, ground } of levels) found[0].set(`${before} > ${after}`, Number(ground.sets));
  for (const { protocol, rule, stands } of rules) {
    for (const { before, after, ground } of stands) {
      const state = (words: string): string =>
        words
          .replace('not there', 'not_met')
          .replace('not met', 'not_met')
          .replace(', and explained', ', explained');
      found[1].set(`${protocol}.${rule}: ${state(before)} > ${state(after)}`, Number(ground.sets));
    }
  }
  return { levels: found[0], rules: found[1] };
}
