import type { Path } from '../../problems/place.ts';
import { nearMiss } from '../../vocabulary/near-miss.ts';
import type { Reading } from '../reading.ts';

/** Whether it is an observation that is read here. */
export function isObservation(name: string, path: Path, { names, report }: Reading): boolean {
  if (names.observations.has(name)) return true;
  if (names.unreadable.has(name)) return false;
  if (names.declared.has(name)) report('requirement_reads_unread', path, { name });
  else
    report(
      'unknown_observation',
      path,
      { name },
      { nearMiss: () => nearMiss(name, [...names.observations.values()]) },
    );
  return false;
}
