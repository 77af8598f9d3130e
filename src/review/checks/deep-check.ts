import type { Report } from '../../problems/problem.ts';
import type { Searchable } from '../find-set.ts';
import type { WholeFile } from '../../protocol/based-on/whole-file.ts';

/** A protocol with its logic, which questions about all possible sets are put to. */
export interface DeepChecked extends Searchable {
  readonly file: WholeFile;
}

/** One question about all possible sets of a protocol. */
export type DeepCheck = (checked: DeepChecked, report: Report) => void;
