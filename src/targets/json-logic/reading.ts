import type { Input } from '../../logic/inputs.ts';
import {
  and,
  either,
  highest,
  less,
  lessOrSame,
  lowest,
  not,
  or,
  sum,
  times,
  variable,
  type Logical,
} from '../../logic/operators.ts';
import { ageOfBands } from '../../logic/set-to-json.ts';
import type { ObservationEntry, Protocol } from '../../protocol/protocol.ts';
import { possibleRange } from '../../vocabulary/possible-range.ts';
import { wholePair } from '../../vocabulary/whole-pair.ts';
import type { TargetFault } from '../with-faults.ts';

/** Steps that stand before all others: they read what a set says, and find out what of it counts. */
export interface ReadingStep {
  readonly step: string;
  readonly is: Logical;
}

/** What was given, as whoever reads a set puts it in: `systolic:given`, `:from`, `:to`; `consciousness:gave:alert`. */
const given = (name: string, part: string): Logical => variable(`${name}:${part}`);

interface Age {
  readonly known: Logical;
  readonly low: Logical;
  readonly high: Logical;
}
const ageOf = (known: string, low: string, high: string): Age => ({
  known: given('age', known),
  low: given('age', low),
  high: given('age', high),
});

/**
 * The steps by which the values of a set are refused, or count: `systolic:fits` where it is possible at this age, `:counts` where it does not
 * contradict either, `:refused` where it was given and does not count.
 */
export function readingOf(protocol: Protocol): readonly ReadingStep[] {
  const entries = [...protocol.observations.values(), ...ageOfBands(protocol)];
  const isAge = ({ name }: ObservationEntry): boolean => name === 'age';
  const ageFirst = [...entries.filter(isAge), ...entries.filter((entry) => !isAge(entry))];
  const fits = ageFirst.map((entry) => ({ step: `${entry.name}:fits`, is: fitsAt(entry) }));
  const names = new Set(entries.map(({ name }) => name));
  const pairs = protocol.contradictions.filter(({ lower, higher }) => names.has(lower) && names.has(higher));
  const clashes = pairs.map((pair, index) => ({
    step: `contradictions/${index}`,
    is: clashOf(pair, protocol),
  }));
  const counts = entries.flatMap(({ name }) => {
    const own = pairs.flatMap(({ lower, higher }, index) =>
      lower === name || higher === name ? [variable(`contradictions/${index}`)] : [],
    );
    return [
      { step: `${name}:counts`, is: and(given(name, 'fits'), not(or(...own))) },
      { step: `${name}:refused`, is: and(given(name, 'given'), not(given(name, 'counts'))) },
    ];
  });
  return [...fits, ...clashes, ...counts];
}

function fitsAt(entry: ObservationEntry): Logical {
  const { name, kind } = entry;
  if (kind !== 'number') return given(name, 'given');
  const { least, most } = possibleAt(entry, ageOf('fits', 'from', 'to'));
  return and(
    given(name, 'given'),
    lessOrSame(least, given(name, 'from')),
    lessOrSame(given(name, 'to'), most),
  );
}

function clashOf(
  { lower, higher, mayBeEqual }: Protocol['contradictions'][number],
  { vocabulary }: Protocol,
): Logical {
  const [below, above] = [vocabulary.get(lower), vocabulary.get(higher)];
  if (!below || !above) return false;
  const { scale, factor, shift } = wholePair(below, above);
  const gap = sum([times(factor, given(higher, 'to')), shift, times(-scale, given(lower, 'from'))]);
  return and(given(lower, 'fits'), given(higher, 'fits'), less(gap, mayBeEqual ? 0 : 1));
}

/** What is possible, over every band that the age touches; at any age where it is not known. */
function possibleAt(entry: ObservationEntry, age: Age): { readonly least: Logical; readonly most: Logical } {
  const { possible } = entry;
  const hull = possibleRange(entry);
  if (possible.length === 1) return { least: hull.low, most: hull.high };
  const touched = possible.map(({ ageBelow }, index) => {
    const begins = possible[index - 1]?.ageBelow ?? null;
    const inside = and(
      ageBelow === null ? true : less(age.low, ageBelow),
      begins === null ? true : lessOrSame(begins, age.high),
    );
    return or(not(age.known), inside);
  });
  const each = (make: (band: (typeof possible)[number]) => number, otherwise: number): Logical[] =>
    possible.map((band, index) => either(touched[index] as Logical, make(band), otherwise));
  return {
    least: lowest(each(({ low }) => low, hull.high)),
    most: highest(each(({ high }) => high, hull.low)),
  };
}

/** What an input of an observation is, over the steps above; null for the inputs that a set does not give. */
export function inputOf(
  input: Input,
  otherwise: number | undefined,
  { observations }: Protocol,
): Logical | null {
  const entry = observations.get(input.owner);
  if (!entry) return null;
  const { name } = entry;
  const counts = given(name, 'counts');
  const missing = otherwise ?? 0;
  switch (input.part) {
    case 'unobtainable':
      return given(name, 'tried');
    case 'known':
      return either(counts, 1, 0);
    case 'missing':
      return either(counts, 0, either(given(name, 'refused'), 1, missing));
    case 'low':
    case 'high': {
      const { least, most } = possibleAt(entry, ageOf('fits', 'from', 'to'));
      const [end, open] = input.part === 'low' ? (['from', least] as const) : (['to', most] as const);
      const isAssumed = entry.standing && entry.ifNotStated !== null;
      const none = isAssumed ? either(given(name, 'refused'), open, missing) : open;
      return either(counts, given(name, end), none);
    }
    default:
      return either(counts, given(name, `gave:${input.choice ?? ''}`), missing);
  }
}

/** An end of a number with room for the truth, where faults of technique are there; null for what no fault touches. */
export function widenedInput(
  input: Input,
  faults: readonly TargetFault[],
  { observations }: Protocol,
): Logical | null {
  const entry = observations.get(input.owner);
  if (!entry || (input.part !== 'low' && input.part !== 'high')) return null;
  const isLow = input.part === 'low';
  const amounts = faults.flatMap(({ isThere, readsHigh, readsLow }) => {
    const by = (isLow ? readsHigh : readsLow).get(entry.name);
    return by === undefined ? [] : [either(isThere, isLow ? -by : by, 0)];
  });
  if (amounts.length === 0) return null;
  const { least, most } = possibleAt(entry, ageOf('known', 'low', 'high'));
  const own = variable(input.name);
  const moved = sum([own, ...amounts]);
  return either(given(entry.name, 'known'), isLow ? highest([least, moved]) : lowest([most, moved]), own);
}
