import { inWords } from '../bedside/observed-in-words.ts';
import { handoffFacts } from '../bedside/handoff-facts.ts';
import { inTakingOrder } from '../bedside/taking-order.ts';
import { stepsInWords } from '../bedside/words.ts';
import { timeInWords } from '../outcome/time-in-words.ts';
import type { Observation, ObservationEntry, Protocol } from '../protocol/protocol.ts';
import type { GivenSet, Observed, Series } from '../series/series.ts';
import type { Story } from './stories.ts';

/** A case as it unfolds before a learner: nothing of what the rules make of it, and not its name, which often gives it away. */
export interface Drill {
  readonly story: string | null;
  /** The question to begin with. */
  readonly askFirst: string | null;
  /** What is known of the patient before anything is taken. */
  readonly patient: readonly DrillLine[];
  /** Facts and limits that somebody has stated for this patient, with who and until when. */
  readonly stated: readonly string[];
  /** Earlier sets, earliest first. */
  readonly earlier: readonly DrillSet[];
  /** When the present set was taken, in words; null for a set without a time. */
  readonly at: string | null;
  /** The present set part by part, in the order in which it is taken. */
  readonly parts: readonly DrillPart[];
  /** All that can be asked for, in the same order; what the case does not give is `not taken`. */
  readonly askable: readonly DrillLine[];
}

export interface DrillPart {
  readonly heading: string;
  readonly lines: readonly DrillLine[];
}

export interface DrillSet {
  readonly at: string;
  readonly lines: readonly DrillLine[];
}

export interface DrillLine {
  readonly observation: string;
  readonly title: string;
  readonly words: string;
}

type Line = readonly [ObservationEntry, Observed];

/** Unfolds a case. What is known of the patient comes with the story, the present set bit by bit. */
export function unfold({ story, series, teach }: Story, protocol: Protocol): Drill {
  const latest = Math.max(...series.sets.map(({ at }) => at ?? 0));
  const isPresent = ({ at }: GivenSet): boolean => (at ?? 0) === latest;
  const present = linesOf(series.sets.filter(isPresent), protocol);
  const ofPatient = ([{ name }]: Line): boolean => isOfPatient(protocol.observations.get(name));
  const taken = present.filter((line) => !ofPatient(line));
  const earlier = series.sets
    .filter((set) => !isPresent(set))
    .toSorted((left, right) => (left.at ?? 0) - (right.at ?? 0));
  const at = series.sets.find(isPresent)?.atText ?? null;
  return {
    story,
    askFirst: teach?.ask_first ?? null,
    patient: present.filter(ofPatient).map(lineOf),
    stated: [...handoffFacts(series, protocol).standing, ...limitsOf(series, protocol)],
    earlier: earlier.map((set) => ({
      at: timeInWords(set.atText ?? ''),
      lines: ordered(linesOf([set], protocol).filter((line) => !ofPatient(line))).flatMap(
        ({ lines }) => lines,
      ),
    })),
    at: at === null ? null : timeInWords(at),
    parts: ordered(taken),
    askable: askableOf(taken, protocol),
  };
}

const isOfPatient = (observation: Observation | undefined): boolean =>
  observation !== undefined && (observation.standing || observation.role === 'scope');

function linesOf(sets: readonly GivenSet[], { observations, vocabulary }: Protocol): Line[] {
  const said = new Map(sets.flatMap(({ observed }) => [...observed]));
  return [...said].flatMap(([name, observed]): Line[] => {
    const entry = observations.get(name) ?? vocabulary.get(name);
    return entry ? [[entry, observed]] : [];
  });
}

const lineOf = ([entry, observed]: Line): DrillLine => ({
  observation: entry.name,
  title: entry.title,
  words: inWords(observed, entry),
});

function ordered(lines: readonly Line[]): DrillPart[] {
  const byName = new Map(lines.map((line) => [line[0].name, line]));
  return inTakingOrder(lines.map(([entry]) => entry)).map(({ heading, entries }) => ({
    heading,
    lines: entries.flatMap(({ name }) => {
      const line = byName.get(name);
      return line ? [lineOf(line)] : [];
    }),
  }));
}

/** Everything that the protocol reads of a set, and what the case gives beside it: so the list does not give away what is there. */
function askableOf(taken: readonly Line[], protocol: Protocol): DrillLine[] {
  const given = new Map(taken.map((line) => [line[0].name, line]));
  const read = [...protocol.observations.values()].filter((each) => !isOfPatient(each));
  const all = new Map([...read, ...taken.map(([entry]) => entry)].map((entry) => [entry.name, entry]));
  return inTakingOrder([...all.values()])
    .flatMap(({ entries }) => entries)
    .map((entry) => {
      const line = given.get(entry.name);
      return line ? lineOf(line) : { observation: entry.name, title: entry.title, words: 'not taken' };
    });
}

function limitsOf({ limits: stated }: Series, { limits }: Protocol): string[] {
  return [...stated].flatMap(([name, { value, by, reason }]) => {
    const limit = limits.get(name);
    if (!limit || typeof value !== 'number') return [];
    const why = reason === null ? '' : `, because: ${reason}`;
    return [`${limit.title}: ${stepsInWords(value, limit)} (${by}${why})`];
  });
}
