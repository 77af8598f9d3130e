import type { OutcomeInForce } from '../shape/generated/types.ts';
import type { Ladder } from '../protocol/protocol.ts';
import type { InForce } from './in-force.ts';

/** Which level is still in force from earlier sets; nothing when none is. */
export function inForceToJson(found: InForce | null, { levels }: Ladder): { in_force?: OutcomeInForce } {
  if (!found) return {};
  const { level, since, lastAt, setsBelow, setsAsked, time, timeAsked, agreedBy, mayStepDown } = found;
  const minutes = (milliseconds: number): number => Math.floor(milliseconds / 60_000);
  return {
    in_force: {
      level: levels[level]?.name ?? '',
      since,
      last_at: lastAt,
      sets_below: setsBelow,
      ...(setsAsked === null ? {} : { sets_asked: setsAsked }),
      minutes: minutes(time),
      ...(timeAsked === null ? {} : { minutes_asked: minutes(timeAsked) }),
      ...(agreedBy === null ? {} : { agreed_by: agreedBy }),
      may_step_down: mayStepDown,
    },
  };
}
