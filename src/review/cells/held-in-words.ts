import { over } from '../../outcome/exact.ts';
import type { Compiled } from '../../outcome/compile.ts';
import { alone, formatOf } from '../../outcome/shown-number.ts';
import type { Limit, Observation } from '../../protocol/protocol.ts';
import { listed } from '../../protocol/words.ts';
import type { Bounds, Present } from '../../series/bounds.ts';

/** Everything that is no axis, as it is held: `heart rate: 80 /min`; then the limits that were changed. */
export function heldInWords({ protocol }: Compiled, { facts }: Bounds, axes: readonly string[]): string[] {
  const observations = [...protocol.observations.values()].filter(({ name }) => !axes.includes(name));
  const limits = [...protocol.limits.values()].flatMap((limit) => {
    const steps = facts.limits.get(limit.name)?.steps ?? limit.value;
    return steps === limit.value ? [] : [`${limit.title}: ${inWords(steps, limit)}`];
  });
  return [
    ...observations.map((each) => `${each.title}: ${presentInWords(each, facts.present.get(each.name))}`),
    ...limits,
  ];
}

const nothing: Readonly<Partial<Record<Present['state'], string>>> = {
  missing: 'not taken',
  unobtainable: 'could not be obtained',
  declined: 'declined',
  refused: 'refused',
};

function presentInWords(observation: Observation, present: Present | undefined): string {
  const none = nothing[present?.state ?? 'missing'];
  if (!present || none !== undefined) return none ?? 'not taken';
  const assumed = present.state === 'assumed' ? ' (assumed)' : '';
  if (present.range) {
    const [low, high] = present.range.map((steps) => inWords(steps, observation)) as [string, string];
    return (low === high ? low : `${low} to ${high}`) + assumed;
  }
  const chosen = observation.choices.filter(({ choice }) => present.choices?.includes(choice));
  return (listed(chosen.map(({ title }) => title)) || 'none') + assumed;
}

function inWords(steps: number, { unit, stepsPerUnit }: Pick<Limit, 'unit' | 'stepsPerUnit'>): string {
  const format = formatOf(unit);
  return format.withUnit(alone(over(steps * Number(stepsPerUnit.d), stepsPerUnit.n), format));
}
