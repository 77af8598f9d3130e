import type { Document } from '../../document/document.ts';
import { protocolToLogic } from '../../logic/protocol-to-logic.ts';
import type { Answers } from '../../outcome/answers.ts';
import type { Compiled } from '../../outcome/compile.ts';
import type { Condition, Partition, Protocol } from '../../protocol/protocol.ts';
import type { Box } from '../box.ts';
import { TooManyPieces, type Diagram } from '../diagrams/diagrams.ts';
import { findSetIn, findStepIn, type Pieces } from '../diagrams/find-set-in.ts';
import { preferredPieces, type Allowed, type Preferred } from '../diagrams/preferred.ts';
import { piecesToBox } from '../diagrams/pieces-to-box.ts';
import { logicOfSingleSet } from '../diagrams/single-set.ts';
import { Space } from '../diagrams/space.ts';
import type { Variable } from '../diagrams/variables.ts';
import { answersInBox } from './answers-in-box.ts';
import { answersIn, type AskedAnswers } from './answers-in.ts';
import type { WhyOpen } from './finding.ts';
import { RuleTruths } from './rule-truths.ts';

/** Whether some set is such: that set; proven that none is; or not settled. */
export type Existence =
  | { readonly kind: 'set'; readonly box: Box }
  | { readonly kind: 'none' }
  | { readonly kind: 'open'; readonly because: WhyOpen };

/** Whether that happens in some series, of one set or more; or why it is not settled. */
export type Happens = 'yes' | 'no' | WhyOpen;

/** The same of two sets that are one step of one number apart. */
export type StepExistence =
  | { readonly kind: 'step'; readonly from: Box; readonly to: Box }
  | { readonly kind: 'none' }
  | { readonly kind: 'open'; readonly because: WhyOpen };

/** What must hold for a set, made from the truths of a protocol's rules. */
export type Truths = (of: RuleTruths) => readonly Diagram[];

/** A question for a set. `confirms` asks the evaluator itself: what it does not confirm is no example. */
export interface Question {
  readonly holds: Truths;
  readonly confirms: (answers: Answers) => boolean;
  /** The pieces that may be taken; all, without. */
  readonly allowed?: (variable: Variable) => Allowed;
}

/** A protocol of which findings are asked, and what was made to answer them. */
export class Asking {
  readonly compiled: Compiled;
  /** With the ordinary ranges and the parts of which something must be said as partitions of one part, so that logic has them. */
  readonly protocol: Protocol;
  readonly document: Document;
  /** What is already known to happen: the answers of the cases, and of the sets that were found. */
  readonly known: Answers[];
  readonly space: Space;
  readonly single: RuleTruths;
  /** With every look back free; null where no rule looks back. */
  readonly every: RuleTruths | null;
  readonly #preferred: Preferred;

  constructor(compiled: Compiled, document: Document, known: readonly Answers[]) {
    [this.compiled, this.document, this.known] = [compiled, document, [...known]];
    this.protocol = withParts(compiled.protocol);
    const logic = this.protocol === compiled.protocol ? compiled.logic : protocolToLogic(this.protocol).logic;
    this.space = new Space(this.protocol);
    this.single = new RuleTruths(this.space, logicOfSingleSet(logic, this.protocol));
    const looksBack = logic.inputs.some(({ of }) => of === 'look_back');
    this.every = looksBack ? new RuleTruths(this.space, logic) : null;
    this.#preferred = preferredPieces(this.space);
  }

  /** Whether some series is such: one that is known already, or a set that is looked for. */
  happens(question: Question): Happens {
    if (this.known.some((answers) => question.confirms(answers))) return 'yes';
    const found = this.exists(question);
    return found.kind === 'open' ? found.because : found.kind === 'set' ? 'yes' : 'no';
  }

