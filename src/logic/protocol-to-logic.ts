import type { Protocol } from '../protocol/protocol.ts';
import { inputsOf } from './inputs.ts';
import { levelsOf } from './levels.ts';
import { LogicWriter } from './logic-writer.ts';
import type { Logic } from './logic.ts';
import { blindness } from './rules.ts';
import { usedSteps } from './used-steps.ts';

/** Logic, and the parts of the protocol whose numbers could grow past what is exact; with any, the logic must not be run. */
export interface LogicOrTooLarge {
  readonly logic: Logic;
  /** Paths, as step names begin with them. */
  readonly tooLarge: readonly string[];
}

/**
 * Turns a checked protocol into logic: measures in their order, then rules in theirs, then levels. Linear in the protocol.
 */
export function protocolToLogic(protocol: Protocol): LogicOrTooLarge {
  const writer = new LogicWriter(protocol);
  const measures = [...protocol.measures.values()].map((measure) => writer.writeMeasure(measure));
  const applies = protocol.applies ? writer.rails(protocol.applies) : { certain: true, possible: true };
  const blind = blindness(protocol, writer);
  const byName = new Map(protocol.rulesInOrder.map((rule) => [rule.name, writer.writeRule(rule, blind)]));
  const rules = protocol.rules.flatMap(({ name }) => byName.get(name) ?? []);
  const partitions = [...protocol.partitions.values()].map(({ name, of }) => ({
    name,
    of: of.map((each) => writer.rails(each)),
  }));
  const logic = {
    protocol: protocol.name,
    edition: protocol.edition,
    digest: protocol.digest,
    inputs: inputsOf(protocol),
    applies: { certain: applies.certain, possible: applies.possible },
    rules,
    measures,
    levels: levelsOf(protocol, rules, writer),
    conditions: writer.conditions,
    partitions,
    divisors: writer.divisors,
    fixed: writer.fixed,
  };
  const { steps, tooLarge } = writer.writer;
  return { logic: { ...logic, steps: usedSteps(steps, logic) }, tooLarge: [...tooLarge] };
}
