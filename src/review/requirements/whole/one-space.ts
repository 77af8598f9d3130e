import { Space } from '../../diagrams/space.ts';
import type { Protocol } from '../../../protocol/protocol.ts';
import type { Subject } from '../subject.ts';

/** The sets of a subject, as diagrams ask them. `mayLack`: the observations that a set may have no value of. */
export function oneSpace(
  { parts, observations, contradictions }: Subject,
  mayLack: ReadonlySet<string>,
): Space {
  const asked = parts.map(({ protocol }) => protocol);
  const [first] = asked as [Protocol, ...Protocol[]];
  const known = contradictions.filter(
    ({ lower, higher }) => observations.has(lower) && observations.has(higher),
  );
  const one = asked.length === 1 ? first : { ...first, observations, contradictions: known };
  return new Space(one, asked, (name) => mayLack.has(name));
}
