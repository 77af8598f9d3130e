import type { Condition, Protocol, Rule } from '../../protocol/protocol.ts';
import { operandsOfCondition, operandsOfMeasure, rulesNamed } from '../../protocol/walk.ts';

/** What some rules rest on, each in the order of the file. */
export interface Behind {
  /** Rules that call for no level and are named by those that do, directly or through others. */
  readonly rules: readonly Rule[];
  /** Names of measures. */
  readonly measures: readonly string[];
}

/** All that one must know beside the rules with a level to work them out by hand. */
export function behindLevels({ rules, measures }: Protocol): Behind {
  const byName = new Map(rules.map((rule) => [rule.name, rule]));
  const reached = new Set<Rule>();
  const open = rules.filter(({ level }) => level !== null);
  for (let next = open.pop(); next; next = open.pop()) {
    if (reached.has(next)) continue;
    reached.add(next);
    for (const name of conditionsIn(next).flatMap(rulesNamed)) {
      const named = byName.get(name);
      if (named) open.push(named);
    }
  }
  const read = new Set<string>();
  const toRead = [...reached].flatMap(conditionsIn).flatMap(operandsOfCondition);
  for (let next = toRead.pop(); next; next = toRead.pop()) {
    const measure = next.kind === 'measure' ? measures.get(next.name) : undefined;
    if (!measure || read.has(measure.name)) continue;
    read.add(measure.name);
    toRead.push(...operandsOfMeasure(measure.how));
  }
  return {
    rules: rules.filter((rule) => rule.level === null && reached.has(rule)),
    measures: [...measures.keys()].filter((name) => read.has(name)),
  };
}

const conditionsIn = ({ when, unless, explainedBy }: Rule): Condition[] =>
  [when, unless?.when, explainedBy?.when].filter((each) => each !== undefined);
