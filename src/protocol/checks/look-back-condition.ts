import { conditionsIn, conditionsOfMeasure } from '../walk.ts';
import { plainWords } from '../words.ts';
import type { Check } from './check.ts';

/** `where` and `held` look at one set: what a measure or a rule would be there is not worked out. */
export const lookBackCondition: Check = ({ protocol }, report) => {
  for (const { how } of protocol.measures.values()) {
    if (!('over' in how)) continue;
    for (const condition of conditionsOfMeasure(how)) {
      for (const each of conditionsIn(condition)) {
        if (each.kind === 'rule')
          report('look_back_condition', each.path, { part: `the rule ${plainWords(each.rule)}` });
        if (each.kind !== 'compare') continue;
        const measure = [each.subject, each.to].find((side) => side.kind === 'measure');
        if (measure?.kind === 'measure') {
          report('look_back_condition', each.path, { part: `the measure ${plainWords(measure.name)}` });
        }
      }
    }
  }
};
