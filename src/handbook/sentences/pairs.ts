import type { Asks } from '../../protocol/requirements/requirement.ts';
import { between, cutAt, every } from './apart.ts';
import { fromSteps, readIn, sayNumber, toWholeSteps } from './numbers.ts';
import { plain, type Sentence } from './sentence.ts';
import { readChoice, readObservation, sayChoice, sayThing, type Speaker } from './speaker.ts';

type Worse = Extract<Asks, { kind: 'getting_worse_never_lowers' }>;
type Hiding = Extract<Asks, { kind: 'nothing_hides' }>;

const when = 'When ';
const step = ' alone is one step ';
const noLower = ', the level is no lower.';
const inOrder = ' alone goes one place on in this order, the level is no lower:';
const ways = { up: 'higher', down: 'lower' } as const;

/** `When the systolic pressure alone is one step lower, from 60 mmHg to 220 mmHg, the level is no lower.` Both ends are included. */
export function sayWorse({ observation, way }: Worse, speaker: Speaker): Sentence {
  const thing = sayThing(observation, speaker);
  if ('through' in way)
    return {
      text: `${when}${thing}${inOrder}`,
      of: way.through.map((each) => plain(sayChoice(each, observation, speaker))),
    };
  const { stepsPerUnit, unit } = speaker.observation(observation);
  const end = (steps: number): string => sayNumber(fromSteps(steps, stepsPerUnit), unit);
  return plain(
    `${when}${thing}${step}${ways[way.going]}, from ${end(way.low)} to ${end(way.high)}${noLower}`,
  );
}

/** The same back; null for what is not said so. */
export function readWorse({ text, of }: Sentence, speaker: Speaker): Worse | null {
  const kind = 'getting_worse_never_lowers';
  const ordered = readObservation(between(text, when, inOrder) ?? '', speaker);
  if (ordered) {
    const through = every(of, (each) => readChoice(each.text, ordered.name, speaker));
    return through && { kind, observation: ordered.name, way: { through } };
  }
  const [thing, rest] = cutAt(between(text, when, noLower) ?? '', step) ?? ['', ''];
  const observation = readObservation(thing, speaker);
  const [, word, from = '', to = ''] = /^(higher|lower), from (.+) to (.+)$/u.exec(rest) ?? [];
  if (!observation || word === undefined) return null;
  const [low, high] = [from, to].map((words) => {
    const number = readIn(words, observation.unit);
    return number && toWholeSteps(number, observation.stepsPerUnit);
  }) as [number | null, number | null];
  const going = word === ways.up ? 'up' : 'down';
  return low === null || high === null
    ? null
    : { kind, observation: observation.name, way: { going, low, high } };
}

const usual =
  'what is needed, of what tells for whom this is and of what only an exception reads, alone or together';
const named = (count: number): string => (count === 1 ? 'this one' : `these ${count}, alone or together`);
const couldBe = (what: string): string =>
  `Whatever is left blank of ${what}, what the level could be is no lower than the level with everything given`;
const blank = 'may be left blank: ';
const excepted = 'is excepted, because it can hide something: ';

/** What may be left blank stands below, and what is excepted by name. */
export function sayHiding({ blank: names, except }: Hiding, speaker: Speaker): Sentence {
  const line = (start: string, name: string): Sentence => plain(`${start}${sayThing(name, speaker)}`);
  const of = [
    ...(names ?? []).map((name) => line(blank, name)),
    ...except.map((name) => line(excepted, name)),
  ];
  return {
    text: `${couldBe(names ? named(names.length) : usual)}${of.length > 0 ? ':' : '.'}`,
    of,
  };
}

/** The same back; null for what is not said so. */
export function readHiding({ text, of }: Sentence, speaker: Speaker): Hiding | null {
  const under = (start: string): string[] =>
    of.flatMap((each) => readObservation(between(each.text, start) ?? '', speaker)?.name ?? []);
  const [names, except] = [under(blank), under(excepted)];
  const said = text.slice(0, -1);
  if (said === couldBe(usual)) return { kind: 'nothing_hides', blank: null, except };
  return said === couldBe(named(names.length)) ? { kind: 'nothing_hides', blank: names, except } : null;
}
