import type { Requirement } from '../../protocol/requirements/requirement.ts';
import type { Box } from './box.ts';
import { wholeBox } from './box.ts';
import type { Second } from './enter.ts';
import { Program } from './program.ts';
import { spaceOf, type Space } from './space.ts';
import type { Subject } from './subject.ts';
import { termsOf, type Terms } from './terms.ts';
import type { Lacks } from './bind.ts';

/** A requirement as a question: is there a set, or a pair of sets, that breaks it? */
export interface Question {
  readonly space: Space;
  readonly program: Program;
  readonly start: Box;
  readonly seconds: ReadonlyMap<number, Second>;
  /** Whether this is for the patient at all. */
  readonly whom: number;
  /** The sets that it is about: all of these nodes hold, the first in the first set, the others in the second. */
  readonly about: { readonly first: number; readonly second: number };
  readonly breaks: Breaks;
}

/** How a set, or a pair, breaks it. */
export type Breaks =
  /** This node holds in a set. */
  | { readonly kind: 'set'; readonly node: number }
  /** This number is lower in the second set. */
  | { readonly kind: 'falls'; readonly node: number }
  /**
   * `could` in the second set is below `raised` in the first, by so many levels at least. `alone`: a part of `could` that in a set of which
   * everything is known is the very same as `raised`; null when that is not known.
   */
  | {
      readonly kind: 'hides';
      readonly raised: number;
      readonly could: number;
      readonly alone: number | null;
      readonly by: number;
    };

export interface Setting {
  readonly subject: Subject;
  readonly requirement: Requirement;
}

/** What questions of every kind are made with. */
export interface Drawn {
  readonly space: Space;
  readonly program: Program;
  readonly terms: Terms;
}

/** A program over a space; tables stand in it for what is built on few variables, unless something may lack. */
export function drawn(subject: Subject, space: Space, lacks: Lacks): Drawn {
  const program = new Program(space.variables, lacks.both.size + lacks.second.size === 0);
  return { space, program, terms: termsOf(subject, program, space, lacks) };
}

/** The nodes and the whole box of a question about single sets: a patient whom this is for, where the requirement says. */
export function aboutSets(
  { space, program, terms }: Drawn,
  { requirement }: Setting,
  broken: number,
): Question {
  const { asks } = requirement;
  const where = terms.where(requirement);
  const about = asks.kind === 'no_level' ? where : program.min([terms.applies, where]);
  return {
    space,
    program,
    start: wholeBox(space),
    seconds: new Map(),
    whom: terms.applies,
    about: { first: about, second: about },
    breaks: { kind: 'set', node: program.min([about, broken]) },
  };
}

/** The same for pairs of sets that differ as `seconds` say. */
export function aboutPairs(
  { space, program, terms }: Drawn,
  { requirement }: Setting,
  seconds: ReadonlyMap<number, Second>,
): Question {
  const about = program.min([terms.applies, terms.where(requirement)]);
  return {
    space,
    program,
    start: wholeBox(space),
    seconds,
    whom: terms.applies,
    about: { first: about, second: about },
    breaks: { kind: 'falls', node: terms.raised },
  };
}

export const freshSpace = ({ subject }: Setting): Space => spaceOf(subject);
