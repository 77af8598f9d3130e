import { textToTime } from '../series/text-to-time.ts';
import type { InForceEntry, RecordEntry, WithdrawnEntry } from '../shape/generated/types.ts';
import type { Ledger } from './record.ts';

/** An entry that puts an edition in force. */
export interface PutInForce {
  readonly entry: RecordEntry;
  readonly inForce: InForceEntry;
}

/** What a record says is in force at a time. */
export type InForce =
  | {
      readonly kind: 'in_force';
      readonly put: PutInForce;
      /** Those that were in force before it, the latest first, none of them withdrawn. */
      readonly earlier: readonly PutInForce[];
    }
  | { readonly kind: 'withdrawn'; readonly withdrawn: WithdrawnEntry }
  | { readonly kind: 'none' };

/**
 * What is in force at a time, in milliseconds since 1970: of what was entered after the last withdrawal that holds by then, the one with the
 * latest beginning that is not after it; of two with the same, the later entry.
 */
export function inForceAt({ entries }: Ledger, at: number): InForce {
  const begun = (from: string): boolean => startOf(from) <= at;
  const last = entries.findLastIndex(({ withdrawn }) => withdrawn && begun(withdrawn.from));
  const puts = entries
    .slice(last + 1)
    .flatMap((entry): PutInForce[] => (entry.in_force ? [{ entry, inForce: entry.in_force }] : []))
    .filter(({ inForce }) => begun(inForce.from))
    .toSorted(
      (left, right) =>
        startOf(right.inForce.from) - startOf(left.inForce.from) || right.entry.entry - left.entry.entry,
    );
  const [put, ...earlier] = puts;
  if (put) return { kind: 'in_force', put, earlier };
  const withdrawn = entries[last]?.withdrawn;
  return withdrawn ? { kind: 'withdrawn', withdrawn } : { kind: 'none' };
}

function startOf(from: string): number {
  const time = textToTime(from);
  return typeof time === 'number' ? time : Infinity;
}
