import type { Remark } from './field-row.tsx';
import type { Reading } from './use-reading.ts';

/** What is to be said under each field, from the latest reading. */
export function remarksFrom(reading: Reading): (name: string) => readonly Remark[] {
  if (reading.state !== 'read') return () => [];
  const { refused, questioned } = reading.reading.sheet;
  return (name) => [
    ...refused
      .filter((each) => each.observation === name)
      .map(({ says }): Remark => ({ kind: 'refused', says: says })),
    ...questioned
      .filter((each) => each.observation === name)
      .map(({ says }): Remark => ({ kind: 'questioned', says: says })),
  ];
}
