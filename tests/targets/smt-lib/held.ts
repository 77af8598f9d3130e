import type { Logical } from '../../../src/logic/operators.ts';
import type { Compiled } from '../../../src/outcome/compile.ts';
import { logicToSmt } from '../../../src/targets/smt-lib/logic-to-smt.ts';
import type { AskedSets } from '../../../src/targets/smt-lib/sets.ts';
import { Smt, smt } from '../../../src/targets/smt-lib/smt.ts';

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

/** A protocol, and two questions for each of the inputs: whether they are one of the sets, and whether an answer can then be other than the evaluator's. */
export const scriptFor = (compiled: Compiled, sets: AskedSets, all: readonly Float64Array[]): string =>
  logicToSmt(compiled.logic, compiled.protocol, sets) + questions(compiled, all);

/** The places of the inputs that are none of the sets, or for which an answer could be another. */
export const apart = (answers: readonly string[]): readonly number[] =>
  answers.flatMap((_, index) =>
    index % 2 === 1 || (answers[index] === 'sat' && answers[index + 1] === 'unsat') ? [] : [index / 2],
  );
