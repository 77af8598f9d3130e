import { cutPoints } from '../../logic/cut-points.ts';
import { never } from '../../logic/inputs.ts';
import type { LookBack, Observation } from '../../protocol/protocol.ts';
import { possibleRange } from '../../vocabulary/possible-range.ts';
import type { Domain } from './program.ts';
import type { Subject } from './subject.ts';

/** Something that varies from set to set, as a whole number: steps, or the place of a choice with the ordinary one first. */
export interface Variable extends Domain {
  readonly name: string;
  readonly of: 'number' | 'choice' | 'member' | 'look_back' | 'has_value' | 'lack';
  /** The observation, limit or measure that it belongs to. */
  readonly owner: string;
  /** In the order of the values; of `member`, the one choice that may be in. */
  readonly choices: readonly string[];
  /** The value that nobody would remark on; null when there is none. */
  readonly ordinary: number | null;
  /** Where answers can change: the first value of each piece but the first. */
  readonly cuts: readonly number[];
}

/** Everything that varies, each by its name. */
export class Space {
  readonly variables: Variable[] = [];
  readonly #places = new Map<string, number>();

  add(variable: Variable): number {
    const known = this.#places.get(variable.name);
    if (known !== undefined) return known;
    this.#places.set(variable.name, this.variables.length);
    return this.variables.push(variable) - 1;
  }

  /** The place of a variable; null when there is none of that name. */
  find(name: string): number | null {
    return this.#places.get(name) ?? null;
  }

  at(name: string): number {
    const found = this.find(name);
    if (found === null) throw new Error(`nothing that varies is called ${name}`);
    return found;
  }
}

export const lookBackName = (measure: string): string => `look back ${measure}`;
export const hasValueName = (measure: string): string => `has value ${measure}`;
export const lackName = (observation: string): string => `lack of ${observation}`;

/** Every observation that is known, every limit that may be changed, every look back. */
export function spaceOf({ parts, observations }: Subject): Space {
  const space = new Space();
  const cuts = new Map<string, Set<number>>();
  for (const { protocol } of parts)
    for (const [name, all] of cutPoints(protocol))
      for (const each of all) cuts.set(name, (cuts.get(name) ?? new Set<number>()).add(each));
  for (const each of observations.values()) addObservation(each, sorted(cuts.get(each.name)), space);
  for (const { protocol } of parts)
    for (const { name, how } of protocol.measures.values())
      if ('over' in how) addLookBack(name, how, observations, space);
  return space;
}

const sorted = (all: Iterable<number> = []): number[] => [...all].sort((left, right) => left - right);

function addObservation(observation: Observation, cuts: readonly number[], space: Space): void {
  const { name, kind, ordinary } = observation;
  const base = { owner: name, cuts };
  if (kind === 'number') {
    const usual = typeof ordinary === 'number' ? ordinary : null;
    space.add({ ...base, ...possibleRange(observation), name, of: 'number', choices: [], ordinary: usual });
    return;
  }
  const choices = observation.choices.map(({ choice }) => choice);
  const usual = Array.isArray(ordinary) ? (ordinary as readonly string[]) : [];
  if (kind === 'several') {
    for (const choice of choices)
      space.add({
        ...base,
        name: `${name}:${choice}`,
        of: 'member',
        choices: [choice],
        low: 0,
        high: 1,
        ordinary: Number(usual.includes(choice)),
      });
    return;
  }
  const inOrder = [...choices].sort(
    (left, right) => Number(usual.includes(right)) - Number(usual.includes(left)),
  );
  const known = usual.length > 0 ? 0 : null;
  space.add({
    ...base,
    name,
    of: 'choice',
    choices: inOrder,
    low: 0,
    high: choices.length - 1,
    ordinary: known,
  });
}

function addLookBack(
  measure: string,
  how: LookBack,
  observations: ReadonlyMap<string, Observation>,
  space: Space,
): void {
  const base = { owner: measure, choices: [], cuts: [] };
  const range = lookBackRange(how, observations);
  const counts = ['count', 'minutes_since', 'held'].includes(how.kind);
  space.add({ ...base, ...range, name: lookBackName(measure), of: 'look_back', ordinary: counts ? 0 : null });
  if (!counts)
    space.add({ ...base, low: 0, high: 1, name: hasValueName(measure), of: 'has_value', ordinary: null });
}

function lookBackRange(how: LookBack, observations: ReadonlyMap<string, Observation>): Domain {
  if (how.kind === 'count') return { low: 0, high: 100_000 };
  if (how.kind === 'minutes_since') return { low: 0, high: never };
  if (how.kind === 'held') return { low: 0, high: how.over };
  const observation = observations.get(how.observation ?? '');
  const { low, high } = observation ? possibleRange(observation) : { low: 0, high: 0 };
  return how.kind === 'change' ? { low: low - high, high: high - low } : { low, high };
}
