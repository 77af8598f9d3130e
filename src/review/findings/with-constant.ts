import type { Condition, Measure, Protocol, Rule } from '../../protocol/protocol.ts';

/** The same protocol with one comparison that always holds, or never does. */
export function withConstant(protocol: Protocol, target: Condition, holds: boolean): Protocol {
  const put = (condition: Condition): Condition => {
    if (condition === target) return { kind: holds ? 'all' : 'any', of: [], path: condition.path };
    return 'of' in condition ? { ...condition, of: condition.of.map(put) } : condition;
  };
  const maybe = (condition: Condition | null): Condition | null => condition && put(condition);
  const rules = new Map(protocol.rules.map((rule) => [rule, inRule(rule, put)]));
  return {
    ...protocol,
    applies: maybe(protocol.applies),
    measures: new Map([...protocol.measures].map(([name, measure]) => [name, inMeasure(measure, put)])),
    rules: [...rules.values()],
    rulesInOrder: protocol.rulesInOrder.map((rule) => rules.get(rule) ?? rule),
  };
}

type Put = (condition: Condition) => Condition;

function inRule(rule: Rule, put: Put): Rule {
  const { unless, explainedBy, notReliableWhen } = rule;
  return {
    ...rule,
    when: put(rule.when),
    unless: unless && { ...unless, when: put(unless.when) },
    explainedBy: explainedBy && { ...explainedBy, when: put(explainedBy.when) },
    notReliableWhen: notReliableWhen && put(notReliableWhen),
  };
}

function inMeasure(measure: Measure, put: Put): Measure {
  const { how, notReliableWhen } = measure;
  const entries =
    how.kind === 'choose'
      ? { ...how, entries: how.entries.map(({ when, use }) => ({ when: when && put(when), use })) }
      : how;
  return { ...measure, how: entries, notReliableWhen: notReliableWhen && put(notReliableWhen) };
}
