import type { Input } from '../../logic/inputs.ts';
import { never } from '../../logic/inputs.ts';
import type { Logic } from '../../logic/logic.ts';
import { and, either, not, variable, type Logical } from '../../logic/operators.ts';
import type { LookBack, Observation, Protocol } from '../../protocol/protocol.ts';
import { possibleRange } from '../../vocabulary/possible-range.ts';

/**
 * Logic for a patient of whom there is one set only: look backs are what that set alone makes of them. Those that ask a
 * condition of each set stay open.
 */
export function logicOfSingleSet(logic: Logic, protocol: Protocol): Logic {
  const written = logic.inputs.flatMap((input): { input: Input; is: Logical }[] => {
    const is = input.of === 'look_back' ? ofSingleSet(input, protocol) : null;
    return is === null ? [] : [{ input, is }];
  });
  const gone = new Set(written.map(({ input }) => input));
  return {
    ...logic,
    inputs: logic.inputs.filter((input) => !gone.has(input)),
    steps: [...written.map(({ input, is }) => ({ name: input.name, is })), ...logic.steps],
  };
}

function ofSingleSet({ owner, part }: Input, protocol: Protocol): Logical | null {
  const how = protocol.measures.get(owner)?.how;
  if (!how || !('over' in how)) return null;
  if (how.kind === 'held') return part === 'low' || part === 'high' ? 0 : 1;
  const observation = protocol.observations.get(how.observation ?? '');
  if (how.where || !observation) return null;
  return observation.kind === 'number' || how.kind === 'count' || how.kind === 'minutes_since'
    ? ofObservation(how, part, observation)
    : null;
}

function ofObservation(how: LookBack, part: Input['part'], observation: Observation): Logical {
  const member = memberOf(how, observation);
  if (part === 'open') return false;
  if (part === 'count') return 1;
  if (how.kind === 'count' || how.kind === 'minutes_since') {
    if (part === 'sure' || part === 'maybe') return true;
    // The low end of a count, and the high end of the time since, ask what is sure.
    const counts = (part === 'low') === (how.kind === 'count') ? member.sure : member.maybe;
    return how.kind === 'count' ? either(counts, 1, 0) : either(counts, 0, never);
  }
  const { low, high } = possibleRange(observation);
  if (how.kind === 'change') return part === 'low' ? low - high : part === 'high' ? high - low : false;
  if (part === 'low' || part === 'high') {
    const end = variable(`${observation.name}:${part}`);
    return either(member.maybe, end, part === 'low' ? low : high);
  }
  return part === 'sure' ? member.sure : member.maybe;
}

/** Whether the set itself counts: a need that it lacks may be anything, so that it does. */
function memberOf(
  { presentSet, kind }: LookBack,
  { name, role, kind: of }: Observation,
): { readonly sure: Logical; readonly maybe: Logical } {
  if (presentSet === 'left_out') return { sure: false, maybe: false };
  const there: Logical = role === 'helps' ? not(variable(`${name}:missing`)) : true;
  if (of !== 'yes_no' || (kind !== 'count' && kind !== 'minutes_since')) return { sure: there, maybe: there };
  const [yes, no] = [variable(`${name}:may:yes`), variable(`${name}:may:no`)];
  return { sure: and(there, yes, not(no)), maybe: and(there, yes) };
}
