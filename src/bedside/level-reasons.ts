import type { Protocol } from '../protocol/protocol.ts';
import { listed } from '../protocol/words.ts';
import type { Outcome } from '../shape/generated/types.ts';
import { isInDoubt } from './sheet-faults.ts';
import { roughlyKnown } from './sheet-gaps.ts';
import type { SheetLevel } from './sheet.ts';
import { titlesOf } from './words.ts';

export const unsure = (applies: Outcome['applies']): string[] =>
  applies === 'unsure' ? ['Whether this protocol is for this patient is not known yet.'] : [];

/** Why an outcome that calls for something is not settled. */
export function reasonsFor(outcome: Outcome, isHigher: boolean, protocol: Protocol): string[] {
  const { applies, level, rules, stands_in: earlier } = outcome;
  const top = rules.filter((rule) => rule.level === level?.at_least);
  const reasons = [
    [isHigher, 'What is missing, or known only as a range, may take it higher.'],
    [
      top.some(({ counts }) => counts === true),
      'An exception that nobody has answered may later lower it. Tell first, then ask.',
    ],
    [
      top.some((rule) => rule.could_be_explained_by !== undefined),
      'An explanation that nobody has answered may later lower it. Tell first, then ask.',
    ],
    [isInDoubt(outcome), 'A fault of technique makes a reading unsure. Act on this now, and take it again.'],
    [earlier.length > 0, `Old values stand in, of ${listed(namesOf(earlier, protocol))}.`],
  ] as const;
  return [...unsure(applies), ...reasons.flatMap(([holds, says]) => (holds ? [says] : []))];
}

const namesOf = (values: Outcome['stands_in'], protocol: Protocol): string[] =>
  titlesOf(
    values.map(({ observation }) => observation),
    protocol,
  );

/** How far a settled answer reaches: what it needs is there; what only helps may still take it higher. */
export function settledBy(outcome: Outcome, mayRise: boolean): string {
  if (isInDoubt(outcome)) return 'The level is settled; what was measured is not: take it again.';
  if (mayRise) return 'Settled only on what this reading needs.';
  if (outcome.missing.length === 0) return 'Settled: everything that this reading needs is there.';
  return 'Settled: nothing that this reading still needs could change it.';
}

/** What to take and to ask, in short; what it could change stands further down. */
export function toGet(outcome: Outcome, protocol: Protocol): SheetLevel['toGet'] {
  const { ask_first: ask, take_first: take, unobtainable, declined, missing, stands_in: old } = outcome;
  const needed = (all: Outcome['declined']): string[] =>
    all.map(({ observation }) => observation).filter((name) => missing.includes(name));
  const again = new Set([...roughlyKnown(outcome), ...old.map(({ observation }) => observation)]);
  const labels = [
    ['Take first', take],
    ['Ask first', ask],
    ['Try again', needed(unobtainable)],
    ['Ask again', needed(declined)],
    ['Take again', [...again].filter((name) => !take.includes(name))],
  ] as const;
  return labels.flatMap(([label, names]) =>
    names.length > 0 ? [{ label, names: listed(titlesOf(names, protocol)) }] : [],
  );
}
