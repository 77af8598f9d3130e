import type { Report } from '../../problems/problem.ts';
import type { Protocol } from '../protocol.ts';
import type { WholeFile } from '../based-on/whole-file.ts';

/** What a check looks at. Parts that could not be read are left out of `protocol`; `file` has them all. */
export interface Checked {
  readonly protocol: Protocol;
  readonly file: WholeFile;
  /** Year-month-day, or null when nobody asks. */
  readonly today: string | null;
}

/** One question about a protocol. Its file is named after the code of the problem that it finds. */
export type Check = (checked: Checked, report: Report) => void;
