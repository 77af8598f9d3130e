import type { Logic } from '../logic/logic.ts';
import type { Protocol, Rule } from '../protocol/protocol.ts';
import type { Evaluator } from '../targets/evaluator/logic-to-evaluator.ts';
import type { Read } from './view.ts';

/** Where the answers about one rule stand in a result. */
export interface RuleReaders {
  readonly rule: Rule;
  readonly certain: Read;
  readonly possible: Read;
  readonly counts: Read;
  readonly explained: { readonly certain: Read; readonly possible: Read };
  readonly notReliable: Read;
}

/** By name, in the order of the file. */
export function ruleReaders(
  protocol: Protocol,
  logic: Logic,
  evaluator: Evaluator,
): ReadonlyMap<string, RuleReaders> {
  const rules = new Map(protocol.rules.map((rule) => [rule.name, rule]));
  return new Map(
    logic.rules.flatMap((each) => {
      const rule = rules.get(each.rule);
      if (!rule) return [];
      const readers: RuleReaders = {
        rule,
        certain: evaluator.reader(each.certain),
        possible: evaluator.reader(each.possible),
        counts: evaluator.reader(each.counts),
        explained: {
          certain: evaluator.reader(each.explained.certain),
          possible: evaluator.reader(each.explained.possible),
        },
        notReliable: evaluator.reader(each.notReliable),
      };
      return [[rule.name, readers]];
    }),
  );
}
