import type { Logical } from '../../logic/operators.ts';
import type { Compiled } from '../../outcome/compile.ts';
import type { Read } from '../../outcome/view.ts';
import { asOneProtocol } from '../as-one-protocol.ts';
import { boxToInputs, type Box } from '../box.ts';
import { absences } from '../guards/absences.ts';
import { inputsBehind } from '../observations-behind.ts';
import { searchBoxes, type Asked } from '../search-boxes.ts';
import { blindConditions } from './blind-conditions.ts';
import { callAlike } from './asked-alike.ts';
import type { Asking } from './asking.ts';
import type { RuleHere } from './rule-pairs.ts';

/** The most boxes that are looked into. */
const mostBoxes = 8000;

/**
 * Whether every rule that is built otherwise stands the same on both sides, in each of its logics, for every set in which something is
 * missing or could not be obtained, in every combination. Then no level is another one. Asked only where complete sets come out alike;
 * false also where that is too much to find out, or depends on earlier sets or on faults of technique.
 */
export function incompleteAlike(asking: Asking): boolean {
  const { rules, members, before, after, sameLadder, cuts, space } = asking;
  const all = [...before, ...after];
  if (!sameLadder || members.some((each) => !each.before || !each.after)) return false;
  if (
    rules.some((each) => !each.before || !each.after) ||
    all.some(({ protocol }) => protocol.faults.length > 0)
  )
    return false;
  const answers = [
    ...rules.map(
      ({ before: first, after: second }) =>
        [railsOf(first as RuleHere), railsOf(second as RuleHere)] as const,
    ),
    ...members
      .filter(({ differs }) => differs)
      .map((each) => [appliesOf(each.before as Compiled), appliesOf(each.after as Compiled)] as const),
  ];
  const inputs = answers.flat().flatMap(({ member, logicals }) => inputsBehind(member.logic, logicals));
  if (inputs.some(({ of }) => of === 'look_back')) return false;
  const reads = [...new Set(inputs.flatMap(({ of, owner }) => (of === 'observation' ? [owner] : [])))];
  const alike = rules.map(callAlike);
  const protocol = asOneProtocol(all.map((member) => member.protocol));
  const byName = new Map(space.dimensions.map(({ key }, place) => [key, cuts[place] ?? []]));
  let left = mostBoxes;
  for (const start of absences(protocol, reads)) {
    const open = new Set(reads.filter((name) => !start.absent?.has(name)));
    const ask = (box: Box): Asked => {
      const results = new Map(all.map((member) => [member, resultOf(member, box)]));
      const verdicts = answers.map(([first, second], index) =>
        standing(first, second, results, alike[index] ?? true),
      );
      if (verdicts.every((each) => each === 'same')) return 'no';
      if (!isSingle(box, open)) return 'open';
      return verdicts.includes('different') ? 'yes' : 'no';
    };
    const { kind, looked } = searchBoxes({ protocol, start, cuts: byName, reads: [open], ask, most: left });
    left -= looked;
    if (kind !== 'none' || left <= 0) return false;
  }
  return true;
}

/** How something stands, in each of its logics: the first two say whether it is certain and whether it is possible. */
interface Rails {
  readonly member: Compiled;
  readonly logicals: readonly Logical[];
  readonly reads: readonly Read[];
  /** Whether it can be that not being met reassures nobody. */
  readonly isBlind: boolean;
}

const railsOf = ({ member, rule }: RuleHere): Rails => {
  const found = member.logic.rules.find((each) => each.rule === rule.name);
  if (!found) throw new Error(`no rule is called ${rule.name}`);
  const { certain, possible, counts, could, explained, notReliable } = found;
  const logicals = [certain, possible, counts, could, explained.certain, explained.possible, notReliable];
  return rails(member, logicals, blindConditions({ member, rule }).length > 0);
};

const appliesOf = (member: Compiled): Rails =>
  rails(member, [member.logic.applies.certain, member.logic.applies.possible], false);

const rails = (member: Compiled, logicals: readonly Logical[], isBlind: boolean): Rails => ({
  member,
  logicals,
  isBlind,
  reads: logicals.map((each) => member.evaluator.reader(each)),
});

/** A result that stays good when its protocol is asked again. */
const resultOf = (member: Compiled, box: Box): Float64Array =>
  member.evaluator.run(boxToInputs(box, member.protocol, member.logic.inputs)).slice();

/**
 * Over all sets of a box. `same`: alike for each of them, because it surely holds, or surely not. `equal`: each logic says the same of the box as a
 * whole; that is an answer only about a single set.
 */
function standing(
  first: Rails,
  second: Rails,
  results: ReadonlyMap<Compiled, Float64Array>,
  callsAlike: boolean,
): 'same' | 'equal' | 'different' {
  const [was, is] = [first, second].map(({ member, reads }) =>
    reads.map((read) => read(results.get(member) as Float64Array)),
  ) as [number[], number[]];
  const isNever = was[1] === 0 && is[1] === 0;
  const isSurely = was[0] === 1 && is[0] === 1;
  const isEqual = was.every((value, index) => value === is[index]) && (isNever || callsAlike);
  if (!isEqual) return 'different';
  const isFixed = isNever ? !first.isBlind && !second.isBlind : isSurely && isExplainedAlike(was, is);
  return isFixed ? 'same' : 'equal';
}

/** Whether what explains a rule that is met surely does so on both sides, or surely does not. There may be nothing that explains. */
function isExplainedAlike(was: readonly number[], is: readonly number[]): boolean {
  const [[, , , , certain = 0, possible = 0], [, , , , otherCertain = 0, otherPossible = 0]] = [was, is];
  return (certain === 1 && otherCertain === 1) || (possible === 0 && otherPossible === 0);
}

function isSingle({ ranges, choices }: Box, reads: ReadonlySet<string>): boolean {
  for (const [name, [low, high]] of ranges) if (low !== high && reads.has(name)) return false;
  for (const [name, values] of choices)
    if (values.length > 1 && reads.has(name.split(':')[0] as string)) return false;
  return true;
}
