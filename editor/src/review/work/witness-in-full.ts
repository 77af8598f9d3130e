import { protocolReader, wardReader, type Compared, type Reader } from '../../../../src/index.ts';
import type { SideSays, WitnessHere } from '../witness/witness-here.ts';
import type { ShownSet } from './comparison-to-page.ts';

type Reading = ReturnType<Reader['read']>[number];

/** A set that shows a change, put to both sides as any set is: from its text on. Null when a side cannot be asked it. */
export function witnessInFull(
  { witness }: ShownSet,
  [before, after]: readonly [Compared, Compared],
): WitnessHere | null {
  const [was, is] = [readingOf(before, witness.set), readingOf(after, witness.set)];
  if (!was || !is) return null;
  return {
    confirmed: witness.confirmed,
    inWords: witness.in_words,
    observed: observedIn(is, was),
    before: saysOf(was),
    after: saysOf(is),
  };
}

function readingOf(reads: Compared, set: ShownSet['witness']['set']): Reading | null {
  const own = Object.fromEntries(Object.entries(set).filter(([name]) => isRead(reads, name)));
  const reader = 'members' in reads ? wardReader(reads) : protocolReader(reads);
  const { series } = reader.series('the example', JSON.stringify(own));
  return (series && reader.read(series)[0]) ?? null;
}

/** What only the other side reads would be told as a thing that is not known. */
const isRead = (reads: Compared, name: string): boolean =>
  ('members' in reads ? reads.members : [reads]).some(({ protocol }) => protocol.observations.has(name));

/** What either side reads, once. */
function observedIn(...readings: readonly Reading[]): WitnessHere['observed'] {
  const all = readings.flatMap(({ sheet }) => sheet.observed.filter(({ hasValue }) => hasValue));
  const found = new Map(all.map(({ observation, title, words }) => [observation, { title, words }]));
  return [...found.values()];
}

function saysOf({ sheet: { level, why } }: Reading): SideSays {
  return {
    level: level.heading,
    couldBe: level.couldBe,
    tell: level.tell,
    byWhen: level.byWhen,
    why: why.map(({ title, decidedBy }) => ({ title, decidedBy })),
  };
}
