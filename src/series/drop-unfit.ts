import type { Asked } from './asked.ts';
import type { Remark } from './bounds.ts';
import { contradicts } from './check-set.ts';
import { spanFor, type Span } from './ranges.ts';
import { missing, type Resolution } from './resolution.ts';
import type { ReadObservation } from './read-observation.ts';
import type { Pair } from './reader.ts';

const noRemarks: readonly Remark[] = [];

/**
 * Takes back earlier values that cannot be right beside what is known now, and tells why: those that are not
 * possible at an age that became known later, and those that contradict another value. When both are earlier,
 * neither stands in.
 */
export function dropUnfit(all: Resolution[], age: Span | null, asked: Asked): readonly Remark[] {
  if (!all.some(({ state }) => state === 'earlier')) return noRemarks;
  const dropped: Remark[] = [];
  const drop = (read: ReadObservation, why: string): void => {
    const now = all[read.index];
    if (now?.state !== 'earlier' || !now.slot) return;
    all[read.index] = missing(asked.present?.slots[read.index] ?? null, asked.present);
    const given = now.slot.said[0]?.given.text ?? '';
    const because = `${why}; the earlier value of ${now.moment?.text ?? ''} does not stand in`;
    dropped.push({ observation: read.name, given, because });
  };
  for (const read of asked.reader.observations) {
    if (isImpossible(read, all, age)) drop(read, `${read.entry.title} cannot have this value at this age`);
  }
  const clashing = asked.reader.contradictions.filter((pair) => clash(pair, all));
  for (const { lower, higher, says } of clashing) {
    for (const read of [lower, higher]) drop(read, says.replace(/\.\s*$/, ''));
  }
  return dropped;
}

function isImpossible(
  { index, possible }: ReadObservation,
  all: readonly Resolution[],
  age: Span | null,
): boolean {
  const { state, value } = all[index] as Resolution;
  if (state !== 'earlier' || !value || !possible) return false;
  const span = spanFor(possible, age);
  return value.low < span.low || value.high > span.high;
}

function clash(pair: Pair, all: readonly Resolution[]): boolean {
  const lower = all[pair.lower.index]?.value;
  const higher = all[pair.higher.index]?.value;
  return Boolean(lower && higher && contradicts(pair, lower, higher));
}
