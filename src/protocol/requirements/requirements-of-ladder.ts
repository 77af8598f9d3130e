import type { Report } from '../../problems/problem.ts';
import { vitalSigns } from '../../vocabulary/vital-signs.ts';
import type { Names } from '../names.ts';
import type { Fault, Ladder, Observation } from '../protocol.ts';
import { observationsOfCondition } from '../walk.ts';
import { readRequirements, type Requirements } from './read-requirements.ts';
import type { Requirement } from './requirement.ts';

/**
 * What a ladder states that must always hold, read with the names of the dictionary: it can name every observation there, and nothing that one
 * protocol alone declares.
 */
export function readStates(ladder: Ladder, report: Report): Requirements {
  if (!ladder.states) return { hazards: new Map(), requirements: [] };
  return readRequirements(ladder.states, { names: namesOfLadder(ladder), report });
}

function namesOfLadder(ladder: Ladder): Names {
  const { observations, contradictions } = vitalSigns;
  const asNeeds = [...observations].map(([name, each]): [string, Observation] => [
    name,
    { ...each, role: 'needs' },
  ]);
  return {
    declared: observations,
    observations: new Map(asNeeds),
    unreadable: new Set(),
    contradictions,
    limits: new Map(),
    measures: new Set(),
    rules: new Set(),
    ruleAt: [],
    basis: null,
    sources: new Set(),
    ladder,
  };
}

const read = new WeakMap<Ladder, Requirements>();

/**
 * What the ladder states of something that stands on it: each requirement that names nothing that is not read there. One about faults of technique
 * is not asked where there are none. Hazards of a ladder have its name before theirs, because a file may have its own of that name.
 */
export function requirementsOfLadder(
  ladder: Ladder,
  observations: ReadonlyMap<string, Observation>,
  faults: readonly Fault[],
): Requirements {
  const states = read.get(ladder) ?? readStates(ladder, () => undefined);
  read.set(ladder, states);
  const named = (name: string): string => `${ladder.name} ${name}`;
  const requirements = states.requirements
    .filter((each) => isAskedOf(each, observations, faults))
    .map((each) => ({ ...each, from: ladder.name, controls: each.controls.map(named) }));
  const controlled = new Set(requirements.flatMap(({ controls }) => controls));
  const hazards = [...states.hazards.values()]
    .map((each) => ({ ...each, name: named(each.name) }))
    .filter(({ name }) => controlled.has(name));
  return { hazards: new Map(hazards.map((each) => [each.name, each])), requirements };
}

function isAskedOf(
  { where, asks }: Requirement,
  observations: ReadonlyMap<string, Observation>,
  faults: readonly Fault[],
): boolean {
  if (asks.kind === 'fault_never_lowers' && faults.length === 0) return false;
  const named = [
    ...observationsOfCondition(where),
    ...(asks.kind === 'getting_worse_never_lowers' ? [asks.observation] : []),
    ...(asks.kind === 'nothing_hides' ? [...(asks.blank ?? []), ...asks.except] : []),
  ];
  return named.every((name) => observations.has(name));
}

/** A file's own requirements, and those of its ladder after them. */
export function withThoseOfLadder(own: Requirements, ofLadder: Requirements): Requirements {
  return {
    hazards: new Map([...own.hazards, ...ofLadder.hazards]),
    requirements: [...own.requirements, ...ofLadder.requirements],
  };
}
