import type { Verdict } from './compare.ts';
import { edgesOf } from './edges.ts';
import type { Example } from './generators.ts';
import type { Subject } from './observations.ts';
import { earlierStandsIn } from './kit.ts';
import { ladderText, type Plain } from './protocols.ts';
import { allUses, setForms, usesOf } from './uses.ts';

/** Everything that must have been there at least once: of protocols, and of sets. */
const wanted = { protocol: allUses, set: setForms };

/** What a run has seen so far. */
export interface Shares {
  readonly seen: { readonly protocol: Map<string, number>; readonly set: Map<string, number> };
  readonly states: Map<string, number>;
  sets: number;
  incomplete: number;
  earlier: number;
  numbers: number;
  nearAnEdge: number;
}

export const noShares = (): Shares => ({
  seen: { protocol: new Map(), set: new Map() },
  states: new Map(),
  sets: 0,
  incomplete: 0,
  earlier: 0,
  numbers: 0,
  nearAnEdge: 0,
});

const add = (counts: Map<string, number>, name: string, by = 1): void => {
  counts.set(name, (counts.get(name) ?? 0) + by);
};

const formsOf = (set: Plain): readonly string[] => JSON.stringify(set).match(/[a-z]\w*(?=":)/g) ?? [];

/** Every number that a set gives for one observation: the value, and the ends of a range. */
function numbersOf(what: unknown): readonly number[] {
  if (typeof what === 'number') return [what];
  if (typeof what !== 'object' || what === null || Array.isArray(what)) return [];
  return Object.values(what).filter((each): each is number => typeof each === 'number');
}

function countNumbers(shares: Shares, subject: Subject, set: Plain, edges: readonly number[]): void {
  for (const number of numbersOf(set[subject.name])) {
    shares.numbers += 1;
    if (edges.some((edge) => Math.abs(edge - number) * subject.perUnit < 1 + 1e-9)) shares.nearAnEdge += 1;
  }
}

/** Counts a protocol, once. */
export function countProtocol(shares: Shares, { made }: Pick<Example, 'made'>): void {
  for (const word of usesOf(made.protocol)) add(shares.seen.protocol, word);
}

/** Counts a set and what the judge says of it. */
export function countSet(
  shares: Shares,
  { made }: Pick<Example, 'made'>,
  set: Plain,
  verdict: Verdict,
): void {
  shares.sets += 1;
  if (verdict.completions > 1) shares.incomplete += 1;
  if (earlierStandsIn(made.text, ladderText, JSON.stringify(set))) shares.earlier += 1;
  for (const { state } of Object.values(verdict.rules)) add(shares.states, state);
  for (const word of new Set(formsOf(set))) add(shares.seen.set, word);
  const edges = edgesOf(made.protocol);
  const sets = 'sets' in set ? (set.sets as Plain[]) : [set];
  for (const subject of made.subjects.filter(({ kind }) => kind === 'number')) {
    for (const each of sets) countNumbers(shares, subject, each, edges.get(subject.name) ?? []);
  }
}

const total = (counts: Map<string, number>): number =>
  [...counts.values()].reduce((sum, count) => sum + count, 0);

/** The shares as numbers from 0 to 1, by name, and the least that each must be. */
function measured(shares: Shares): readonly (readonly [name: string, share: number, least: number])[] {
  const states = ['met', 'not_met', 'undecided'] as const;
  return [
    ...states.map(
      (state) =>
        [`rules that are ${state}`, (shares.states.get(state) ?? 0) / total(shares.states), 0.1] as const,
    ),
    ['given numbers within a step of an edge', shares.nearAnEdge / shares.numbers, 0.3],
    ['incomplete sets', shares.incomplete / shares.sets, 0.2],
    ['sets in which an earlier value stands in', shares.earlier / shares.sets, 0.02],
  ];
}

/** What a run has too little of; nothing, when it is as it should be. */
export function shortfalls(shares: Shares): readonly string[] {
  const low = measured(shares).filter(([, share, least]) => !(share >= least));
  const never = (['protocol', 'set'] as const).flatMap((where) =>
    wanted[where].filter((word) => !shares.seen[where].has(word)).map((word) => `no ${where} has ${word}`),
  );
  return [
    ...low.map(([name, share, least]) => `${name}: ${percent(share)}, not ${percent(least)}`),
    ...never,
  ];
}

const percent = (share: number): string => `${(100 * share).toFixed(1)} %`;

/** A few lines for a person. */
export function shown(shares: Shares): string {
  const lines = measured(shares).map(
    ([name, share, least]) => `  ${percent(share).padStart(7)}  ${name} (at least ${percent(least)})`,
  );
  const used = wanted.protocol.map((word) => `${word} ${shares.seen.protocol.get(word) ?? 0}`);
  return [`${shares.sets} sets`, ...lines, `  protocols that use: ${used.join(', ')}`, ''].join('\n');
}
