import type { ObservationEntry, Protocol } from '../../protocol/protocol.ts';
import { comparisonsIn } from '../../protocol/walk.ts';
import type { Unit } from '../../vocabulary/units.ts';
import { labelsOf, type Labels } from './labels.ts';

/** What everything in one protocol is called in its sentences; the same to say them and to read them back. */
export interface Speaker {
  readonly protocol: Protocol;
  /** Observations, measures and limits. */
  readonly things: Labels;
  readonly rules: Labels;
  readonly faults: Labels;
  readonly levels: Labels;
  choices(observation: string): Labels;
  /** One that the protocol reads, or that its faults of technique look at. */
  observation(name: string): ObservationEntry;
  isObservation(name: string): boolean;
  /** The unit in which a number is said that is compared with this; null for a plain number. */
  unitOf(name: string): Unit | null;
}

export function speakerOf(protocol: Protocol): Speaker {
  const { limits, measures, rules, faults, ladder } = protocol;
  const observations = observationsOf(protocol);
  const observation = (name: string): ObservationEntry => {
    const found = observations.get(name);
    if (!found) throw new Error(`no observation is called ${name}`);
    return found;
  };
  const choices = new Map(
    [...observations.values()].map((each) => [
      each.name,
      labelsOf(each.choices.map(({ choice, title }) => ({ name: choice, title }))),
    ]),
  );
  return {
    protocol,
    things: labelsOf([...observations.values(), ...limits.values(), ...measures.values()]),
    rules: labelsOf(rules),
    faults: labelsOf(faults),
    levels: labelsOf(ladder.levels),
    choices: (name) => choices.get(name) ?? labelsOf([]),
    observation,
    isObservation: (name) => observations.has(name),
    unitOf: (name) => (observations.get(name) ?? measures.get(name) ?? limits.get(name))?.unit ?? null,
  };
}

/** Of a ward, a protocol has the faults of technique of all others too; what they look at, it may not read itself. */
function observationsOf({
  observations,
  vocabulary,
  faults,
}: Protocol): ReadonlyMap<string, ObservationEntry> {
  const named = faults.flatMap(({ when, readsHigh, readsLow }) => [
    ...[...comparisonsIn(when)].map((each) =>
      each.kind === 'compare' ? each.subject.name : each.observation,
    ),
    ...readsHigh.keys(),
    ...readsLow.keys(),
  ]);
  const more = named.flatMap((name): [string, ObservationEntry][] => {
    const entry = observations.has(name) ? undefined : vocabulary.get(name);
    return entry ? [[name, entry]] : [];
  });
  return new Map([...observations, ...more]);
}

/** Whether the observation is asked as a question that is answered with yes or no. */
const isQuestion = (name: string, speaker: Speaker): boolean =>
  speaker.isObservation(name) && speaker.observation(name).kind === 'yes_no';

/** An observation or a measure in a sentence: `the heart rate`; `the answer to “head injury”`. */
export const sayThing = (name: string, speaker: Speaker): string =>
  isQuestion(name, speaker)
    ? `the answer to ${speaker.things.quoted(name)}`
    : `the ${speaker.things.of(name)}`;

/** A choice in a sentence, as it is ticked on a chart: `“newly confused”`; of a question `yes`. */
export const sayChoice = (choice: string, observation: string, speaker: Speaker): string =>
  isQuestion(observation, speaker) ? choice : speaker.choices(observation).quoted(choice);

export const readChoice = (words: string, observation: string, speaker: Speaker): string | null => {
  const choice = isQuestion(observation, speaker) ? words : speaker.choices(observation).nameOf(words);
  const isOne = speaker.observation(observation).choices.some((each) => each.choice === choice);
  return isOne && choice !== undefined && sayChoice(choice, observation, speaker) === words ? choice : null;
};

/** The name that such words stand for; null when they stand for none, or are not as they are said. */
export function readThing(words: string, speaker: Speaker): string | null {
  const name = speaker.things.nameOf(words.replace(/^the (?:answer to )?/, ''));
  return name !== undefined && !speaker.protocol.limits.has(name) && sayThing(name, speaker) === words
    ? name
    : null;
}

/** The observation that such words stand for. */
export function readObservation(words: string, speaker: Speaker): ObservationEntry | null {
  const name = readThing(words, speaker);
  return name !== null && speaker.isObservation(name) ? speaker.observation(name) : null;
}
