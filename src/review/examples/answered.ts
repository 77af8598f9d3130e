import type { Answers } from '../../outcome/answers.ts';
import type { Compiled } from '../../outcome/compile.ts';

/** A protocol, and what it answered. */
export interface Answered {
  readonly compiled: Compiled;
  readonly answers: Answers;
}
