import { conditionsIn } from '../walk.ts';
import type { Condition, Protocol } from '../protocol.ts';
import type { Check } from './check.ts';

/** Rules are decided after measures and scope, so neither can depend on one. */
export const ruleNotHere: Check = ({ protocol }, report) => {
  for (const condition of decidedBeforeRules(protocol)) {
    for (const each of conditionsIn(condition)) {
      if (each.kind === 'rule') report('rule_not_here', each.path, { name: each.rule });
    }
  }
};

function decidedBeforeRules({ applies, measures }: Protocol): Condition[] {
  const inMeasures = [...measures.values()].flatMap(({ how, notReliableWhen }) => [
    ...(how.kind === 'choose' ? how.entries.map(({ when }) => when) : []),
    notReliableWhen,
  ]);
  return [applies, ...inMeasures].filter((each) => each !== null);
}