  /** Looks for a set. Among patients of one set first; that there is none holds for every series. */
  exists({ holds, confirms, allowed }: Question): Existence {
    const preferred = allowed ? preferredPieces(this.space, allowed) : this.#preferred;
    const look = (of: RuleTruths): Pieces | null => findSetIn(this.space, holds(of), preferred);
    return this.#settled(() => {
      const pieces = look(this.single);
      if (!pieces) return this.every && look(this.every) ? earlier : none;
      const box = piecesToBox(this.space, pieces);
      const answers = this.answersTo(box);
      if (!answers || !confirms(answers)) return earlier;
      this.known.push(answers);
      return { kind: 'set', box };
    });
  }

  /** Looks for a step of one number between two such sets. */
  existsStep(
    {
      from,
      to,
      allowed,
    }: { readonly from: Question; readonly to: Question; readonly allowed: Question['allowed'] },
    observation: string,
  ): StepExistence {
    const along = this.space.placeOf.get(observation) as number;
    const preferred = allowed ? preferredPieces(this.space, allowed) : this.#preferred;
    const look = (of: RuleTruths): { readonly from: Pieces; readonly to: Pieces } | null =>
      findStepIn(this.space, { from: from.holds(of), to: to.holds(of), along }, preferred);
    return this.#settled(() => {
      const found = look(this.single);
      if (!found) return this.every && look(this.every) ? earlier : none;
      const up = (found.to[along] as number) > (found.from[along] as number);
      const [first, second] = [
        piecesToBox(this.space, found.from, { along, end: up ? 'high' : 'low' }),
        piecesToBox(this.space, found.to, { along, end: up ? 'low' : 'high' }),
      ];
      const [before, after] = [this.answersTo(first), this.answersTo(second)];
      if (!before || !after || !from.confirms(before) || !to.confirms(after)) return earlier;
      return { kind: 'step', from: first, to: second };
    });
  }

  /** Whether two protocols answer some set differently; `single` for patients of one set, `every` for all series. */
  differs(single: TwoTruths, every: TwoTruths | null, asked: AskedAnswers): Happens {
    const found = this.#settled(() => {
      if (!this.#differ(single, asked)) return every && this.#differ(every, asked) ? earlier : none;
      return { kind: 'set' } as const;
    });
    return found.kind === 'open' ? found.because : found.kind === 'set' ? 'yes' : 'no';
  }

  #differ([before, after]: TwoTruths, asked: AskedAnswers): boolean {
    const [first, second] = [answersIn(before.logic, asked), answersIn(after.logic, asked)];
    return first.some((each, index) => {
      const [was, is] = [before.of(each), after.of(second[index] ?? false)];
      if (was === is) return false;
      return findSetIn(this.space, [this.space.store.differ(was, is)], this.#preferred) !== null;
    });
  }

  /** What the evaluator answers to a set, read as a case file would give it. */
  answersTo(box: Box): Answers | null {
    return answersInBox(box, this.compiled, this.document);
  }

  #settled<T>(look: () => T): T | typeof tooLarge {
    try {
      return look();
    } catch (error) {
      if (error instanceof TooManyPieces) return tooLarge;
      throw error;
    }
  }
}

const none = { kind: 'none' } as const;
const earlier = { kind: 'open', because: 'earlier_sets' } as const;
const tooLarge = { kind: 'open', because: 'too_large' } as const;

/** A protocol, and the same with a change. */
export type TwoTruths = readonly [RuleTruths, RuleTruths];

/** The name under which logic has what is ordinary. No partition can have it: a name has no blank. */
export const ordinaryPart = 'ordinary sets';
export const mustSayPart = (name: string): string => `must say ${name}`;

function withParts(protocol: Protocol): Protocol {
  const part = (name: string, condition: Condition): [string, Partition] => [
    name,
    { name, of: [condition], path: condition.path },
  ];
  const more = [
    ...(protocol.ordinary ? [part(ordinaryPart, protocol.ordinary)] : []),
    ...[...protocol.mustSay].map(([name, condition]) => part(mustSayPart(name), condition)),
  ];
  return more.length === 0
    ? protocol
    : { ...protocol, partitions: new Map([...protocol.partitions, ...more]) };
}
