import type * as File from '../../shape/generated/types.ts';
import type { Path } from '../../problems/place.ts';
import type { Protocol } from '../protocol.ts';
import type { WholeFile } from './whole-file.ts';

/** A name of a protocol that is already one of its parent's. */
export interface Clash {
  readonly name: string;
  /** What it is in the parent: `rule`. */
  readonly as: string;
  readonly path: Path;
  readonly part: 'key' | 'value';
  /** The part that would have to have another name, or go. */
  readonly owner: Path;
}

/**
 * The names that would mean two things, in the order of the file. The name of a rule that was withdrawn is not free for another one:
 * two editions would mean different rules by it.
 */
export function clashes(file: File.ProtocolFile, parent: Protocol, parentFile: WholeFile): Clash[] {
  const names = namesOf(parent, parentFile);
  const sources = new Map([...parent.sources.keys()].map((name) => [name, 'source']));
  const partitions = new Map([...parent.partitions.keys()].map((name) => [name, 'partition']));
  const parts = new Map(
    [...parent.mustSay.keys()].map((name) => [name, 'part of which something must be said']),
  );
  const read = new Map([...parent.observations.keys()].map((name) => [name, 'observation']));
  const { needs = [], helps = [], declares = {} } = file.observations ?? {};
  return [
    ...ofKeys(file.sources, ['sources'], sources),
    ...ofItems(needs, ['observations', 'needs'], read),
    ...ofItems(helps, ['observations', 'helps'], read),
    ...ofKeys(declares, ['observations', 'declares'], names),
    ...ofKeys(file.standing, ['standing'], read),
    ...ofKeys(file.limits, ['limits'], names),
    ...ofKeys(file.measures, ['measures'], names),
    ...ofItems(
      (file.faults ?? []).map(({ fault }) => fault),
      ['faults'],
      names,
    ).map((clash) => ({ ...clash, path: [...clash.path, 'fault'] })),
    ...ofItems(
      (file.rules ?? []).map(({ rule }) => rule),
      ['rules'],
      names,
    ).map((clash) => ({ ...clash, path: [...clash.path, 'rule'] })),
    ...ofKeys(file.exactly_one_of, ['exactly_one_of'], partitions),
    ...ofKeys(file.must_say, ['must_say'], parts),
  ];
}

/** What conditions and formulas of the parent can name, but for the dictionary, and what it names no more. */
function namesOf(parent: Protocol, file: WholeFile): Map<string, string> {
  const gone = parent.basedOn.flatMap(({ withdrawn }) => withdrawn.map(({ name }) => name));
  const kinds = [
    ['observation', Object.keys(file.observations.declares ?? {})],
    ['limit', [...parent.limits.keys()]],
    ['measure', [...parent.measures.keys()]],
    ['fault', parent.faults.map(({ name }) => name)],
    ['rule', [...parent.rules.map(({ name }) => name), ...gone]],
  ] as const;
  return new Map(kinds.flatMap(([kind, names]) => names.map((name) => [name, kind] as const)));
}

function ofKeys(map: object | undefined, path: Path, names: ReadonlyMap<string, string>): Clash[] {
  return Object.keys(map ?? {}).flatMap((name): Clash[] => {
    const as = names.get(name);
    const at = [...path, name];
    return as === undefined ? [] : [{ name, as, path: at, part: 'key', owner: at }];
  });
}

function ofItems(list: readonly string[], path: Path, names: ReadonlyMap<string, string>): Clash[] {
  return list.flatMap((name, index): Clash[] => {
    const as = names.get(name);
    const at = [...path, index];
    return as === undefined ? [] : [{ name, as, path: at, part: 'value', owner: at }];
  });
}
