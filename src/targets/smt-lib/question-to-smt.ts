import type { Logic } from '../../logic/logic.ts';
import type { Logical } from '../../logic/operators.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import { expression } from './operators.ts';
import { head, scriptOf } from './script.ts';
import type { AskedSets } from './sets.ts';
import { spread } from './spread.ts';
import { Smt, smt } from './smt.ts';

/** A question about the sets of one protocol. */
export interface Question {
  readonly protocol: Protocol;
  /** Its inputs, and at least the steps that `holds` reads, whatever wrote them; steps that it does not read are left out of the text. */
  readonly logic: Pick<Logic, 'inputs' | 'steps'>;
  readonly sets: AskedSets;
  /** A truth over inputs and steps. The question is whether it holds for one of the sets. */
  readonly holds: Logical;
  /** What is asked, in words, for a comment; any text. */
  readonly says: string;
}

/**
 * A question as a script that any solver of SMT-LIB 2 answers: `sat` when `holds` is true of at least one of the sets, `unsat`
 * when it is true of none.
 *
 * To prove that something always holds, ask for a set in which it does not (`holds: not(something)`). Then `unsat` means that it is
 * proven, of the rules as written and not of patients; `sat` that it does not hold; `unknown`, or no answer, that it is not settled.
 *
 * What is said of the sets never leaves a real one out: so `unsat` holds for every one that can be read. It is exact for what
 * one set gives; of look backs it says what holds whatever the earlier sets are, so that a `sat` that reads one may name
 * values to which no series comes.
 */
export function questionToSmt({ protocol, logic, sets, holds, says }: Question): string {
  const byName = new Map(logic.steps.map((step) => [step.name, step]));
  const asked = spread(holds, byName);
  const example = Smt.joined(
    logic.inputs.map(({ name }) => smt`${name}`),
    ' ',
  );
  return `${
    Smt.joined(
      [
        head(protocol),
        Smt.comment(
          `The question: is there a set in which this holds? ${says}`,
          'sat: there is one. unsat: there is none.',
        ),
        scriptOf(logic, [asked], protocol, sets),
        Smt.comment('What is asked'),
        smt`(assert ${expression(asked)})`,
        smt`(check-sat)`,
        Smt.comment('After sat, this shows an example:', `(get-value (${example.text}))`),
      ],
      '\n',
    ).text
  }\n`;
}
