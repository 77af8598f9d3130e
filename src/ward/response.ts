import type { WardResponse } from '../shape/generated/types.ts';
import type { Level } from '../protocol/protocol.ts';
import { isBetween, minuteOfDay } from './time-of-day.ts';
import type { Plan, Ward } from './ward.ts';

/** A level as it is answered here: with what the plan puts in its place, and only those told who are on duty. */
export function levelHere(ward: Ward, index: number, plan: Plan | null, at: number | null): Level | null {
  const level = ward.ladder.levels[index];
  if (!level) return null;
  const whole = { ...level, ...plan?.levels.get(level.name) };
  return { ...whole, tell: whole.tell.filter((each) => isOnDuty(each, ward, at) !== false) };
}

/** Null where nobody can tell: no time, or no time zone. */
function isOnDuty(
  { from, to }: Level['tell'][number],
  { timeZone }: Ward,
  at: number | null,
): boolean | null {
  if (from === null || to === null) return true;
  if (timeZone === null || at === null) return null;
  return isBetween(minuteOfDay(at, timeZone), from, to);
}

/** What is to be done about a level now, as JSON. */
export function responseToJson({
  name,
  says,
  tell,
  respond,
  reassess,
  ifNoAnswer,
  stepDown,
}: Level): WardResponse {
  return {
    level: name,
    ...(says === null ? {} : { says }),
    tell: tell.map(({ who, from, to }) => ({ who, ...(from === null || to === null ? {} : { from, to }) })),
    ...(respond === null ? {} : { respond }),
    ...(reassess === null ? {} : { reassess }),
    ...(ifNoAnswer === null ? {} : { if_no_answer: ifNoAnswer }),
    ...(stepDown === null
      ? {}
      : {
          step_down: {
            sets_in_a_row: stepDown.setsInARow,
            over: stepDown.over,
            agreed_by: stepDown.agreedBy,
          },
        }),
  };
}
