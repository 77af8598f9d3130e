import type { Condition, Protocol, Rule } from '../protocol/protocol.ts';
import { operandsOfCondition, operandsOfMeasure } from '../protocol/walk.ts';
import type { Context, Rails } from './context.ts';
import { stepName, type RuleLogic } from './logic.ts';
import { and, not, or, type Logical } from './operators.ts';

/** Whether a condition reads a measure that is surely blind. */
export type Blindness = (condition: Condition) => Logical;

/** A rule in each of its logics, and as others read it. */
export function ruleLogic(rule: Rule, context: Context, blind: Blindness): RuleLogic & Rails {
  const { writer } = context;
  const name = `rule/${rule.name}`;
  const when = context.rails(rule.when);
  const unless = rule.unless ? context.rails(rule.unless.when) : null;
  const explained = rule.explainedBy ? context.rails(rule.explainedBy.when) : null;
  const own = rule.notReliableWhen ? context.rails(rule.notReliableWhen).certain : false;
  const takenBack = unless?.certain ?? false;
  const mayBeTakenBack = unless?.possible ?? false;
  const define = (key: string, is: Logical): Logical => writer.define(`${name}:${key}`, is);
  const possible = define('possible', and(when.possible, not(takenBack)));
  return {
    rule: rule.name,
    certain: define('certain', and(when.certain, not(mayBeTakenBack))),
    possible,
    counts: define('counts', and(when.counts, not(takenBack))),
    could: define('could', and(when.could, not(takenBack))),
    // The opposite could hold when the condition's opposite could, or when the exception may.
    couldNot: define('could_not', or(when.couldNot, mayBeTakenBack)),
    explained: { certain: explained?.certain ?? false, possible: explained?.possible ?? false },
    notReliable: define('not_reliable', and(or(own, blind(rule.when)), not(possible))),
    presence: when.presence,
  };
}

/** For each condition, whether a measure that it reads, directly or through others, is blind. */
export function blindness(protocol: Protocol, context: Context): Blindness {
  const byMeasure = new Map<string, Logical>();
  const ofOperands = (operands: readonly { kind: string; name?: string }[]): Logical =>
    or(
      ...operands.map(({ kind, name }) =>
        kind === 'measure' ? (byMeasure.get(name ?? '') ?? false) : false,
      ),
    );
  for (const { name, how, notReliableWhen, path } of protocol.measures.values()) {
    const own = notReliableWhen ? context.rails(notReliableWhen).certain : false;
    byMeasure.set(
      name,
      context.writer.define(`${stepName(path)}:blind`, or(own, ofOperands(operandsOfMeasure(how)))),
    );
  }
  return (condition) => ofOperands(operandsOfCondition(condition));
}
