import { never } from '../../logic/inputs.ts';
import type { LookBack, Protocol } from '../../protocol/protocol.ts';
import { possibleRange } from '../../vocabulary/possible-range.ts';
import type { AskedSets } from './sets.ts';
import { smt, type Smt } from './smt.ts';

/** A look back by its name: the measure's. */
export interface NamedLookBack {
  readonly name: string;
  readonly how: LookBack;
}

export const lookBacksOf = ({ measures }: Protocol): readonly NamedLookBack[] =>
  [...measures.values()].flatMap(({ name, how }) => ('over' in how ? [{ name, how }] : []));

/** The most sets that a window is reckoned to hold. */
const mostSets = 1_000_000;

const end = ({ name }: NamedLookBack, part: 'low' | 'high' | 'sure' | 'maybe' | 'open' | 'count'): string =>
  `${name}:${part}`;

/** What holds of one look back's inputs whatever the earlier sets say. */
export function lookBackFacts(back: NamedLookBack, protocol: Protocol, sets: AskedSets): Smt[] {
  const [low, high, sure, maybe] = (['low', 'high', 'sure', 'maybe'] as const).map((part) =>
    end(back, part),
  ) as [string, string, string, string];
  const exact = sets.given === 'complete';
  return [
    smt`(<= ${low} ${high})`,
    ...rangeFacts(back, protocol),
    ...(always.has(back.how.kind) ? [smt`${sure}`, smt`${maybe}`] : [smt`(=> ${sure} ${maybe})`]),
    ...(exact ? [smt`(= ${sure} ${maybe})`, smt`(=> ${sure} (= ${low} ${high}))`] : []),
    ...(exact && back.how.where ? [smt`(not ${end(back, 'open')})`] : []),
  ];
}

/** Always with a value, and with nothing else to be known about it. */
const always: ReadonlySet<LookBack['kind']> = new Set(['count', 'minutes_since', 'held']);

function rangeFacts(back: NamedLookBack, protocol: Protocol): Smt[] {
  const { how } = back;
  const [low, high] = [end(back, 'low'), end(back, 'high')];
  const inside = (least: number, most: number): Smt[] => [
    smt`(<= ${least} ${low})`,
    smt`(<= ${high} ${most})`,
  ];
  if (how.kind === 'count') return inside(0, mostSets);
  if (how.kind === 'held') return inside(0, how.over);
  // Inside the window, its beginning excluded; or never.
  if (how.kind === 'minutes_since') {
    const since = (name: string): Smt =>
      smt`(or (and (<= 0 ${name}) (< ${name} ${how.over})) (= ${name} ${never}))`;
    return [since(low), since(high)];
  }
  const observation = protocol.observations.get(how.observation ?? '');
  const range = observation ? possibleRange(observation) : { low: 0, high: 0 };
  if (how.kind === 'change') return inside(range.low - range.high, range.high - range.low);
  if (how.kind !== 'average') return inside(range.low, range.high);
  const count = end(back, 'count');
  return [
    smt`(<= 1 ${count} ${mostSets})`,
    smt`(<= (* ${range.low} ${count}) ${low})`,
    smt`(<= ${high} (* ${range.high} ${count}))`,
  ];
}

/**
 * What holds between two look backs over the same values in the same window: the lowest is not above the average, the earliest and
 * the latest, these are not above the highest; and what changed is the latest less the earliest.
 */
export function lookBackPairFacts(backs: readonly NamedLookBack[]): Smt[] {
  return groupsOf(backs).flatMap((group) => {
    const of = (kind: LookBack['kind']): NamedLookBack[] => group.filter(({ how }) => how.kind === kind);
    const middle = (['average', 'earliest', 'latest'] as const).flatMap(of);
    const [lowest, highest] = [of('lowest'), of('highest')];
    return [
      ...lowest.flatMap((one) => [...middle, ...highest].flatMap((other) => notAbove(one, other))),
      ...highest.flatMap((other) => middle.flatMap((one) => notAbove(one, other))),
      ...of('change').flatMap((change) =>
        of('latest').flatMap((latest) =>
          of('earliest').flatMap((earliest) => changed(change, earliest, latest)),
        ),
      ),
      ...there([...lowest, ...middle, ...highest], of('change')),
      ...of('count').flatMap((count) =>
        [...lowest, ...middle, ...highest].flatMap((each) => counted(count, each)),
      ),
    ];
  });
}

/** Whether two numbers that are not known are multiplied: an average's count by the lowest or the highest value. */
export const multiplies = (backs: readonly NamedLookBack[]): boolean =>
  groupsOf(backs).some(
    (group) =>
      group.some(({ how }) => how.kind === 'average') &&
      group.some(({ how }) => how.kind === 'lowest' || how.kind === 'highest'),
  );

/** Both ends of the one are not above those of the other, an average's being sums. */
function notAbove(one: NamedLookBack, other: NamedLookBack): Smt[] {
  const sums = [one, other].find(({ how }) => how.kind === 'average');
  const times = (back: NamedLookBack, part: 'low' | 'high'): Smt =>
    sums && back !== sums ? smt`(* ${end(sums, 'count')} ${end(back, part)})` : smt`${end(back, part)}`;
  return (['low', 'high'] as const).map((part) => smt`(<= ${times(one, part)} ${times(other, part)})`);
}

function changed(change: NamedLookBack, earliest: NamedLookBack, latest: NamedLookBack): Smt[] {
  const ends = (part: 'low' | 'high', other: 'low' | 'high'): Smt =>
    smt`(= ${end(change, part)} (- ${end(latest, part)} ${end(earliest, other)}))`;
  return [smt`(=> ${end(change, 'maybe')} (and ${ends('low', 'high')} ${ends('high', 'low')}))`];
}

/** Where one has a value all have one, and where something changed there are values. */
const there = ([first, ...others]: readonly NamedLookBack[], changes: readonly NamedLookBack[]): Smt[] =>
  (['sure', 'maybe'] as const).flatMap((part) =>
    first === undefined
      ? []
      : [
          ...others.map((other) => smt`(= ${end(first, part)} ${end(other, part)})`),
          ...changes.map((change) => smt`(=> ${end(change, part)} ${end(first, part)})`),
        ],
  );

/** A value is there as soon as one set is counted. */
const counted = (count: NamedLookBack, value: NamedLookBack): Smt[] => [
  smt`(= (<= 1 ${end(count, 'low')}) ${end(value, 'sure')})`,
  smt`(= (<= 1 ${end(count, 'high')}) ${end(value, 'maybe')})`,
];

/** Look backs that read the same values of the same sets. */
function groupsOf(backs: readonly NamedLookBack[]): readonly NamedLookBack[][] {
  const groups = new Map<string, NamedLookBack[]>();
  for (const back of backs) {
    const { observation, where, over, presentSet, kind } = back.how;
    if (kind === 'held' || kind === 'minutes_since') continue;
    const key = sameText([observation, where, over, presentSet]);
    groups.set(key, [...(groups.get(key) ?? []), back]);
  }
  return [...groups.values()];
}

/** A text that two have in common when they say the same, wherever in the file. */
const sameText = (what: unknown): string =>
  JSON.stringify(what, (key, value: unknown) =>
    key === 'path' ? undefined : typeof value === 'bigint' ? String(value) : value,
  );
