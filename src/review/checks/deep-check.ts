import type * as File from '../../shape/generated/types.ts';
import type { Report } from '../../problems/problem.ts';
import type { Searchable } from '../find-set.ts';

/** A protocol with its logic, which questions about all possible sets are put to. */
export interface DeepChecked extends Searchable {
  readonly file: File.ProtocolFile;
}

/** One question about all possible sets of a protocol. */
export type DeepCheck = (checked: DeepChecked, report: Report) => void;
