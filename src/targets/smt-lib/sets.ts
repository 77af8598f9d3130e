import type { Protocol } from '../../protocol/protocol.ts';

/**
 * Which sets a question is about, as plain data.
 *
 * A box of the review (`src/review/box.ts`) fits as it is: its `ranges`, `choices` and `absent` mean the same here.
 */
export interface AskedSets {
  /**
   * What is there of each observation that `absent` does not name.
   *
   * `complete`: one value. `partial`: one value, or none (not taken, or tried and not obtained). `any`: also a number that is known
   * only as a range, and an earlier value that stands in; whatever `any` cannot exclude, no real set does.
   */
  readonly given: 'complete' | 'partial' | 'any';
  /** The limits of the protocol: as they are written, or anywhere inside what may be changed for a patient. */
  readonly limits: 'as_written' | 'within_bounds';
  /** Steps inside which a number lies where it is given, both ends included. All that is possible for a name that is not here. */
  readonly ranges?: ReadonlyMap<string, readonly [number, number]>;
  /**
   * The choices that a choice may be where it is given; of a several, under `name:choice`, whether that choice may be in: `no`, `yes`
   * or both. All of them for a name that is not here.
   */
  readonly choices?: ReadonlyMap<string, readonly string[]>;
  /** Observations that no set gives, and how: missing, tried and not obtained, or what counts as long as nobody states it. */
  readonly absent?: ReadonlyMap<string, 'missing' | 'unobtainable' | 'assumed'>;
}

/** Everything known to one value, and every limit as it is written. */
export const completeSets: AskedSets = { given: 'complete', limits: 'as_written' };

/** Throws where a name is none that the protocol reads: what narrows nothing would be taken for a proof of less. */
export function checkNames({ ranges, choices, absent }: AskedSets, { observations }: Protocol): void {
  const numbers = [...observations.values()].filter(({ kind }) => kind === 'number');
  const others = [...observations.values()].flatMap(({ name, kind, choices: all }) =>
    kind === 'number' ? [] : kind === 'several' ? all.map(({ choice }) => `${name}:${choice}`) : [name],
  );
  const checks: readonly (readonly [Iterable<string>, ReadonlySet<string>])[] = [
    [ranges?.keys() ?? [], new Set(numbers.map(({ name }) => name))],
    [choices?.keys() ?? [], new Set(others)],
    [absent?.keys() ?? [], new Set(observations.keys())],
  ];
  for (const [names, known] of checks)
    for (const name of names) if (!known.has(name)) throw new Error(`the protocol does not read ${name}`);
}
