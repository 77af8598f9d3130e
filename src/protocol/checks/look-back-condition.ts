import type { Condition } from '../protocol.ts';
import { conditionsIn, conditionsOfMeasure } from '../walk.ts';
import { plainWords } from '../words.ts';
import type { Check } from './check.ts';

/** `where`, `held` and the condition of a fault look at one set: what a measure or a rule would be there is not worked out. */
export const lookBackCondition: Check = ({ protocol }, report) => {
  for (const { how } of protocol.measures.values()) {
    if ('over' in how) conditionsOfMeasure(how).forEach((condition) => atOneSet(condition, report));
  }
  for (const { when } of protocol.faults) {
    atOneSet(when, report);
    for (const each of conditionsIn(when)) {
      const limit = each.kind === 'compare' && each.to.kind === 'limit' ? each.to : null;
      if (limit) report('fault_asks_limit', each.path, { name: limit.name });
    }
  }
};

function atOneSet(condition: Condition, report: Parameters<Check>[1]): void {
  for (const each of conditionsIn(condition)) {
    if (each.kind === 'rule')
      report('look_back_condition', each.path, { part: `the rule ${plainWords(each.rule)}` });
    if (each.kind !== 'compare') continue;
    const measure = [each.subject, each.to].find((side) => side.kind === 'measure');
    if (measure?.kind === 'measure')
      report('look_back_condition', each.path, { part: `the measure ${plainWords(measure.name)}` });
  }
}
