import type { Answers, State } from '../../outcome/answers.ts';
import type { Answered } from './answered.ts';
import { measureWords, sameMeasure } from './measure-words.ts';

/** What a protocol answers and the changed one does not, as a case expects it: keys of `expect` with what they hold. */
export interface Telling {
  readonly applies: string | null;
  readonly level: boolean;
  readonly states: ReadonlyMap<State, readonly string[]>;
  readonly explained: readonly string[];
  readonly notReliable: readonly string[];
  /** Measures with what is expected of them. */
  readonly measures: ReadonlyMap<string, string>;
}

/** Null when a case cannot tell the two apart. Measures are compared only where nothing else tells. */
export function telling(before: Answered, after: Answered): Telling | null {
  const [first, second] = [before.answers, after.answers];
  const states = new Map<State, string[]>();
  const explained: string[] = [];
  const notReliable: string[] = [];
  first.rules.forEach((rule, index) => {
    const other = second.rules[index];
    if (!other) return;
    const { name } = rule.rule;
    if (rule.state !== other.state) states.set(rule.state, [...(states.get(rule.state) ?? []), name]);
    // A case can only expect that a rule is explained, or not reliable; never that it is not.
    if (rule.explained && !other.explained) explained.push(name);
    if (rule.notReliable && !other.notReliable) notReliable.push(name);
  });
  const applies = first.applies === second.applies ? null : first.applies;
  const level = levelDiffers(first.level, second.level);
  const told = applies !== null || level || states.size + explained.length + notReliable.length > 0;
  const measures = told ? new Map<string, string>() : measuresThatDiffer(before, after);
  if (!told && measures.size === 0) return null;
  return { applies, level, states, explained, notReliable, measures };
}

function levelDiffers(first: Answers['level'], second: Answers['level']): boolean {
  if (!first || !second) return false;
  return (
    first.atLeast !== second.atLeast || first.couldBe !== second.couldBe || first.settled !== second.settled
  );
}

function measuresThatDiffer(before: Answered, after: Answered): ReadonlyMap<string, string> {
  const found = new Map<string, string>();
  for (const name of before.compiled.protocol.measures.keys()) {
    if (!after.compiled.protocol.measures.has(name)) continue;
    if (!sameMeasure(name, before, after)) found.set(name, measureWords(name, before));
  }
  return found;
}
