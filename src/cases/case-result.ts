import type { Answers } from '../outcome/answers.ts';
import type { Compiled } from '../outcome/compile.ts';
import type { Path } from '../problems/place.ts';
import type { Bounds } from '../series/bounds.ts';

/** How a case came out: as expected when there are no differences. */
export interface CaseResult {
  readonly name: string;
  readonly differences: readonly Difference[];
}

/** Something that is not as expected, in words, and where it is expected. */
export interface Difference {
  readonly what: string;
  readonly expected: string;
  readonly found: string;
  readonly path: Path;
}

/** A case that has been put to its protocol. */
export interface Asked {
  readonly compiled: Compiled;
  readonly bounds: Bounds;
  readonly answers: Answers;
  /** Where its expectations stand. */
  readonly path: Path;
}
