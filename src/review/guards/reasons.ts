import type { Document } from '../../document/document.ts';
import { findingToProblem } from '../../document/finding-to-problem.ts';
import type { Problem } from '../../problems/problem.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import { nearMiss } from '../../vocabulary/near-miss.ts';
import { changesOf } from '../changes/changes-of.ts';
import { reasonsUnder, type Accepted } from '../reasons-under.ts';
import type { Guard } from './guards-of.ts';

/** The reasons that a case file gives for changes that nothing notices, by the name of the change. */
export const reasonsIn = (cases: Document): ReadonlyMap<string, Accepted> =>
  reasonsUnder(cases, 'unguarded', 'change');

/** A reason for a change that there is not is a problem: the protocol has moved on, and the reason may no longer hold. */
export function unknownReasons(cases: Document, document: Document, protocol: Protocol): Problem[] {
  const reasons = reasonsIn(cases);
  if (reasons.size === 0) return [];
  const names = changesOf(document, protocol).map(({ name }) => ({ name }));
  const known = new Set(names.map(({ name }) => name));
  return [...reasons].flatMap(([change, { at }]) =>
    known.has(change)
      ? []
      : [
          findingToProblem(cases, {
            code: 'unknown_change',
            facts: { change },
            path: ['unguarded', at, 'change'],
            part: 'value',
            nearMiss: nearMiss(change, names),
          }),
        ],
  );
}

/** A reason for a change that is noticed after all is to be looked at: it says something that no longer holds. */
export function needlessReasons(cases: Document, guards: readonly Guard[]): Problem[] {
  const reasons = reasonsIn(cases);
  return guards.flatMap((guard) => {
    const reason = reasons.get(guard.change.name);
    if (!reason || guard.kind === 'unguarded') return [];
    const because =
      guard.kind === 'noticed'
        ? `the case "${guard.by}" notices it`
        : guard.kind === 'refused'
          ? 'the check refuses it'
          : 'it changes nothing';
    return [
      findingToProblem(cases, {
        code: 'answer_not_needed',
        facts: { change: guard.change.name, because },
        path: ['unguarded', reason.at],
        part: 'value',
        nearMiss: null,
      }),
    ];
  });
}
