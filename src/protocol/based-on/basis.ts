import type { Document } from '../../document/document.ts';
import type { Problem } from '../../problems/problem.ts';
import type { Limit, Origin, Parent, Withdrawn } from '../protocol.ts';

/** The text of a protocol that another one may be based on. */
export interface ParentText {
  /** The name under which problems cite it. */
  readonly file: string;
  readonly text: string;
}

/** Texts of protocols by their names. */
export type Parents = ReadonlyMap<string, ParentText>;

/** What came from the protocol that another one is based on. */
export interface Basis {
  readonly parent: Omit<Parent, 'limits'>;
  /** The limits that have another value here, as they stand in the parent. */
  readonly otherValues: readonly { readonly insteadOf: Limit; readonly because: string }[];
  /** What the parent is based on itself. */
  readonly further: readonly Parent[];
  /** Of each rule that came from elsewhere: in which protocol's file it stands. */
  readonly from: ReadonlyMap<string, Origin>;
  /** Every rule that was withdrawn on the way. */
  readonly withdrawn: ReadonlyMap<string, Withdrawn>;
  /** What the check of the parent warns of, in its words: it is told there, and not again. */
  readonly warned: ReadonlySet<string>;
}

/**
 * A protocol's document with what it is based on worked in. Each part that came from the parent has its place where this text names the
 * parent; so every problem stands in this text.
 */
export interface WholeDocument extends Document {
  /** Null when the protocol stands alone. */
  readonly basis: Basis | null;
}

/** Whether what a document is based on has been worked in already. */
export const isWhole = (document: Document): document is WholeDocument => 'basis' in document;

/** Everything that a protocol is based on, the nearest first; `limits` are those of the protocol itself. */
export function parentsOf(basis: Basis | null, limits: ReadonlyMap<string, Limit>): readonly Parent[] {
  if (!basis) return [];
  const changed = basis.otherValues.flatMap(({ insteadOf, because }) => {
    const limit = limits.get(insteadOf.name);
    return limit ? [{ limit, insteadOf, because }] : [];
  });
  return [{ ...basis.parent, limits: changed }, ...basis.further];
}

/** The problems without the warnings that the check of the parent tells already: its own file is where they are answered. */
export function notToldBefore(problems: readonly Problem[], { basis }: WholeDocument): readonly Problem[] {
  if (!basis) return problems;
  return problems.filter(({ severity, says }) => severity === 'error' || !basis.warned.has(says));
}
