import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Logical } from '../../../src/logic/operators.ts';
import type { Compiled } from '../../../src/outcome/compile.ts';
import type { Bounds } from '../../../src/series/bounds.ts';
import { logicToSmt } from '../../../src/targets/smt-lib/logic-to-smt.ts';
import type { AskedSets } from '../../../src/targets/smt-lib/sets.ts';
import { Smt, smt } from '../../../src/targets/smt-lib/smt.ts';
import { examples } from '../../agreement/generators.ts';
import { boundsOf, protocolOf } from '../../agreement/kit.ts';
import { ladderText } from '../../agreement/protocols.ts';
import { seed } from '../../agreement/settings.ts';
import { judges } from './judges.ts';

// Made-up protocols, and sets and series of values, ranges, earlier values and nothing: what the text says of sets must hold of each
// of them, and with the inputs held to one of them every answer must be the evaluator's.

const runs = 40;
const setsEach = 5;

const lines = (parts: readonly Smt[]): Smt => Smt.joined(parts, '\n');

/** Inputs held to what was read. */
const held = ({ logic }: Compiled, inputs: Float64Array): Smt =>
  lines(
    logic.inputs.map(({ name, part }, index) => {
      const value = inputs[index] as number;
      const isNumber = ['low', 'high', 'value', 'count'].includes(part);
      return smt`(assert (= ${name} ${isNumber ? value : value !== 0}))`;
    }),
  );

/** Each answer of the evaluator, as an equation with the text's answer. */
function equations({ logic, evaluator }: Compiled, inputs: Float64Array): Smt {
  const result = evaluator.run(inputs);
  const value = (is: Logical): number => evaluator.reader(is)(result);
  const truths = (where: string, answers: object): Smt[] =>
    Object.entries(answers).map(
      ([name, is]) => smt`(= ${`answers/${where}/${name}`} ${value(is as Logical) !== 0})`,
    );
  const all = [
    ...truths('applies', logic.applies),
    ...logic.rules.flatMap(({ rule, certain, possible, counts, could }) =>
      truths(`rules/${rule}`, { certain, possible, counts, could }),
    ),
    ...Object.entries(logic.levels).map(([name, is]) => smt`(= ${`answers/levels/${name}`} ${value(is)})`),
  ];
  return smt`(and ${Smt.joined(all, ' ')})`;
}

/** Two questions for each of the inputs: whether they are one of the sets, and whether an answer can then be another. */
const questions = (compiled: Compiled, all: readonly Float64Array[]): string =>
  lines(
    all.map(
      (inputs) => smt`(push 1)
${held(compiled, inputs)}
(check-sat)
(assert (not ${equations(compiled, inputs)}))
(check-sat)
(pop 1)`,
    ),
  ).text;

const script = (compiled: Compiled, sets: AskedSets, all: readonly Float64Array[]): string =>
  logicToSmt(compiled.logic, compiled.protocol, sets) + questions(compiled, all);

interface Asked {
  readonly compiled: Compiled;
  readonly sets: AskedSets;
  readonly all: readonly Float64Array[];
  readonly told: readonly string[];
}

const exact = ({ facts, narrow, wide }: Bounds): boolean =>
  narrow === wide &&
  [...facts.present.values()].every(
    ({ state, range }) => state !== 'given' || range === null || range[0] === range[1],
  );

/** What a set is asked as: as anything at all, and also as something more special where it is that. */
function askedOf(text: string, sets: readonly unknown[]): readonly Asked[] {
  const compiled = protocolOf(text, ladderText);
  const read = sets.map((set) => ({
    set: JSON.stringify(set),
    bounds: boundsOf(compiled, JSON.stringify(set)),
  }));
  const of = (given: AskedSets['given'], some: typeof read): Asked => ({
    compiled,
    sets: { given, limits: 'within_bounds' },
    all: some.flatMap(({ bounds: { narrow, wide } }) => (narrow === wide ? [narrow] : [narrow, wide])),
    told: some.flatMap(({ set, bounds: { narrow, wide } }) =>
      narrow === wide ? [set] : [`narrow ${set}`, `wide ${set}`],
    ),
  });
  const partial = read.filter(({ bounds }) => exact(bounds));
  const complete = partial.filter(({ bounds }) =>
    [...bounds.facts.present.values()].every(({ state }) => state === 'given' || state === 'standing'),
  );
  const noBacks = [...compiled.protocol.measures.values()].every(({ how }) => !('over' in how));
  return [of('any', read), of('partial', partial), ...(noBacks ? [of('complete', complete)] : [])];
}

const asked = fc
  .sample(examples(setsEach), { numRuns: runs, seed })
  .flatMap(({ made, sets }) => askedOf(made.text, sets))
  .filter(({ all }) => all.length > 0);

test.for(judges)(
  'every set that can be read is one of the sets, and every answer is the evaluator’s ($name)',
  ({ ask }, context) => {
    const answers = ask(
      asked.map(({ compiled, sets, all }) => script(compiled, sets, all)),
      context,
    );
    const each = asked.flatMap(({ sets, told, compiled }) =>
      told.map((what) => ({ what: `${sets.given}: ${what}`, compiled })),
    );
    const wrong = each.filter(
      (_, index) => answers[2 * index] !== 'sat' || answers[2 * index + 1] !== 'unsat',
    );
    expect(wrong.slice(0, 2).map(({ what }) => what)).toEqual([]);
    const count = (given: AskedSets['given']): number =>
      asked.filter(({ sets }) => sets.given === given).reduce((total, { all }) => total + all.length, 0);
    expect(count('any')).toBeGreaterThan(runs * setsEach);
    expect(count('partial')).toBeGreaterThan(runs);
    expect(count('complete')).toBeGreaterThan(runs / 3);
  },
);
