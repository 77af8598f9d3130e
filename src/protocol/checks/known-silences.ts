import type * as File from '../../shape/generated/types.ts';
import type { Condition, Rule } from '../protocol.ts';
import type { Path } from '../../problems/place.ts';
import { plainWords } from '../words.ts';
import type { Check } from './check.ts';

/** A rule that is silent while something is missing makes the missing look normal: the council must say why it may. */
export const knownSilences: Check = ({ protocol, file }, report) => {
  for (const rule of protocol.rules) {
    for (const { observation, path } of silences(rule)) {
      if (accepted(file, path)) continue;
      report('known_silences', path, { name: plainWords(observation), rule: `The rule "${rule.title}"` });
    }
  }
};

interface Silence {
  readonly observation: string;
  readonly path: Path;
}

function silences(rule: Rule): Silence[] {
  return [...asking(rule.when, true), ...(rule.unless ? asking(rule.unless.when, false) : [])];
}

/** Where a condition asks that something is known, as `known` counts it under `none`. */
function asking(condition: Condition, known: boolean): Silence[] {
  if (condition.kind === 'known') return condition.is === known ? [condition] : [];
  if (condition.kind === 'none') return condition.of.flatMap((each) => asking(each, !known));
  return 'of' in condition ? condition.of.flatMap((each) => asking(each, known)) : [];
}

function accepted(file: File.ProtocolFile, path: Path): boolean {
  let at: unknown = file;
  for (const step of path.slice(0, -1)) at = (at as Record<string | number, unknown> | undefined)?.[step];
  return (at as File.Comparison | undefined)?.accepted !== undefined;
}
