import type { Compiled } from '../outcome/compile.ts';
import { seriesToOutcome } from '../outcome/series-to-outcome.ts';
import type { Problem } from '../problems/problem.ts';
import type { Series } from '../series/series.ts';
import { setVocabularyOf } from '../series/set-reading.ts';
import { textToSeries } from '../series/text-to-series.ts';
import type { Outcome } from '../shape/generated/types.ts';
import type { Protocol } from '../protocol/protocol.ts';
import { outcomesAsOne, protocolsAsOne } from '../ward/as-one.ts';
import { wardOutcomeOf } from '../ward/series-to-ward-outcome.ts';
import type { Ward } from '../ward/ward.ts';
import { coursesOf, type Course } from './course.ts';
import { formOf, type Form } from './form.ts';
import { handoffFacts } from './handoff-facts.ts';
import type { HandoffFacts } from './handoff.ts';
import { observedInWords } from './observed-in-words.ts';
import { outcomeToSheet, wardOutcomeToSheet } from './outcome-to-sheet.ts';
import { raisesInWords } from './sheet-raises.ts';
import type { BedsideSheet, Sheet } from './sheet.ts';
import { textToSets, type LocalTime } from './text-to-sets.ts';
import type { Change } from './would-change.ts';
import { wouldRaise } from './would-raise.ts';

/**
 * What the Bedside room reads with: what it needs, what only helps, and what it says of a series. A protocol is one; whatever
 * else reads several protocols as one can be another.
 */
export interface Reader {
  readonly form: Form;
  /** Reads a set or a series from JSON; null when it cannot be asked. */
  series(
    file: string,
    text: string,
  ): { readonly series: Series | null; readonly problems: readonly Problem[] };
  /** Earlier sets from a table that was typed or pasted. */
  table(file: string, text: string, localTime: LocalTime): ReturnType<typeof textToSets>;
  /** One reading for each protocol that reads; one for a protocol. */
  read(series: Series): readonly Reading[];
}

export interface Reading {
  readonly outcome: Outcome;
  readonly sheet: BedsideSheet;
  readonly facts: HandoffFacts;
  readonly courses: readonly Course[];
}

/** A protocol as what is read with. `protocolReader(compiled).read(series)[0]?.sheet.level.heading` is the level in words. */
export function protocolReader(compiled: Compiled): Reader {
  const { protocol } = compiled;
  return {
    form: formOf(protocol),
    series: (file, text) => textToSeries(file, text, setVocabularyOf(protocol)),
    table: (file, text, localTime) => textToSets(file, text, protocol, localTime),
    read: (series) => {
      const outcome = seriesToOutcome(compiled, series);
      const sheet = outcomeToSheet(outcome, protocol);
      return [readingOf({ outcome, sheet }, protocol, series, () => wouldRaise(compiled, series))];
    },
  };
}

/** A ward policy as what is read with: all its protocols as one, which is what a nurse acts on. */
export function wardReader(ward: Ward): Reader {
  const protocol = protocolsAsOne(ward);
  return {
    form: formOf(protocol),
    series: (file, text) => textToSeries(file, text, ward.vocabulary),
    table: (file, text, localTime) => textToSets(file, text, protocol, localTime),
    read: (series) => {
      const whole = wardOutcomeOf(ward, series);
      const outcome = outcomesAsOne(whole);
      const sheet = wardOutcomeToSheet(whole, ward);
      return [readingOf({ outcome, sheet }, protocol, series, () => raisesOfWard(ward, outcome, series))];
    },
  };
}

/** What would raise the level of all protocols together: what raises one of them above it. */
function raisesOfWard({ members, ladder }: Ward, { level }: Outcome, series: Series): Change[] {
  const reached = ladder.levels.findIndex(({ name }) => name === level?.at_least);
  return members.flatMap((compiled) =>
    wouldRaise(compiled, series).filter(({ level: found }) => (found.atLeast ?? 0) > reached),
  );
}

function readingOf(
  { outcome, sheet }: { readonly outcome: Outcome; readonly sheet: Sheet },
  protocol: Protocol,
  series: Series,
  raises: () => readonly Change[],
): Reading {
  return {
    outcome,
    sheet: {
      ...sheet,
      raises: outcome.level === null ? null : raisesInWords(raises(), protocol),
      observed: observedInWords(series, protocol),
    },
    facts: handoffFacts(series, protocol),
    courses: coursesOf(series, protocol),
  };
}
