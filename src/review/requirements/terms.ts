import type { Logical } from '../../logic/operators.ts';
import type { Rule } from '../../protocol/protocol.ts';
import type { Requirement } from '../../protocol/requirements/requirement.ts';
import { bind, type Lacks } from './bind.ts';
import type { Program } from './program.ts';
import type { Space } from './space.ts';
import { faultOf, whereOf, type Part, type Subject } from './subject.ts';

/** The nodes of a program that requirements ask about. */
export interface Terms {
  /** Whether this is for the patient at all. */
  readonly applies: number;
  /** Whether it may be, as far as is known. */
  readonly mayApply: number;
  /** The level that the rules call for, the lowest when none does; below it when this is not for the patient. */
  readonly raised: number;
  /** The highest level that what is missing could call for; and the same without what the rules call for already. */
  readonly could: number;
  readonly couldAlone: number;
  /** For each rule with a level whether it counts, and whether it could hold. */
  readonly rules: () => readonly { readonly counts: number; readonly could: number }[];
  readonly where: (requirement: Requirement) => number;
  /** Whether a fault of technique is there, of whatever protocol. */
  readonly anyFault: () => number;
  readonly met: (rule: string) => number;
  /** Whether some rule with something to say is met, or counts. */
  readonly advises: () => number;
}

/** Writes what a subject says of a set into a program. */
export function termsOf(subject: Subject, program: Program, space: Space, lacks: Lacks): Terms {
  const written = subject.parts.map((part) => ({ part, write: writerOf(part, program, space, lacks) }));
  const reading = written.filter(({ part }) => part.reads === 'rules');
  const not = program.constant(-1);
  const asked = reading.map(({ part: { logic }, write }) => {
    const [applies, mayApply] = [write(logic.applies.certain), write(logic.applies.possible)];
    const { raised, could } = logic.levels;
    const lowest = program.constant(0);
    const level = (of: Logical): number => program.choose(mayApply, program.max([write(of), lowest]), not);
    return { applies, mayApply, raised: level(raised), could: level(could) };
  });
  const fault = (): number[] =>
    reading.flatMap(({ part: { protocol, logic }, write }) =>
      protocol.faults.flatMap(({ name }) => certain(partitionIn(logic.partitions, faultOf(name)), write)),
    );
  return {
    applies: program.max(asked.map(({ applies }) => applies)),
    mayApply: program.max(asked.map(({ mayApply }) => mayApply)),
    raised: program.max(asked.map(({ raised }) => raised)),
    could: program.max(asked.flatMap(({ raised, could }) => [raised, could])),
    couldAlone: program.max(asked.map(({ could }) => could)),
    rules: () =>
      reading.flatMap(({ part: { protocol, logic }, write }) =>
        logic.rules.flatMap(({ counts, could }, index) =>
          (protocol.rules[index]?.level ?? null) === null
            ? []
            : [{ counts: write(counts), could: write(could) }],
        ),
      ),
    where: (requirement) => {
      const found = written.flatMap(({ part, write }) =>
        certain(partitionIn(part.logic.partitions, whereOf(requirement)), write),
      );
      return found[0] ?? program.constant(1);
    },
    anyFault: () => program.max([program.constant(0), ...fault()]),
    met: (rule) => {
      const found = reading.flatMap(({ part, write }) =>
        part.logic.rules.filter((each) => each.rule === rule).map((each) => write(each.certain)),
      );
      return found[0] ?? program.constant(0);
    },
    advises: () =>
      program.max([
        program.constant(0),
        ...reading.flatMap(({ part, write }, index) =>
          advising(part, write, asked[index]?.mayApply ?? not, program),
        ),
      ]),
  };
}

type Write = (logical: Logical) => number;

/** Each step of a part's logic is written when something reads it. */
function writerOf(part: Part, program: Program, space: Space, lacks: Lacks): Write {
  const inputs = new Map(part.logic.inputs.map((input) => [input.name, input]));
  const enter = bind(part, program, space, lacks);
  const steps = new Map(part.logic.steps.map(({ name, is }) => [name, is]));
  const nodes = new Map<string, number>();
  function named(name: string): number {
    const known = nodes.get(name);
    if (known !== undefined) return known;
    const step = steps.get(name);
    const node = step === undefined ? entered(name) : program.write(step, named);
    nodes.set(name, node);
    return node;
  }
  function entered(name: string): number {
    const input = inputs.get(name);
    if (!input) throw new Error(`no input and no step is called ${name}`);
    return enter(input);
  }
  return (logical) => program.write(logical, named);
}

type Partitions = Part['logic']['partitions'];

const partitionIn = (partitions: Partitions, name: string): Partitions[number]['of'] =>
  partitions.find((each) => each.name === name)?.of ?? [];

const certain = (of: Partitions[number]['of'], write: Write): number[] =>
  of.map((each) => write(each.certain));

function advising({ protocol, logic }: Part, write: Write, applies: number, program: Program): number[] {
  const says = ({ says: text, ask, do: actions }: Rule): boolean =>
    text !== null || ask.length > 0 || actions.length > 0;
  return protocol.rules.flatMap((rule, index) => {
    const found = logic.rules[index];
    if (!found || !says(rule)) return [];
    return [program.min([applies, program.max([write(found.certain), write(found.counts)])])];
  });
}
