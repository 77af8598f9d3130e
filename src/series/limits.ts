import type { Limit } from '../protocol/protocol.ts';
import type { LimitInForce, Remark, Taken } from './bounds.ts';
import { stepsAsText } from './given-words.ts';
import { inUcum, inWords } from './sentences.ts';
import type { Series, Stated } from './series.ts';
import type { LimitsInForce, Reader } from './reader.ts';
import { hasTime, holds } from './standing.ts';

/** The limit as the protocol has it. */
export const unchanged = ({ value }: Limit): LimitInForce => ({
  steps: value,
  by: null,
  reason: null,
  until: null,
});

/**
 * The limits at a time: as changed for the patient while the change holds, else the protocol's own.
 *
 * A change outside the limit's bounds (both included), or of a limit that nobody may change, is refused, and
 * the protocol's own value is used.
 */
export function limitsAt(
  time: number,
  untimed: boolean,
  changes: Series['limits'],
  { limits, ownLimits }: Reader,
): LimitsInForce {
  const steps = [...ownLimits.steps];
  const facts = new Map(ownLimits.facts);
  const taken: Taken[] = [];
  const refused: Remark[] = [];
  limits.forEach(({ limit }, index) => {
    const stated = changes.get(limit.name);
    if (!stated || !(untimed || holds(stated, time))) return;
    const { value, by, reason, until, given } = stated;
    const because = whyRefused(limit, stated, untimed);
    if (because !== null || typeof value !== 'number') {
      refused.push({ observation: limit.name, given: given.text, because: because ?? 'it is not a number' });
      return;
    }
    steps[index] = value;
    facts.set(limit.name, { steps: value, by, reason, until });
    if (given.moved) taken.push({ observation: limit.name, given: given.text, as: inUcum(value, limit) });
  });
  return { steps, facts, taken, refused };
}

function whyRefused(limit: Limit, stated: Stated, untimed: boolean): string | null {
  const own = `${inWords(limit.value, limit)} is used`;
  if (untimed && hasTime(stated)) {
    return `${limit.title} is changed only for a time, and the set has none; ${own}`;
  }
  if (!limit.between) return `${limit.title} may not be changed for a patient; ${own}`;
  const [low, high] = limit.between;
  const value = Number(stated.value);
  if (value >= low && value <= high) return null;
  const bounds = `${stepsAsText(low, limit)} to ${inWords(high, limit)}`;
  return `${limit.title} ${inWords(value, limit)} is outside ${bounds}, between which it may be changed; ${own}`;
}
