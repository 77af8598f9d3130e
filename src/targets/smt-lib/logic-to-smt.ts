import type { Logic } from '../../logic/logic.ts';
import type { Logical } from '../../logic/operators.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import { expression } from './operators.ts';
import { head, scriptOf } from './script.ts';
import type { AskedSets } from './sets.ts';
import { Smt, smt } from './smt.ts';

/**
 * A protocol as a script without a question: its inputs, what holds of them, its steps, and a name for each answer. Whoever
 * has a question of their own appends `(assert …)` and `(check-sat)`.
 */
export function logicToSmt(logic: Logic, protocol: Protocol, sets: AskedSets): string {
  const answers = answersOf(logic);
  return `${
    Smt.joined(
      [
        head(protocol),
        scriptOf(
          logic,
          answers.map(([, , is]) => is),
          protocol,
          sets,
        ),
        Smt.comment('Answers; a level is its place on the ladder from 0, −1 is none', ...levelsOf(protocol)),
        ...answers.map(
          ([name, sort, is]) => smt`(define-fun ${`answers/${name}`} () ${sort} ${expression(is)})`,
        ),
        Smt.comment('The question follows here: (assert …) and (check-sat)'),
      ],
      '\n',
    ).text
  }\n`;
}

const levelsOf = ({ ladder }: Protocol): string[] =>
  ladder.levels.map(({ name }, index) => `${index} ${name}`);

function answersOf({ applies, levels, rules }: Logic): (readonly [string, Smt, Logical])[] {
  const [truth, number] = [smt`Bool`, smt`Int`];
  const of = (
    where: string,
    answers: Readonly<Record<string, Logical>>,
    sort: Smt,
  ): (readonly [string, Smt, Logical])[] =>
    Object.entries(answers).map(([name, is]) => [`${where}/${name}`, sort, is]);
  return [
    ...of('applies', applies, truth),
    ...of('levels', levels, number),
    ...rules.flatMap(({ rule, certain, possible, counts, could }) =>
      of(`rules/${rule}`, { certain, possible, counts, could }, truth),
    ),
  ];
}
