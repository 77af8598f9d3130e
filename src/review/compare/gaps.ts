import type { Protocol } from '../../protocol/protocol.ts';
import { withoutPlaces } from '../look-back-key.ts';
import { inputsBehind } from '../observations-behind.ts';
import type { Logical } from '../../logic/operators.ts';
import type { Asking } from './asking.ts';
import { observationsOf } from './point-to-series.ts';
import type { RuleHere } from './rule-pairs.ts';
import type { Side } from './side.ts';

/** Whether both sides are built alike: then nothing can differ, whatever is known, missing, earlier or changed for a patient. */
export function builtAlike(
  { members, rules, sameLadder, limitsAlike }: Asking,
  sides: readonly [Side, Side],
): boolean {
  return (
    sameLadder &&
    limitsAlike &&
    rules.length === 0 &&
    members.every(({ differs }) => !differs) &&
    declaredOtherwise(sides).length === 0 &&
    new Set(sides.map(faultsText)).size === 1
  );
}

const faultsText = ({ members }: Side): string =>
  JSON.stringify(
    members.map(({ protocol }) =>
      protocol.faults.map(({ name, when, readsHigh, readsLow }) => [
        name,
        withoutPlaces(when),
        [...readsHigh],
        [...readsLow],
      ]),
    ),
  );

/** Observations that the two sides declare as other things, so that one set cannot be read by both. */
export function declaredOtherwise([before, after]: readonly [Side, Side]): string[] {
  const first = declared(before);
  return [...declared(after)].flatMap(([name, text]) => {
    const other = first.get(name);
    return other !== undefined && other !== text ? [name] : [];
  });
}

function declared({ members }: Side): Map<string, string> {
  const all = members.flatMap(({ protocol }) => [...protocol.observations.values()]);
  return new Map(
    all.map(
      ({ name, kind, unit, stepsPerUnit, possible, choices, ifNotStated, goodFor, takenWith, standing }) => [
        name,
        JSON.stringify([
          kind,
          unit?.word ?? null,
          stepsPerUnit.toFraction(),
          possible,
          choices.map(({ choice }) => choice),
          ifNotStated,
          goodFor,
          takenWith,
          standing,
        ]),
      ],
    ),
  );
}

/** What the comparison is about, in sentences. */
export function overWords(asking: Asking, sides: readonly [Side, Side]): string[] {
  const names = [...observationsOf(asking.space).values()].map(({ title }) => title);
  const faults = sides.some(({ members }) => members.some(({ protocol }) => protocol.faults.length > 0));
  const lookBacks = asking.space.dimensions.some(({ kind }) => kind === 'look_back');
  return [
    `every set in which each of ${names.length} observations has one possible value, step by step, and none contradicts another: ${names.join(', ')}`,
    'each limit at the value that stands in its file',
    ...(faults
      ? [
          'values as they were read: a fault of technique widens what could be, never what is called for at least',
        ]
      : []),
    ...(lookBacks ? ['what looks back on earlier sets at every value it can have, and at none'] : []),
  ];
}

/** What is not answered where something is built otherwise, in sentences. */
export function gapsOf(
  asking: Asking,
  sides: readonly [Side, Side],
  tooLarge: boolean,
  missing: 'alike' | 'levels_told' | 'open',
): string[] {
  const behind = asking.rules.flatMap(({ before, after }) =>
    [before, after].flatMap((here) => (here ? [here] : [])),
  );
  const limits = behind.flatMap((here) => adjustableBehind(here));
  const declaredNames = declaredOtherwise(sides);
  const [first, second] = sides.map(faultsText);
  return [
    ...(tooLarge ? ['the search grew too large before every complete set was looked at'] : []),
    ...(declaredNames.length > 0
      ? [
          `the two sides declare as other things: ${declaredNames.join(', ')}; sets with them cannot be compared`,
        ]
      : []),
    ...ofMissing[missing],
    ...(looksAtAnAverage(asking) ? ['averages over earlier sets that lie between two steps'] : []),
    ...(limits.length > 0
      ? [`patients for whom a limit was changed: ${[...new Set(limits)].join(', ')}`]
      : []),
    ...(first === second ? [] : ['faults of technique: they are not the same on both sides']),
  ];
}

const ofMissing = {
  alike: [],
  levels_told: [
    'which rules are met in sets in which something is missing or unobtainable; their levels are told',
    'sets in which something is known only as a range',
  ],
  open: ['sets in which something is missing, unobtainable or known only as a range'],
} as const;

/** An average may lie between two steps, and only whole steps are looked at: what is found is there; that there is no more is not known. */
export const looksAtAnAverage = ({ space }: Asking): boolean =>
  space.dimensions.some(({ lookBack }) => lookBack?.how.kind === 'average');

/** The limits behind a rule that may be changed for a patient. */
function adjustableBehind({ member, rule }: RuleHere): string[] {
  const logic = member.logic.rules.find((each) => each.rule === rule.name);
  const answers: Logical[] = logic ? [logic.certain, logic.possible] : [];
  return inputsBehind(member.logic, answers).flatMap(({ of, owner }) => {
    const limit = of === 'limit' ? limitOf(member.protocol, owner) : undefined;
    return limit?.between ? [limit.title] : [];
  });
}

const limitOf = ({ limits }: Protocol, name: string) => limits.get(name);
