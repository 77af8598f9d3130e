import type { ChangedRule, ChangedStand } from './comparison.ts';
import type { Region } from './partitioner.ts';
import { ruleDifferences } from './rule-differences.ts';
import type { RuleHere, RulePair } from './rule-pairs.ts';
import { ruleQuestion, type RuleChange, type RuleStand } from './rule-question.ts';
import { groundOf, regionsTold, witnessOf } from './told.ts';
import type { Working } from './working.ts';

/** Rules that some set meets on one side alone; and those that are built otherwise although no complete set shows it. */
export function changedRules(working: Working): {
  readonly changed: readonly ChangedRule[];
  readonly tooLarge: boolean;
} {
  let tooLarge = false;
  const changed = asked(working).map((pair): ChangedRule => {
    const question = ruleQuestion(pair, working.asking);
    const { regions, unsettled } = working.partitioner.part(
      question,
      working.every?.whereRuleStandsOtherwise(pair) ?? null,
    );
    if (unsettled.length > 0) tooLarge = true;
    const groups = new Map<string, Region<RuleChange>[]>();
    for (const region of regions) {
      const key = JSON.stringify(region.change);
      groups.set(key, [...(groups.get(key) ?? []), region]);
    }
    const { member, rule } = (pair.after ?? pair.before) as RuleHere;
    return {
      protocol: member.protocol.name,
      rule: rule.name,
      title: rule.title,
      renamed_from: pair.renamed ? (pair.before?.rule.name ?? null) : null,
      is: whatOf(pair, groups.size > 0),
      differences: ruleDifferences(pair, working.asking),
      stands: [...groups.values()].map((each) =>
        standTold(each, pair, question, working, unsettled.length === 0),
      ),
    };
  });
  return { changed, tooLarge };
}

/** Those that can differ; where a protocol is for other patients than before, all of its rules. */
function asked({ asking }: Working): RulePair[] {
  const others = asking.members.filter(({ differs }) => differs);
  return asking.pairs.filter(
    ({ before, after, differs }) =>
      differs || others.some((pair) => pair.before === before?.member && pair.after === after?.member),
  );
}

function whatOf({ before, after }: RulePair, comesOutOtherwise: boolean): ChangedRule['is'] {
  if (!before) return 'added';
  if (!after) return 'removed';
  return comesOutOtherwise ? 'asks_otherwise' : 'calls_otherwise';
}

function standTold(
  regions: readonly Region<RuleChange>[],
  pair: RulePair,
  question: ReturnType<typeof ruleQuestion>,
  { asking, partitioner, sides, over, all }: Working,
  whole: boolean,
): ChangedStand {
  const [{ change }] = regions as [Region<RuleChange>];
  const regionsSaid = regionsTold(regions, question, asking, partitioner, whole);
  const { witness } = regionsSaid;
  return {
    before: standWords(change.from),
    after: standWords(change.to),
    ...regionsSaid.words,
    ground: groundOf(regions, partitioner, all, over),
    witness: witnessOf(witness, asking, sides, ([was, is]) =>
      [
        [was, pair.before, change.from],
        [is, pair.after, change.to],
      ].every((each) => {
        const [{ states }, here, stand] = each as [typeof was, RuleHere | null, RuleStand];
        const state = here ? states.get(`${here.member.protocol.name}.${here.rule.name}`) : undefined;
        return (state?.split(',')[0] ?? 'not_there') === stand.state;
      }),
    ),
  };
}

function standWords({ state, explained, notReliable }: RuleStand): string {
  const words = { met: 'met', not_met: 'not met', undecided: 'undecided', not_there: 'not there' }[state];
  return `${words}${explained ? ', and explained' : ''}${notReliable ? ', which reassures nobody' : ''}`;
}
