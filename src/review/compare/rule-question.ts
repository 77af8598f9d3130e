import { appliesAlike, asksAlike } from './asked-alike.ts';
import type { Asking } from './asking.ts';
import type { Atom } from './atoms.ts';
import type { Question } from './partitioner.ts';
import { blindConditions } from './blind-conditions.ts';
import type { RuleHere, RulePair } from './rule-pairs.ts';
import { pointNode, type Node } from './node.ts';
import type { Tightened } from './tightened.ts';

/** How a rule stands for every set of a region. `not_there`: there is no such rule, or its protocol is not for these patients. */
export interface RuleStand {
  readonly state: 'met' | 'not_met' | 'undecided' | 'not_there';
  readonly explained: boolean;
  /** Not met, and that reassures nobody. */
  readonly notReliable: boolean;
}

export interface RuleChange {
  readonly from: RuleStand;
  readonly to: RuleStand;
}

/** Which sets meet a rule on one side and not on the other, or have it explained, or not reliable, on one side alone. */
export function ruleQuestion(pair: RulePair, asking: Asking): Question<RuleChange> {
  const members = asking.members.filter(
    ({ before, after }) => before === pair.before?.member || after === pair.after?.member,
  );
  const isBlind = [pair.before, pair.after].some((here) => here && blindConditions(here).length > 0);
  return (node, find) => {
    const alike =
      !isBlind &&
      asksAlike(pair, asking.atoms, node) &&
      members.every((each) => appliesAlike(each, asking.atoms, node));
    if (alike) return { kind: 'same' };
    const by = asking.open.oneSided(pair, node);
    if (by) return { kind: 'cut', by };
    const sides: RuleStand[] = [];
    for (const here of [pair.before, pair.after]) {
      const stand = standIn(node, here, asking, find);
      if ('by' in stand) return { kind: 'cut', by: stand.by };
      sides.push(stand);
    }
    const [from, to] = sides as [RuleStand, RuleStand];
    return asText(from) === asText(to) ? { kind: 'same' } : { kind: 'other', change: { from, to } };
  };
}

function standIn(
  node: Node,
  here: RuleHere | null,
  asking: Asking,
  find: () => Float64Array | null,
): RuleStand | { readonly by: Atom } {
  if (!here) return notThere;
  const { member, rule } = here;
  const asked = asking.tightened.get(member) as Tightened;
  const by = cutFor(node, here, asked, asking);
  if (by) return { by };
  const result = asked.run(node);
  const reads = asked.rules.get(rule.name);
  if (!reads || asked.applies.possible(result) === 0) return notThere;
  const isOpen = reads.certain(result) === 0 && reads.possible(result) !== 0;
  const point = isOpen ? find() : null;
  const settled = point ? asked.run(pointNode(node, point)) : result;
  const state =
    reads.certain(settled) !== 0 ? 'met' : reads.possible(settled) === 0 ? 'not_met' : 'undecided';
  return {
    state,
    explained: state !== 'not_met' && reads.explained.certain(settled) !== 0,
    notReliable: state === 'not_met' && reads.notReliable(settled) !== 0,
  };
}

/** What has to be settled before one can say how a rule stands. */
function cutFor(node: Node, { member, rule }: RuleHere, asked: Tightened, { open }: Asking): Atom | null {
  const result = asked.run(node);
  const { applies } = asked;
  if (applies.possible(result) === 0) return null;
  if (applies.certain(result) === 0) {
    const by = open.in([member.protocol.applies], member, node);
    if (by) return by;
  }
  const reads = asked.rules.get(rule.name);
  if (!reads) return null;
  const [certain, possible] = [reads.certain(result) !== 0, reads.possible(result) !== 0];
  if (!certain && possible) {
    const by = open.in([rule.when, rule.unless?.when], member, node);
    if (by) return by;
  }
  if (possible && reads.explained.certain(result) === 0 && reads.explained.possible(result) !== 0) {
    const by = open.in([rule.explainedBy?.when], member, node);
    if (by) return by;
  }
  return certain || possible ? null : open.in(blindConditions({ member, rule }), member, node);
}

const notThere: RuleStand = { state: 'not_there', explained: false, notReliable: false };

/** That a rule is not there says the same as that it is not met. */
const asText = ({ state, explained, notReliable }: RuleStand): string =>
  `${state === 'not_there' ? 'not_met' : state} ${explained} ${notReliable}`;
