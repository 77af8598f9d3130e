import { cutPoints } from '../../logic/cut-points.ts';
import type { Compiled } from '../../outcome/compile.ts';
import type { NamedOperand } from '../../protocol/protocol.ts';
import { SameLogic } from '../guards/same-logic.ts';
import { atomsOf, type Atoms } from './atoms.ts';
import { limitChanges } from './limit-changes.ts';
import { OpenComparisons } from './open-comparisons.ts';
import { memberPairs, rulePairs, type MemberPair, type RulePair } from './rule-pairs.ts';
import type { Side } from './side.ts';
import { spaceOf, type Space } from './space.ts';
import { tightenedOf, type Tightened } from './tightened.ts';

/** Everything that the questions of a comparison are asked with. */
export interface Asking {
  readonly space: Space;
  readonly atoms: Atoms;
  readonly open: OpenComparisons;
  readonly tightened: ReadonlyMap<Compiled, Tightened>;
  /** By dimension, where its answers can change. */
  readonly cuts: readonly (readonly number[])[];
  readonly before: readonly Compiled[];
  readonly after: readonly Compiled[];
  readonly members: readonly MemberPair[];
  /** Every rule of both sides. */
  readonly pairs: readonly RulePair[];
  /** Those that can come out otherwise. */
  readonly rules: readonly RulePair[];
  /** The names of the levels, lowest first, on each side. */
  readonly levelNames: readonly [readonly string[], readonly string[]];
  readonly sameLadder: boolean;
  /** Whether every limit has the same value and the same bounds on both sides. */
  readonly limitsAlike: boolean;
  /** Whether a number is reckoned in the same way on both sides. */
  readonly sameMeasure: (operand: NamedOperand) => boolean;
  /** So many nodes are looked into for one question, and no more. */
  readonly most: number;
}

/** Regions are told that far; which changes of level there are is settled without them. A policy whose protocols grow larger is told by each of them. */
const mostNodes = { protocol: 25_000, ward: 15_000 } as const;

export function askingOf(before: Side, after: Side): Asking {
  const all = [...before.members, ...after.members];
  const space = spaceOf([before, after]);
  const same = new SameLogic();
  const members = memberPairs(before, after, same);
  const pairs = members.flatMap((pair) => rulePairs(pair, same));
  const atoms = atomsOf(all, space, same);
  const levelNames = [before, after].map(({ ladder }) => ladder.levels.map(({ name }) => name)) as [
    string[],
    string[],
  ];
  return {
    space,
    atoms,
    open: new OpenComparisons(atoms),
    tightened: new Map(all.map((member) => [member, tightenedOf(member, atoms, space)])),
    cuts: cutsOf(all, space),
    before: before.members,
    after: after.members,
    members,
    pairs,
    rules: pairs.filter(({ differs }) => differs),
    levelNames,
    sameLadder: levelNames[0].join(' ') === levelNames[1].join(' '),
    limitsAlike: limitChanges(members).length === 0,
    sameMeasure: sameMeasures(members, same),
    most: mostNodes[after.kind],
  };
}

function cutsOf(members: readonly Compiled[], { dimensions }: Space): (readonly number[])[] {
  const all = members.map(({ protocol }) => cutPoints(protocol));
  return dimensions.map(({ key }) =>
    [...new Set(all.flatMap((cuts) => cuts.get(key) ?? []))].sort((left, right) => left - right),
  );
}

function sameMeasures(members: readonly MemberPair[], same: SameLogic): Asking['sameMeasure'] {
  const others = new Set<string>();
  for (const { before, after } of members) {
    if (!before || !after) continue;
    const [first, second] = [same.of(before), same.of(after)];
    for (const measure of before.logic.measures) {
      const other = after.logic.measures.find((each) => each.measure === measure.measure);
      const isSame =
        other &&
        (['low', 'high', 'bottomLow', 'bottomHigh', 'sure', 'maybe'] as const).every(
          (key) => first(measure[key]) === second(other[key]),
        );
      if (other && !isSame) others.add(measure.measure);
    }
  }
  return ({ kind, name }) => kind !== 'measure' || !others.has(name);
}
