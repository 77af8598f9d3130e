import type { Logical } from './operators.ts';
import { and, or } from './operators.ts';
import type { Ratio } from './linear.ts';
import type { QuantityOrPlain } from '../protocol/quantities.ts';

/** A number in logic: its value, what it is measured in, and what is missing for it. */
export interface NumberForm {
  readonly ratio: Ratio;
  readonly quantity: QuantityOrPlain;
  readonly presence: Presence;
}

/** Whether a number has a value, and what could still move it. */
export interface Presence {
  /** It has a value for every set that is still possible. */
  readonly sure: Logical;
  /** It has a value for some set that is still possible. */
  readonly maybe: Logical;
  /** Something that only helps is missing for it. */
  readonly helpsMissing: Logical;
  /** Something that is needed is missing for it, or known only as a range. */
  readonly needsOpen: Logical;
  /** Everything in it was given: a fact of the set. */
  readonly known: Logical;
}

/** Nothing is missing, and nothing can move it. */
export const settledPresence: Presence = {
  sure: true,
  maybe: true,
  helpsMissing: false,
  needsOpen: false,
  known: true,
};

/** What a number that is made of others lacks: whatever one of them lacks. */
export function joined(parts: readonly Presence[]): Presence {
  return {
    sure: and(...parts.map(({ sure }) => sure)),
    maybe: and(...parts.map(({ maybe }) => maybe)),
    helpsMissing: or(...parts.map(({ helpsMissing }) => helpsMissing)),
    needsOpen: or(...parts.map(({ needsOpen }) => needsOpen)),
    known: and(...parts.map(({ known }) => known)),
  };
}
