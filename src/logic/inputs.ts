import type { Protocol } from '../protocol/protocol.ts';

/**
 * One number that enters logic. Names are `observation:part`; a number's parts are `low`, `high`; a choice has `may:<choice>` for each of its
 * choices; a several has `may:<choice>` and `sure:<choice>`. Every observation has `known` and `unobtainable`, those that only help also `missing`.
 * A limit has `value`. A look back has `low`, `high`, `sure`, `maybe`, one with `where` also `open`, and an average also `count`, by which `low` and `high` are to be divided.
 *
 * Numbers are whole steps; flags are 0 or 1.
 */
export interface Input {
  /** `systolic:low`. */
  readonly name: string;
  readonly of: 'observation' | 'limit' | 'look_back';
  /** The observation, limit or measure. */
  readonly owner: string;
  readonly part:
    | 'low'
    | 'high'
    | 'known'
    | 'unobtainable'
    | 'missing'
    | 'may'
    | 'sure'
    | 'maybe'
    | 'open'
    | 'value'
    | 'count';
  /** With `may` and the `sure` of a several. */
  readonly choice: string | null;
}

/** Milliseconds that stand for `never`: above every number that a rule can compare with. */
export const never = 1e12;

/** The inputs of a protocol, in a fixed order: observations, limits, look backs. */
export function inputsOf(protocol: Protocol): readonly Input[] {
  const inputs: Input[] = [];
  const add = (of: Input['of'], owner: string, part: Input['part'], choice: string | null = null): void => {
    inputs.push({ name: `${owner}:${part}${choice === null ? '' : `:${choice}`}`, of, owner, part, choice });
  };
  for (const observation of protocol.observations.values()) {
    const { name } = observation;
    if (observation.kind === 'number') {
      add('observation', name, 'low');
      add('observation', name, 'high');
    } else {
      for (const { choice } of observation.choices) add('observation', name, 'may', choice);
      if (observation.kind === 'several')
        for (const { choice } of observation.choices) add('observation', name, 'sure', choice);
    }
    add('observation', name, 'known');
    add('observation', name, 'unobtainable');
    if (observation.role === 'helps') add('observation', name, 'missing');
  }
  for (const name of protocol.limits.keys()) add('limit', name, 'value');
  for (const { name, how } of protocol.measures.values()) {
    if (!('over' in how)) continue;
    for (const part of ['low', 'high', 'sure', 'maybe'] as const) add('look_back', name, part);
    if (how.where) add('look_back', name, 'open');
    if (how.kind === 'average') add('look_back', name, 'count');
  }
  return inputs;
}
