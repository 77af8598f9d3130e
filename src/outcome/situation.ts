import type { Bounds } from '../series/bounds.ts';
import type { Answers } from './answers.ts';
import type { Compiled } from './compile.ts';

/** A patient's numbers, and what was found about them. */
export interface Situation {
  readonly compiled: Compiled;
  readonly bounds: Bounds;
  readonly answers: Answers;
}

/** Whether an observation could still be more than one value, with earlier values counted as missing. */
export function isOpen(name: string, { compiled, answers }: Situation): boolean {
  const places = compiled.places.observations.get(name);
  if (!places) return false;
  const { result } = answers.wide;
  if (places.low !== -1) return (result[places.low] as number) < (result[places.high] as number);
  const may = places.may.filter((place) => result[place] !== 0);
  if (places.sure.length === 0) return may.length > 1;
  return may.length > places.sure.filter((place) => result[place] !== 0).length;
}
