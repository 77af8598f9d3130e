import type { Rule } from '../../protocol/protocol.ts';
import { isAdvised } from './answered.ts';
import type { Asking } from './asking.ts';
import type { Found } from './finding.ts';
import { witness } from './witness.ts';
import { sentences } from './wording.ts';

/** Two rules of which the one advises an action that excludes an action of the other. */
interface Excluding {
  readonly first: string;
  readonly second: string;
  readonly rules: readonly [Rule, Rule];
}

/** Advice that excludes other advice that is given at once: what no author can accept, and what the check refuses where it is sure of it. */
export function* excluded(asking: Asking): Generator<Found> {
  for (const { first, second, rules } of pairsOf(asking.compiled.protocol.rules)) {
    const names = [...new Set(rules.map(({ name }) => name))].join(' and ');
    const name = `${first} excludes ${second}: both advised by ${names}`;
    const head = { kind: 'advice_excluded', name, path: rules[0].path } as const;
    const found = asking.exists({
      holds: (of) => [of.mayApply(), ...rules.map(of.counts)],
      confirms: (answers) => rules.every((rule) => isAdvised(rule, answers)),
    });
    if (found.kind === 'open') yield { ...head, is: 'not_settled', because: found.because };
    if (found.kind !== 'set') continue;
    const sentence = sentences.advice_excluded(first, second, rules);
    yield {
      ...head,
      is: 'found',
      sentence,
      witnesses: [witness(found.box, name, asking)],
      needsAnswer: true,
    };
  }
}

function pairsOf(rules: readonly Rule[]): Excluding[] {
  return rules.flatMap((rule) =>
    rule.do.flatMap(({ id, excludes }) =>
      excludes.flatMap((second) =>
        rules
          .filter((other) => other.do.some((each) => each.id === second))
          .map((other): Excluding => ({ first: id, second, rules: [rule, other] })),
      ),
    ),
  );
}
