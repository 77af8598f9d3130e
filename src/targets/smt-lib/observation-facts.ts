import type { Observation, Protocol } from '../../protocol/protocol.ts';
import { ageSpan } from './age-spans.ts';
import type { AskedSets } from './sets.ts';
import { smt, type Smt } from './smt.ts';
import { every, flag, some } from './terms.ts';

/** What holds of an observation's inputs in every one of the sets. */
export function observationFacts(
  observation: Observation,
  protocol: Protocol,
  sets: AskedSets,
): readonly Smt[] {
  const { name } = observation;
  const unobtainable = `${name}:unobtainable`;
  const whole = nothing(observation, protocol);
  const isGiven = [...given(observation, protocol, sets), ...isThere(observation, sets)];
  const isNothing = [...whole, ...isLacking(observation, true)];
  const isAssumed = assumed(observation)?.concat(isLacking(observation, false)) ?? null;
  const absent = sets.absent?.get(name);
  if (absent === 'assumed') {
    if (!isAssumed) throw new Error(`nothing is assumed for ${name}`);
    return [...isAssumed, flag(unobtainable, false)];
  }
  if (absent) return [...isNothing, flag(unobtainable, absent === 'unobtainable')];
  if (sets.given === 'complete') return isGiven;
  // An earlier value that stands in is known, and counts as its whole range where it settles nothing.
  const standsIn = sets.given === 'any' ? [[...whole, flag(`${name}:known`, true)]] : [];
  const ways = [isGiven, isNothing, ...(isAssumed ? [isAssumed] : []), ...standsIn];
  return [some(ways.map(every))];
}

/** The flags of what is there. What an earlier set gave, or what somebody stated, can at once be tried and not obtained. */
function isThere(observation: Observation, { given: how }: AskedSets): Smt[] {
  const { name, standing } = observation;
  const isTriedToo = how === 'any' || (how === 'partial' && standing);
  return [
    flag(`${name}:known`, true),
    ...(isTriedToo ? [] : [flag(`${name}:unobtainable`, false)]),
    ...missing(observation, false),
  ];
}

/** The flags of what is not known. */
const isLacking = (observation: Observation, isMissing: boolean): Smt[] => [
  flag(`${observation.name}:known`, false),
  ...missing(observation, isMissing),
];

const missing = ({ name, role }: Observation, is: boolean): Smt[] =>
  role === 'helps' ? [flag(`${name}:missing`, is)] : [];

const ends = (name: string): readonly [low: string, high: string] => [`${name}:low`, `${name}:high`];

const choicesOf = ({ name, choices }: Observation, part: 'may' | 'sure'): string[] =>
  choices.map(({ choice }) => `${name}:${part}:${choice}`);

/** The value of what is there: inside what is possible and what is asked for. */
function given(observation: Observation, protocol: Protocol, sets: AskedSets): readonly Smt[] {
  if (observation.kind === 'several') return severalGiven(observation, sets);
  if (observation.kind !== 'number') return [choiceGiven(observation, sets)];
  const [low, high] = ends(observation.name);
  const range = sets.ranges?.get(observation.name);
  return [
    ...ageSpan(observation, protocol).inside(low, high),
    sets.given === 'any' ? smt`(<= ${low} ${high})` : smt`(= ${low} ${high})`,
    ...(range ? [smt`(<= ${range[0]} ${low})`, smt`(<= ${high} ${range[1]})`] : []),
  ];
}

/** Exactly one choice, one of those that are asked for. */
function choiceGiven(observation: Observation, sets: AskedSets): Smt {
  const asked = sets.choices?.get(observation.name);
  const all = choicesOf(observation, 'may');
  const ways = observation.choices.flatMap(({ choice }, index) =>
    asked?.includes(choice) === false ? [] : [every(all.map((each, place) => flag(each, place === index)))],
  );
  return some(ways);
}

/** Each choice that may be in surely is. */
function severalGiven(observation: Observation, sets: AskedSets): Smt[] {
  const sure = choicesOf(observation, 'sure');
  return choicesOf(observation, 'may').flatMap((may, index) => {
    const answers = sets.choices?.get(`${observation.name}:${observation.choices[index]?.choice ?? ''}`);
    return [
      smt`(= ${may} ${sure[index] ?? ''})`,
      ...(answers?.includes('yes') === false ? [flag(may, false)] : []),
      ...(answers?.includes('no') === false ? [flag(may, true)] : []),
    ];
  });
}

/** All that it could be: its whole possible range, or every choice, none of them for sure. */
function nothing(observation: Observation, protocol: Protocol): readonly Smt[] {
  if (observation.kind === 'number') return ageSpan(observation, protocol).whole(...ends(observation.name));
  const sure = observation.kind === 'several' ? choicesOf(observation, 'sure') : [];
  return [
    ...choicesOf(observation, 'may').map((each) => flag(each, true)),
    ...sure.map((each) => flag(each, false)),
  ];
}

/** What counts as long as nobody states it; null where nothing does. */
function assumed(observation: Observation): Smt[] | null {
  const { name, ifNotStated, standing, choices } = observation;
  if (!standing || ifNotStated === null) return null;
  if (typeof ifNotStated === 'number') return ends(name).map((end) => smt`(= ${end} ${ifNotStated})`);
  return choicesOf(observation, 'may').map((each, index) =>
    flag(each, choices[index]?.choice === ifNotStated),
  );
}
