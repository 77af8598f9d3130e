import type { Outcome, SealedReading, WardOutcome } from '../shape/generated/types.ts';
import { asJson } from './canonical.ts';

/** What an outcome decides about what a nurse does; its sentences are left out, so that a kit may word them better. */
export function answersOfOutcome(outcome: Outcome): SealedReading {
  const rules = (test: (rule: Outcome['rules'][number]) => boolean): string[] =>
    outcome.rules.filter(test).map(({ rule }) => rule);
  return asJson({
    applies: outcome.applies,
    level: outcome.level,
    ...lists({
      met: rules(({ state }) => state === 'met'),
      undecided: rules(({ state }) => state === 'undecided'),
      counts: rules(({ counts }) => counts === true),
      explained: rules(({ explained_by: by }) => by !== undefined),
      not_reliable: rules(({ not_reliable: because }) => because !== undefined),
      ask_first: outcome.ask_first,
      take_first: outcome.take_first,
      missing: outcome.missing,
      ...remarks(outcome),
    }),
    ...(Object.keys(outcome.measures).length > 0 ? { measures: outcome.measures } : {}),
    ...inForce(outcome),
  });
}

/** The same of a ward policy, with what each of its protocols answers. */
export function answersOfWard(outcome: WardOutcome): SealedReading {
  return asJson({
    level: outcome.level,
    ...(outcome.plan ? { plan: outcome.plan.plan } : {}),
    ...lists({
      tell: outcome.response?.tell.map(({ who }) => who) ?? [],
      ask_first: outcome.ask_first,
      take_first: outcome.take_first,
      missing: outcome.missing,
      ...remarks(outcome),
    }),
    ...inForce(outcome),
    reads: Object.fromEntries(outcome.reads.map((each) => [each.protocol, answersOfOutcome(each)])),
  });
}

const remarks = ({
  refused,
  questioned,
  faults = [],
}: Pick<Outcome, 'refused' | 'questioned'> & {
  readonly faults?: readonly { readonly fault: string }[] | undefined;
}): Record<string, readonly string[]> => ({
  refused: refused.map(({ observation }) => observation),
  questioned: questioned.map(({ observation }) => observation),
  faults: faults.map(({ fault }) => fault),
});

const inForce = ({ in_force: held }: Pick<Outcome, 'in_force'>): object =>
  held === undefined ? {} : { in_force: held.level, may_step_down: held.may_step_down };

const lists = (all: Readonly<Record<string, readonly string[]>>): object =>
  Object.fromEntries(Object.entries(all).filter(([, each]) => each.length > 0));
