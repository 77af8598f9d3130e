import type { Asking } from './asking.ts';
import { cliffs } from './cliffs.ts';
import { excluded } from './excluded.ts';
import type { Found } from './finding.ts';
import { inside } from './inside.ts';
import { levelsReached } from './levels-reached.ts';
import { neverMet } from './never-met.ts';
import { nothingSaid } from './nothing-said.ts';
import { ordinary } from './ordinary.ts';
import { thresholds } from './thresholds.ts';

/** Every kind of finding, those first whose sets help the others. To add one: a file here, and a line in this list. */
export const kinds: readonly ((asking: Asking) => Iterable<Found>)[] = [
  neverMet,
  inside,
  levelsReached,
  thresholds,
  cliffs,
  nothingSaid,
  excluded,
  ordinary,
];
