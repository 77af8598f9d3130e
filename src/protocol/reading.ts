import type { Report } from '../problems/problem.ts';
import type { Names } from './names.ts';

/** What every part of a protocol is read with: the names that it can use, and where its faults go. */
export interface Reading {
  readonly names: Names;
  readonly report: Report;
}
