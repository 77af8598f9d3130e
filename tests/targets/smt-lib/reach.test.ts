import { expect, test } from 'vitest';
import { cutPoints } from '../../../src/logic/cut-points.ts';
import { and, lessOrSame, type Logical } from '../../../src/logic/operators.ts';
import type { Compiled } from '../../../src/outcome/compile.ts';
import { advisedTogether } from '../../../src/review/advised-together.ts';
import { boxToInputs, everySet } from '../../../src/review/box.ts';
import { observationsBehind } from '../../../src/review/observations-behind.ts';
import { searchBoxes } from '../../../src/review/search-boxes.ts';
import { levelIsAtLeast, metTogether, ruleIs } from '../../../src/targets/smt-lib/answers.ts';
import { questionToSmt } from '../../../src/targets/smt-lib/question-to-smt.ts';
import { completeSets } from '../../../src/targets/smt-lib/sets.ts';
import { askable, bundledNames, lessonNames } from '../../bundled.ts';
import { judges } from './judges.ts';

// Every rule, every level and every pair of rules of the bundled protocols: can a complete set reach it? The solvers must say what the
// review found by halving boxes.

interface Asked {
  readonly what: string;
  readonly script: string;
  /** What the review says; null where it did not settle it. */
  readonly expected: 'sat' | 'unsat' | null;
}

const protocols = [...bundledNames, ...lessonNames].map((name) => askable(name));

const asked = (compiled: Compiled, says: string, holds: Logical, expected: Asked['expected']): Asked => ({
  what: `${compiled.protocol.name}: ${says}`,
  script: questionToSmt({ ...compiled, sets: completeSets, holds, says }),
  expected,
});

const verdicts = {
  found: 'sat',
  none: 'unsat',
  never: 'unsat',
  open: null,
  too_large: null,
  not_settled: null,
} as const;

/** What the review finds of a truth that can be asked of boxes, by its certain and its possible form, in a few boxes. */
function found(compiled: Compiled, certain: Logical, possible: Logical): Asked['expected'] {
  const { protocol, logic, evaluator } = compiled;
  const [yes, may] = [evaluator.reader(certain), evaluator.reader(possible)];
  const { kind } = searchBoxes({
    protocol,
    start: everySet(protocol),
    cuts: cutPoints(protocol),
    reads: [new Set(observationsBehind(logic, [certain, possible]))],
    ask: (box) => {
      const result = evaluator.run(boxToInputs(box, protocol, logic.inputs));
      return yes(result) ? 'yes' : may(result) ? 'open' : 'no';
    },
    most: 250,
  });
  return verdicts[kind];
}

const isMet = ({ logic }: Compiled, rule: string): readonly [certain: Logical, possible: Logical] => {
  const possible = logic.rules.find((each) => each.rule === rule)?.possible ?? false;
  return [ruleIs(logic, rule, 'met'), and(logic.applies.possible, possible)];
};

const rules = protocols.flatMap((compiled) =>
  compiled.logic.rules.map(({ rule }) => {
    const [is, may] = isMet(compiled, rule);
    return asked(compiled, rule, is, found(compiled, is, may));
  }),
);

const levels = protocols.flatMap((compiled) =>
  compiled.protocol.ladder.levels.slice(1).map(({ name }, index) => {
    const is = levelIsAtLeast(compiled.logic, index + 1);
    const could = lessOrSame(index + 1, compiled.logic.levels.could);
    return asked(compiled, name, is, found(compiled, is, and(compiled.logic.applies.possible, could)));
  }),
);

/** So many pairs of a protocol, from all over it. */
const pairsEach = 12;

const pairs = protocols.flatMap((compiled) => {
  const { logic } = compiled;
  const all = logic.rules.flatMap(({ rule }, index) =>
    logic.rules.slice(index + 1).map((other) => [rule, other.rule] as const),
  );
  const step = Math.ceil(all.length / pairsEach);
  return all
    .filter((_, index) => index % step === 0)
    .map(([first, second]) => {
      const [one, other] = [isMet(compiled, first), isMet(compiled, second)];
      const holds = metTogether(logic, first, second);
      const expected = found(compiled, holds, and(one[1], other[1]));
      return asked(compiled, `${first} and ${second}`, holds, expected);
    });
});

/** The pairs of the score, as the check of actions that exclude each other asks them. */
const score = askable('early_warning_score');
const advised = score.protocol.rules.flatMap((first, index) =>
  score.protocol.rules.slice(index + 1).map((second) => {
    const { kind } = advisedTogether({ compiled: score, rule: first }, { compiled: score, rule: second });
    const holds = metTogether(score.logic, first.name, second.name);
    return asked(score, `${first.name} and ${second.name}`, holds, verdicts[kind]);
  }),
);

/** What is said of each, and what was to be said: what the review found, or at least an answer. */
function heldAgainst(all: readonly Asked[], answers: readonly string[]): readonly [string[], string[]] {
  const settled = (answer: string | undefined): string => (answer === 'unsat' ? 'unsat' : 'sat');
  return [
    all.map(({ what }, index) => `${what}: ${answers[index] ?? 'nothing'}`),
    all.map(({ what, expected }, index) => `${what}: ${expected ?? settled(answers[index])}`),
  ];
}

const scripts = (all: readonly Asked[]): readonly string[] => all.map(({ script }) => script);

test.for(judges)(
  'a rule is met by some complete set exactly where the review finds one ($name)',
  ({ ask }, context) => {
    const [told, wanted] = heldAgainst(rules, ask(scripts(rules), context));
    expect(told).toEqual(wanted);
  },
);

test.for(judges)(
  'a level is reached by some complete set exactly where the review finds one ($name)',
  ({ ask }, context) => {
    const [told, wanted] = heldAgainst(levels, ask(scripts(levels), context));
    expect(told).toEqual(wanted);
  },
);

test.for(judges)(
  'two rules are met together exactly where the review finds a set ($name)',
  ({ ask }, context) => {
    const all = [...pairs, ...advised];
    const [told, wanted] = heldAgainst(all, ask(scripts(all), context));
    expect(told).toEqual(wanted);
  },
);

test('the review settles most of these questions, in both ways', () => {
  const all = [...rules, ...levels, ...pairs, ...advised].map(({ expected }) => expected);
  const share = (wanted: Asked['expected']): number =>
    all.filter((each) => each === wanted).length / all.length;
  expect(share('unsat')).toBeGreaterThan(0.1);
  expect(share('sat')).toBeGreaterThan(0.4);
  expect(share(null)).toBeLessThan(0.15);
});
