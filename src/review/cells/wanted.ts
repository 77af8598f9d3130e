import type { Logical } from '../../logic/operators.ts';
import type { Compiled } from '../../outcome/compile.ts';

/** The answers of logic that tell a level and the state of each rule: what explanations alone read is left out. */
export function wantedOf({ logic: { applies, levels, rules } }: Compiled): Logical[] {
  return [
    applies.certain,
    applies.possible,
    levels.raised,
    levels.could,
    levels.floor,
    ...rules.flatMap(({ certain, possible }) => [certain, possible]),
  ];
}
