import type { CaseResult } from '../cases/case-result.ts';
import type { Problem } from '../problems/problem.ts';
import type { FileKind } from './files.ts';

/** What the check found in one file; a protocol's cases are reported with it. */
export interface FileReport {
  readonly file: string;
  readonly kind: FileKind;
  readonly name: string | null;
  readonly edition: number | null;
  readonly rules: number | null;
  readonly problems: readonly Problem[];
  /** In file order; empty when the protocol has errors, or has no cases. */
  readonly cases: readonly CaseResult[];
}
