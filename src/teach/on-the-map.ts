import type { Compiled } from '../outcome/compile.ts';
import { seriesToOutcome } from '../outcome/series-to-outcome.ts';
import type { Observation, Protocol } from '../protocol/protocol.ts';
import { axesOf } from '../review/cells/axes-of.ts';
import type { Axis } from '../review/cells/plane.ts';
import { seriesToBounds } from '../series/series-to-bounds.ts';
import type { Given, GivenSet, Observed, Series } from '../series/series.ts';
import type { Ward } from '../ward/ward.ts';
import type { RulesSay } from './judge.ts';

/** What a map is drawn of. */
export interface MapGround {
  readonly compiled: Compiled;
  readonly axes: readonly [string, string];
  readonly held: Series;
  /** Where the case stands, in whole steps of the axes; null for a map of no case. */
  readonly at: { readonly x: number; readonly y: number } | null;
  /** The case whose values are held, where ordinary ones are of no patient whom the protocol is for; else null. */
  readonly heldAsIn: string | null;
  /** The case has earlier sets. The map is drawn of the last one alone, so it may say less than the answer does. */
  readonly isOfLastSet: boolean;
}

/** A map, or a sentence that says why there is none. */
export type MapOrWhy = MapGround | { readonly why: string };

const ofWard =
  'A map is drawn of one protocol, and this ward reads with several. Open one of them to see its map.';
const tooFew = 'There is no map: this protocol reads fewer than two numbers.';
const forNobody =
  'There is no map: the protocol is not for a patient with ordinary values, and no case gives others to hold.';
const notGiven =
  'There is no map: this case does not give two single numbers that could be used, one for each axis.';

/**
 * Where a case stands on the map, with everything else held at what the case gives; what it does not give is missing. On the axes are
 * the first two numbers that it gives, systolic and diastolic before others.
 */
export function caseOnMap(reads: Compiled | Ward, series: Series): MapOrWhy {
  if ('members' in reads) return { why: ofWard };
  const all = axesOf(reads);
  if (all.length < 2) return { why: tooFew };
  const sets = series.sets.filter(({ at }) => at === null || series.at === null || at <= series.at);
  const last = sets.toSorted((left, right) => (left.at ?? 0) - (right.at ?? 0)).at(-1);
  if (!last) return { why: notGiven };
  const held = { ...series, sets: [last] };
  const { present } = seriesToBounds(reads.protocol, held).facts;
  const isUsed = ({ name }: Axis): boolean => /^(?:given|earlier)$/.test(present.get(name)?.state ?? '');
  const placed = all.filter(isUsed).flatMap(({ name }) => {
    const step = stepIn(last, name);
    return step === null ? [] : [{ name, step }];
  });
  const [x, y] = placed;
  if (!x || !y) return { why: notGiven };
  return {
    compiled: reads,
    axes: [x.name, y.name],
    held,
    at: { x: x.step, y: y.step },
    heldAsIn: null,
    isOfLastSet: sets.length > 1,
  };
}

/** A single number, not a range. */
function stepIn({ observed }: GivenSet, name: string): number | null {
  const value = observed.get(name);
  return value?.kind === 'number' && value.low === value.high ? value.low : null;
}

/** A case by its name, with what it gives and what the rules say of it. */
export interface MapCase {
  readonly name: string;
  readonly series: Series;
  readonly rules: RulesSay;
}

/**
 * The map of a protocol by itself: what it needs is held at ordinary values, what only helps is missing. Ordinary values are those of
 * an adult; where the protocol is not for one, the values are held that its calmest case gives.
 */
export function protocolOnMap(reads: Compiled | Ward, cases: readonly MapCase[]): MapOrWhy {
  if ('members' in reads) return { why: ofWard };
  const [x, y] = axesOf(reads);
  if (!x || !y) return { why: tooFew };
  const held = ordinarySet(reads.protocol);
  if (seriesToOutcome(reads, held).level !== null)
    return {
      compiled: reads,
      axes: [x.name, y.name],
      held,
      at: null,
      heldAsIn: null,
      isOfLastSet: false,
    };
  const height = ({ rules }: MapCase): number => (rules?.atLeast ?? 0) * 100 + (rules?.couldBe ?? 0);
  const calmest = cases
    .filter(({ rules }) => rules !== null)
    .toSorted((left, right) => height(left) - height(right));
  for (const { name, series } of calmest) {
    const ground = caseOnMap(reads, series);
    if (!('why' in ground)) return { ...ground, at: null, heldAsIn: name };
  }
  return { why: forNobody };
}

const given: Given = { text: '', moved: false };

function ordinarySet({ observations }: Protocol): Series {
  const observed = new Map(
    [...observations.values()].flatMap((observation): [string, Observed][] => {
      const value = ordinaryOf(observation);
      return value ? [[observation.name, value]] : [];
    }),
  );
  const nothing = { standing: new Map(), limits: new Map() };
  return { at: null, atText: null, sets: [{ at: null, atText: null, observed }], ...nothing };
}

function ordinaryOf({ ordinary, role, kind }: Observation): Observed | null {
  if (ordinary === null || role === 'helps') return null;
  if (typeof ordinary === 'number')
    return { kind: 'number', low: ordinary, high: ordinary, value: ordinary, given };
  if (kind === 'several') return { kind, choices: ordinary, given };
  const [choice] = ordinary;
  return choice === undefined ? null : { kind: 'choice', choice, given };
}
