import { stepName } from '../../logic/logic.ts';
import type { Logical } from '../../logic/operators.ts';
import type { Condition } from '../../protocol/protocol.ts';
import { findSet, type Found } from '../find-set.ts';
import { observationsBehind } from '../observations-behind.ts';
import { setInWords } from '../set-in-words.ts';
import type { DeepCheck, DeepChecked } from './deep-check.ts';

/** An exception that can bring the outcome down to the lowest level is one that the council has accepted, with a reason. */
export const unlessReachesLowest: DeepCheck = (checked, report) => {
  for (const rule of checked.protocol.rules) {
    const accepted = checked.file.rules[Number(rule.path[1])]?.unless?.accepted;
    if (!rule.unless || !rule.level || accepted !== undefined) continue;
    const asked = [truthOf(rule.when, checked), truthOf(rule.unless.when, checked)];
    const found = takenBackToLowest(asked, checked);
    if (found.kind === 'none') continue;
    const words = observationsBehind(
      checked.logic,
      asked.flatMap(({ certain, possible }) => [certain, possible]),
    );
    const set =
      found.kind === 'found'
        ? setInWords(found.set, words, checked.protocol)
        : 'a set that could not be ruled out';
    report('unless_reaches_lowest', [...rule.path, 'unless'], { name: rule.name, set }, { part: 'key' });
  }
};

interface Truth {
  readonly certain: Logical;
  readonly possible: Logical;
}

const truthOf = (condition: Condition, { logic }: DeepChecked): Truth =>
  logic.conditions.get(stepName(condition.path)) ?? { certain: false, possible: true };

/** A set for which the rule and its exception hold, and no rule calls for more than the lowest level. */
function takenBackToLowest(asked: readonly Truth[], checked: DeepChecked): Found {
  const { protocol, logic, evaluator } = checked;
  const readers = asked.map(({ certain, possible }) => ({
    certain: evaluator.reader(certain),
    possible: evaluator.reader(possible),
  }));
  const [could, floor] = [evaluator.reader(logic.levels.could), evaluator.reader(logic.levels.floor)];
  return findSet(checked, [...protocol.observations.keys()], (result) => {
    if (floor(result) > 0 || readers.some(({ possible }) => possible(result) === 0)) return 'no';
    return could(result) <= 0 && readers.every(({ certain }) => certain(result) === 1) ? 'yes' : 'open';
  });
}
