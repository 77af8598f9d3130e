import type { Compiled } from '../outcome/compile.ts';
import { seriesToOutcome } from '../outcome/series-to-outcome.ts';
import { durationInWords, timeInWords } from '../outcome/time-in-words.ts';
import type { Problem } from '../problems/problem.ts';
import type { Series } from '../series/series.ts';
import { setVocabularyOf } from '../series/set-reading.ts';
import { textToSeries } from '../series/text-to-series.ts';
import type { Outcome, OutcomeInForce } from '../shape/generated/types.ts';
import type { Protocol } from '../protocol/protocol.ts';
import { answerHere, outcomesAsOne, protocolsAsOne } from '../ward/as-one.ts';
import { wardOutcomeOf } from '../ward/series-to-ward-outcome.ts';
import type { Ward } from '../ward/ward.ts';
import { coursesOf, type Course } from './course.ts';
import { formOf, type Form } from './form.ts';
import { handoffFacts } from './handoff-facts.ts';
import type { HandoffFacts } from './handoff.ts';
import { observedInWords } from './observed-in-words.ts';
import { sheetFacts } from './sheet-facts.ts';
import { sheetGaps } from './sheet-gaps.ts';
import { sheetLevel, type Here } from './sheet-level.ts';
import { sheetMeasures } from './sheet-measures.ts';
import { raisesInWords } from './sheet-raises.ts';
import { sheetWhy } from './sheet-why.ts';
import type { Said, Sheet } from './sheet.ts';
import { textToSets, type LocalTime } from './text-to-sets.ts';
import { titleOf } from './words.ts';
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
  readonly sheet: Sheet;
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
    read: (series) => [
      readingOf(seriesToOutcome(compiled, series), protocol, series, () => wouldRaise(compiled, series)),
    ],
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
      const plan = whole.plan ? `${whole.plan.title}. ${whole.plan.says}` : null;
      const here = { level: answerHere(whole, ward), plan };
      return [readingOf(outcome, protocol, series, () => raisesOfWard(ward, outcome, series), here)];
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
  outcome: Outcome,
  protocol: Protocol,
  series: Series,
  raises: () => readonly Change[],
  here?: Here,
): Reading {
  const sheet: Sheet = {
    title: outcome.title,
    edition: `${outcome.protocol}, edition ${outcome.edition}, ${outcome.digest.slice(0, 'sha256:'.length + 12)}`,
    at: outcome.at === null ? null : timeInWords(outcome.at),
    refused: outcome.refused.map(said(protocol)),
    questioned: outcome.questioned.map(said(protocol)),
    level: sheetLevel(outcome, protocol, here),
    gaps: sheetGaps(outcome, protocol),
    why: sheetWhy(outcome, protocol),
    notReassuring: outcome.rules.flatMap(({ title, not_reliable: because }) =>
      because === undefined ? [] : [`${title}: ${because.join('; ')}`],
    ),
    takenBack: outcome.rules.flatMap(({ title, taken_back_by: by }) =>
      by === undefined ? [] : [`${title}: ${by}`],
    ),
    measures: sheetMeasures(outcome, protocol),
    facts: sheetFacts(outcome, protocol),
    raises: outcome.level === null ? null : raisesInWords(raises(), protocol),
    stepDown: outcome.in_force ? stillInForce(outcome.in_force, protocol) : null,
    observed: observedInWords(series, protocol),
    caution: outcome.caution,
  };
  return { outcome, sheet, facts: handoffFacts(series, protocol), courses: coursesOf(series, protocol) };
}

const said =
  (protocol: Protocol) =>
  ({ observation, given, because }: Outcome['refused'][number]): Said => {
    const title = titleOf(observation, protocol);
    const namesIt = because.toLowerCase().includes(title.toLowerCase());
    return { observation, title, says: namesIt ? because : `${title} (${given}): ${because}` };
  };

/** A level of earlier sets that holds until its role agrees to step down, and how far the sets have come. */
function stillInForce(found: OutcomeInForce, { ladder }: Protocol): string {
  const title = ladder.levels.find(({ name }) => name === found.level)?.title ?? '';
  const minutes = (count: number): string => durationInWords(count * 60_000);
  const count =
    found.sets_asked === undefined
      ? ''
      : ` Sets in a row below it: ${found.sets_below} of ${found.sets_asked}, over ${minutes(found.minutes)} of ${minutes(found.minutes_asked ?? 0)}.`;
  const by = found.agreed_by ?? 'whoever is responsible';
  const then = found.may_step_down
    ? `The sets now allow stepping down; it holds until this person agrees: ${by}.`
    : `It may not be stepped down yet; then this person agrees: ${by}.`;
  return `Still in force: “${title}”, last called for at ${timeInWords(found.last_at)}.${count} ${then}`;
}
