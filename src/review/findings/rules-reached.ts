import type { Condition, Measure, Protocol, Rule } from '../../protocol/protocol.ts';
import {
  conditionsIn,
  conditionsOfMeasure,
  operandsOfCondition,
  operandsOfMeasure,
  rulesNamed,
} from '../../protocol/walk.ts';

/** Names of the rules whose answers a condition inside a protocol can turn: of all, where it tells for whom the protocol is. */
export function rulesReached(condition: Condition, protocol: Protocol): ReadonlySet<string> {
  const { applies, measures, rules } = protocol;
  const turned = new Set<string>();
  const isIn = (all: readonly Condition[]): boolean =>
    all.some(
      (each) =>
        [...conditionsIn(each)].includes(condition) ||
        operandsOfCondition(each).some((of) => of.kind === 'measure' && turned.has(of.name)),
    );
  const reads = (measure: Measure): boolean =>
    isIn(ofMeasure(measure)) ||
    operandsOfMeasure(measure.how).some((of) => of.kind === 'measure' && turned.has(of.name));
  until(() => spread([...measures.values()], turned, reads));
  if (applies && isIn([applies])) return new Set(rules.map(({ name }) => name));
  const reached = new Set<string>();
  const asks = (rule: Rule): boolean =>
    isIn(ofRule(rule)) || ofRule(rule).some((each) => rulesNamed(each).some((name) => reached.has(name)));
  until(() => spread(rules, reached, asks));
  return reached;
}

/** A protocol with some of its rules alone, and those that they name; nothing is asked of it but those rules and its measures. */
export function withRulesAlone(protocol: Protocol, names: ReadonlySet<string>): Protocol {
  const kept = new Set(names);
  const named = ({ name }: Rule): boolean =>
    protocol.rules.some(
      (rule) => kept.has(rule.name) && ofRule(rule).some((each) => rulesNamed(each).includes(name)),
    );
  until(() => spread(protocol.rules, kept, named));
  const isKept = ({ name }: Rule): boolean => kept.has(name);
  return {
    ...protocol,
    rules: protocol.rules.filter(isKept),
    rulesInOrder: protocol.rulesInOrder.filter(isKept),
    partitions: new Map(),
  };
}

const ofMeasure = ({ how, notReliableWhen }: Measure): Condition[] => [
  ...conditionsOfMeasure(how),
  ...(notReliableWhen ? [notReliableWhen] : []),
];

const ofRule = ({ when, unless, explainedBy, notReliableWhen }: Rule): Condition[] =>
  [when, unless?.when, explainedBy?.when, notReliableWhen].filter(
    (each) => each !== null && each !== undefined,
  );

/** Adds what is such and was not there; whether there was any. */
function spread<Of extends { readonly name: string }>(
  all: readonly Of[],
  into: Set<string>,
  isSuch: (one: Of) => boolean,
): boolean {
  const fresh = all.filter((each) => !into.has(each.name) && isSuch(each));
  for (const { name } of fresh) into.add(name);
  return fresh.length > 0;
}

function until(goesOn: () => boolean): void {
  while (goesOn());
}
