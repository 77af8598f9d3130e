import { isAdvised } from './answered.ts';
import { mustSayPart, type Asking } from './asking.ts';
import { needsKnown } from './needs-known.ts';
import type { Found } from './finding.ts';
import { witness } from './witness.ts';
import { sentences } from './wording.ts';

/** Named parts of the plane in which some set, with everything that is needed, is answered by no rule at all. */
export function* nothingSaid(asking: Asking): Generator<Found> {
  const { rules, mustSay } = asking.compiled.protocol;
  for (const part of mustSay.keys()) {
    const name = `nothing is said in part of ${part}`;
    const head = { kind: 'nothing_said', name, path: ['must_say', part] } as const;
    const found = asking.exists({
      holds: (of) => [
        of.surelyApplies(),
        of.of(of.logic.partitions.find((each) => each.name === mustSayPart(part))?.of[0]?.certain ?? false),
        ...rules.map((rule) => of.not(of.counts(rule))),
      ],
      confirms: (answers) => answers.applies === 'yes' && !rules.some((rule) => isAdvised(rule, answers)),
      allowed: needsKnown,
    });
    if (found.kind === 'open') yield { ...head, is: 'not_settled', because: found.because };
    if (found.kind !== 'set') continue;
    const sentence = sentences.nothing_said(part);
    yield {
      ...head,
      is: 'found',
      sentence,
      witnesses: [witness(found.box, name, asking)],
      needsAnswer: true,
    };
  }
}
