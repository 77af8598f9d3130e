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
  /** Something that only helps is there, and known only as a range: one of its values is the truth. */
  readonly helpsOpen: Logical;
  /** Everything in it was given: a fact of the set. */
  readonly known: Logical;
}

/** Nothing is missing, and nothing can move it. */
export const settledPresence: Presence = {
  sure: true,
  maybe: true,
  helpsMissing: false,
  needsOpen: false,
  helpsOpen: false,
  known: true,
};

/**
 * What a number that is made of others lacks: whatever one of them lacks. That a help is known only as a range is as good as a need that is open where
 * another help is missing; of one help alone it cannot be both.
 */
export function joined(parts: readonly Presence[]): Presence {
  const helpsOpen = or(...parts.map((part) => part.helpsOpen));
  return {
    sure: and(...parts.map(({ sure }) => sure)),
    maybe: and(...parts.map(({ maybe }) => maybe)),
    helpsMissing: or(...parts.map(({ helpsMissing }) => helpsMissing)),
    needsOpen: or(...parts.map(({ needsOpen }) => needsOpen), ofSeveral(parts, helpsOpen)),
    helpsOpen,
    known: and(...parts.map(({ known }) => known)),
  };
}

/** What helps leave open, where there are several of them. */
export const ofSeveral = (parts: readonly Presence[], helpsOpen: Logical): Logical =>
  parts.filter(({ helpsMissing }) => helpsMissing !== false).length > 1 && helpsOpen;
