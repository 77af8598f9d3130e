import type { Asking } from './asking.ts';
import { isMet } from './answered.ts';
import type { Found } from './finding.ts';
import { sentences } from './wording.ts';

/** Rules that are met for no set of a patient whom the protocol is, or may be, for. */
export function* neverMet(asking: Asking): Generator<Found> {
  for (const rule of asking.compiled.protocol.rules) {
    const is = asking.happens({
      holds: (of) => [of.mayApply(), of.met(rule)],
      confirms: (answers) => isMet(rule, answers),
    });
    if (is === 'yes') continue;
    const head = { kind: 'rule_never_met', name: `rule ${rule.name} is never met`, path: rule.path } as const;
    if (is !== 'no') yield { ...head, is: 'not_settled', because: is };
    else
      yield {
        ...head,
        is: 'found',
        sentence: sentences.rule_never_met(rule),
        witnesses: [],
        needsAnswer: true,
      };
  }
}
