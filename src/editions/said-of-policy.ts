import { timeInWords } from '../outcome/time-in-words.ts';
import type { InForceEntry, WardOutcome, WardPolicyInForce } from '../shape/generated/types.ts';

/** What must be said of a policy that is in force, beside what it answers. */
export function saidOfPolicy(
  { from, by }: InForceEntry,
  reviewBy: string | null,
  today: string,
  warning: string | null,
): WardPolicyInForce {
  return {
    in_force_from: from,
    by,
    ...(reviewBy !== null && reviewBy < today ? { review_overdue: reviewBy } : {}),
    ...(warning === null ? {} : { warning }),
  };
}

/** The outcome of a policy that is in force: with what must be said of it before everything else. */
export function withPolicy(outcome: WardOutcome, policy: WardPolicyInForce): WardOutcome {
  const { ward, edition, title, digest, ...rest } = outcome;
  return { ward, edition, title, digest, policy, ...rest };
}

/** Since when an edition is in force: `Edition 1 is in force since 2026-03-03 08:00 UTC.` */
export const inForceSince = (edition: number, { in_force_from: from }: WardPolicyInForce): string =>
  `Edition ${edition} is in force since ${timeInWords(from)}.`;

/** What stands above every answer, in sentences; none when all is well. */
export function banners({ review_overdue: due, warning }: WardPolicyInForce): readonly string[] {
  return [
    ...(warning === undefined ? [] : [warning]),
    ...(due === undefined
      ? []
      : [
          `The review of this policy was due by ${due} and is overdue. The policy still holds until the council says otherwise.`,
        ]),
  ];
}
