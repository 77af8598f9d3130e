import type { Names } from '../protocol/names.ts';
import type { Ladder, Observation } from '../protocol/protocol.ts';

/** What a condition of a ward policy can name: observations, and nothing that protocols work out. */
export const namesOfWard = (
  declared: Names['declared'],
  observations: ReadonlyMap<string, Observation>,
  ladder: Ladder | null,
  sources: ReadonlySet<string>,
): Names => ({
  declared,
  observations,
  unreadable: new Set(),
  contradictions: [],
  limits: new Map(),
  measures: new Set(),
  rules: new Set(),
  ruleAt: [],
  basis: null,
  sources,
  ladder,
});
