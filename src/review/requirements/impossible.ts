import type { LookBack, Observation } from '../../protocol/protocol.ts';
import type { Box } from './box.ts';
import type { Second } from './enter.ts';
import { hasValueName, lookBackName, type Space } from './space.ts';
import type { Subject } from './subject.ts';

/** Whether no set of a box can be, whether all can, or that some can; with the variables by which that is told. */
export type Impossible = (box: Box) => {
  readonly answer: 'yes' | 'no' | 'open';
  readonly by: readonly number[];
};

/** Something that cannot be: it is told for the lowest and highest values of some variables. */
interface Fact {
  readonly by: readonly number[];
  readonly broken: (low: (index: number) => number, high: (index: number) => number) => 'yes' | 'no' | 'open';
}

/** Contradictory values, values that no body of that age has, and look backs that do not fit one another, are no sets. */
export function impossibleOf(
  subject: Subject,
  space: Space,
  seconds: ReadonlyMap<number, Second>,
): Impossible {
  const facts = [
    ...contradictions(subject, space, seconds),
    ...ageBands(subject, space),
    ...lookBackFacts(subject, space),
  ];
  return ({ low, high }) => {
    const open: number[] = [];
    for (const { by, broken } of facts) {
      const answer = broken(
        (index) => low[by[index] as number] as number,
        (index) => high[by[index] as number] as number,
      );
      if (answer === 'yes') return { answer, by };
      if (answer === 'open') open.push(...by);
    }
    return { answer: open.length > 0 ? 'open' : 'no', by: open };
  };
}

/** In the first set, and in the second where the one of the two values has moved on. */
function contradictions(
  { contradictions: all }: Subject,
  space: Space,
  seconds: ReadonlyMap<number, Second>,
): Fact[] {
  return all.flatMap(({ lower, higher, mayBeEqual }): Fact[] => {
    const [first, second] = [space.find(lower), space.find(higher)];
    if (first === null || second === null) return [];
    const moved = (variable: number): number => {
      const how = seconds.get(variable);
      return how?.kind === 'moved' ? how.by : 0;
    };
    const gaps = new Set([0, moved(first) - moved(second)]);
    const least = mayBeEqual ? 0 : 1;
    return [...gaps].map((gap): Fact => ({
      by: [first, second],
      broken: (low, high) => {
        if (low(0) + least + gap > high(1)) return 'yes';
        return high(0) + least + gap > low(1) ? 'open' : 'no';
      },
    }));
  });
}

function ageBands({ observations }: Subject, space: Space): Fact[] {
  const age = space.find('age');
  if (age === null) return [];
  return [...observations.values()].flatMap((observation): Fact[] => {
    const { kind, possible, name } = observation;
    if (kind !== 'number' || possible.length < 2) return [];
    return [
      {
        by: [space.at(name), age],
        broken: (low, high) => {
          const touched = bandsTouched(observation, low(1), high(1));
          const fits = (band: { low: number; high: number }): boolean =>
            low(0) <= band.high && high(0) >= band.low;
          if (!touched.some(fits)) return 'yes';
          return touched.every((band) => low(0) >= band.low && high(0) <= band.high) ? 'no' : 'open';
        },
      },
    ];
  });
}

function bandsTouched({ possible }: Observation, from: number, to: number): Observation['possible'] {
  return possible.filter(({ ageBelow }, index) => {
    const start = possible[index - 1]?.ageBelow ?? -Infinity;
    return to >= start && (ageBelow === null || from < ageBelow);
  });
}

/** Of look backs over the same sets: the lowest is no higher than any other, and the highest no lower. */
function lookBackFacts({ parts }: Subject, space: Space): Fact[] {
  const all = parts.flatMap(({ protocol }) =>
    [...protocol.measures.values()].flatMap(({ name, how }) => ('over' in how ? [{ name, how }] : [])),
  );
  const values = all.filter(({ how }) =>
    ['lowest', 'average', 'earliest', 'latest', 'highest'].includes(how.kind),
  );
  const pairs = values.flatMap((one) =>
    values.flatMap((two): Fact[] => {
      const inOrder = one.how.kind === 'lowest' || two.how.kind === 'highest';
      return inOrder && one.name !== two.name && sameSets(one.how, two.how)
        ? [notAbove(one.name, two.name, space)]
        : [];
    }),
  );
  return [...pairs, ...values.flatMap(({ name, how }) => presentOne(name, how, space))];
}

const sameSets = (one: LookBack, two: LookBack): boolean =>
  one.observation === two.observation &&
  one.over === two.over &&
  one.presentSet === two.presentSet &&
  JSON.stringify(one.where) === JSON.stringify(two.where);

/** While both have a value. */
const notAbove = (lower: string, higher: string, space: Space): Fact => ({
  by: [lookBackName(lower), lookBackName(higher), hasValueName(lower), hasValueName(higher)].map((name) =>
    space.at(name),
  ),
  broken: (low, high) => {
    if (high(2) === 0 || high(3) === 0 || high(0) <= low(1)) return 'no';
    return low(2) === 1 && low(3) === 1 && low(0) > high(1) ? 'yes' : 'open';
  },
});

/** The present set is one of those that are looked at, so that there is a value, and the present one lies between lowest and highest. */
function presentOne(name: string, { kind, observation, where, presentSet }: LookBack, space: Space): Fact[] {
  const present = observation === null ? null : space.find(observation);
  if (present === null || where !== null || presentSet === 'left_out') return [];
  const there: Fact = {
    by: [space.at(hasValueName(name))],
    broken: (low, high) => (high(0) === 0 ? 'yes' : low(0) === 0 ? 'open' : 'no'),
  };
  const by = [space.at(lookBackName(name)), present];
  const below: Fact = {
    by,
    broken: (low, high) => (low(0) > high(1) ? 'yes' : high(0) > low(1) ? 'open' : 'no'),
  };
  const above: Fact = {
    by,
    broken: (low, high) => (high(0) < low(1) ? 'yes' : low(0) < high(1) ? 'open' : 'no'),
  };
  if (kind === 'lowest') return [there, below];
  if (kind === 'highest') return [there, above];
  return kind === 'latest' ? [there, below, above] : [there];
}
