import type { Asked } from './asked.ts';
import type { FoundFault, Present, Remark, SeriesFacts, UnsureReading } from './bounds.ts';
import { isNothing } from './merge-observed.ts';
import { spanFor } from './ranges.ts';
import type { Resolution } from './resolution.ts';
import type { Resolved } from './resolve.ts';
import type { ReadObservation } from './read-observation.ts';
import type { LimitsInForce } from './reader.ts';
import { remarksOf } from './remarks.ts';
import type { Moment, Slot } from './slot.ts';

/** What an outcome tells about the observations, beside the numbers. */
export function factsOf(
  at: string | null,
  asked: Asked,
  resolved: Resolved,
  limits: LimitsInForce,
  unused: ReadonlySet<string>,
): SeriesFacts {
  const present = new Map<string, Present>();
  for (const read of asked.reader.observations) {
    if (read.role === null) continue;
    present.set(read.name, presentOf(read, resolved.all[read.index] as Resolution, asked, resolved));
  }
  const { taken, refused, questioned } = remarksOf(asked, resolved);
  const dropped: readonly Remark[] = resolved.dropped;
  return {
    at,
    present,
    limits: limits.facts,
    taken: [...taken, ...limits.taken],
    refused: [...refused, ...dropped, ...limits.refused],
    questioned,
    doubts: asked.present?.doubts ?? noDoubts,
    faults: faultsOf(asked, resolved),
    unused: unused.size === 0 ? [] : [...unused].toSorted(),
  };
}

const noDoubts: SeriesFacts['doubts'] = new Map();

/** The faults behind the values that are used now, in the order of the protocol. */
function faultsOf({ reader }: Asked, { all }: Resolved): FoundFault[] {
  const unsure = reader.observations.flatMap((read) => {
    const { slot, value } = all[read.index] as Resolution;
    if (read.role === null || !value?.asRead || slot?.state !== 'value') return [];
    const { low, high } = value.asRead;
    const reading: UnsureReading = {
      observation: read.name,
      read: [low, high],
      truth: [value.low, value.high],
    };
    return [{ reading, faults: slot.faults ?? [] }];
  });
  return reader.faults.flatMap(({ name }) => {
    const readings = unsure.filter(({ faults }) => faults.includes(name)).map(({ reading }) => reading);
    return readings.length > 0 ? [{ fault: name, readings }] : [];
  });
}

function presentOf(read: ReadObservation, now: Resolution, asked: Asked, { age }: Resolved): Present {
  const { state, value, moment, instead } = now;
  const span = read.possible && (value ?? spanFor(read.possible, age));
  const isTimed = state !== 'missing' && state !== 'assumed';
  return {
    state,
    range: span && [span.low, span.high],
    choices: span ? null : choicesOf(read, value?.picked ?? read.everyChoice),
    at: isTimed ? timeOf(moment) : null,
    atText: state === 'earlier' ? (moment?.text ?? null) : null,
    note: noteOf(read, now, asked),
    instead,
  };
}

const timeOf = (moment: Moment | null): number | null => moment?.at ?? null;

function choicesOf({ entry }: ReadObservation, picked: readonly number[]): readonly string[] {
  const { choices } = entry;
  if (picked.length === 1) return [(choices[picked[0] as number] as (typeof choices)[number]).choice];
  return choices.filter((_, position) => picked.includes(position)).map(({ choice }) => choice);
}

/** Who stated the standing fact that holds; else why the present set has no value. */
function noteOf(
  read: ReadObservation,
  { state, value, statement, instead }: Resolution,
  asked: Asked,
): string | null {
  if (value !== null && statement?.fact) return statement.fact.stated.by;
  const slot = asked.present?.slots[read.index];
  const isNothingNow = state === 'unobtainable' || state === 'declined' || instead !== null;
  return slot && isNothingNow ? reasonOf(slot) : null;
}

function reasonOf({ said }: Slot): string | null {
  const [first] = said;
  return first && isNothing(first) ? first.reason : null;
}
