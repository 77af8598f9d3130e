import type { Document, MapNode } from '../../document/document.ts';
import type { Compiled } from '../../outcome/compile.ts';
import type { Change } from '../changes/change.ts';
import { boxToGiven } from '../examples/box-to-given.ts';
import { caseInYaml } from '../examples/case-in-yaml.ts';
import { answersTo, tells, type Both, type Given } from '../examples/given.ts';
import { neighbours } from '../examples/neighbours.ts';
import { telling } from '../examples/telling.ts';
import { cutsOf, findDifference, ordinarySet, type Difference } from './find-difference.ts';
import { pairOf } from './pair.ts';

/**
 * A case that would notice a change; or that the change changes nothing, proven; or that no case was found: the search was too
 * large, or something depends on earlier sets, or on a limit that may be changed for a patient, and nothing next to the cases
 * shows it.
 */
export type Example =
  | { readonly kind: 'case'; readonly yaml: string }
  | { readonly kind: 'changes_nothing' }
  | { readonly kind: 'not_found'; readonly because: 'too_large' | 'beyond_sets' };

/** So many sets next to the cases are tried. */
const mostNeighbours = 3000;

/** Looks for the case that a change needs. */
export function findExample(change: Change, before: Compiled, after: Compiled, cases: Document): Example {
  const both: Both = { before, after, cases };
  const { protocol } = before;
  const given = (box: Parameters<typeof boxToGiven>[0]): Given => ({
    key: 'given',
    node: boxToGiven(box, protocol),
  });
  const pair = pairOf(before, after, change);
  // Faults of technique are no part of logic: they widen what logic reads.
  const none: Difference = { kind: change.path[0] === 'faults' ? 'open' : 'none' };
  const difference: Difference = pair
    ? findDifference(pair, change.within, (box) => tells(given(box), both) !== null)
    : none;
  if (difference.kind === 'found') return asCase(change, shortened(given(difference.box), both), both);
  const ordinary = given(ordinarySet(protocol, change.within));
  if (tells(ordinary, both)) return asCase(change, shortened(ordinary, both), both);
  // A measure that no rule reads so: only its value can differ.
  const inMeasure = change.path[0] === 'measures' && !change.path.includes('not_reliable_when');
  if (difference.kind === 'none' && !inMeasure) return { kind: 'changes_nothing' };
  const names = pair?.reads ?? [...protocol.observations.keys()];
  let left = mostNeighbours;
  for (const near of neighbours(cases, names, protocol, cutsOf({ before, after }))) {
    if (left-- === 0) break;
    if (tells(near, both)) return asCase(change, near, both);
  }
  return { kind: 'not_found', because: difference.kind === 'too_large' ? 'too_large' : 'beyond_sets' };
}

/** The same set without what it does not take to tell the two apart: what only helps, one after the other. */
function shortened(whole: Given, both: Both): Given {
  const { observations } = both.before.protocol;
  let kept = whole;
  for (const { key } of whole.node.entries) {
    if (observations.get(key)?.role !== 'helps') continue;
    const entries = kept.node.entries.filter((entry) => entry.key !== key);
    const without = { ...kept, node: { ...kept.node, entries } satisfies MapNode };
    if (tells(without, both)) kept = without;
  }
  return kept;
}

function asCase(change: Change, given: Given, both: Both): Example {
  const answers = answersTo(given, both);
  const told = answers && telling(...answers);
  if (!answers || !told) throw new Error(`what was found tells nothing of ${change.name}`);
  return { kind: 'case', yaml: caseInYaml(change, given, answers[0], told) };
}
