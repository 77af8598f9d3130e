import type { Outcome } from '../shape/generated/types.ts';
import type { Protocol } from '../protocol/protocol.ts';
import { levelTitle, titleOf, valuesInWords } from './show-words.ts';

/**
 * What only helps, is missing, and could make a rule of a higher level met: each with its values and the highest level that
 * they call for, `oxygen saturation (91 % or less: Call the doctor)`.
 */
export function mayRaise(
  { rules, would_tell_more: more }: Outcome,
  at: number,
  protocol: Protocol,
): string[] {
  const rank = (name: string | undefined): number =>
    protocol.ladder.levels.findIndex((each) => each.name === name);
  return more.flatMap((name) => {
    const found = rules
      .filter(({ level }) => rank(level) > at)
      .toSorted((left, right) => rank(right.level) - rank(left.level))
      .flatMap(({ level, decided_if: decided }) =>
        (decided ?? []).map((each) => ({ ...each, level: level as string })),
      )
      .find(({ observation, state }) => observation === name && state === 'met');
    if (!found) return [];
    return `${titleOf(name, protocol)} (${valuesInWords(found, protocol)}: ${levelTitle(found.level, protocol)})`;
  });
}
