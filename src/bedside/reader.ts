import type { Compiled } from '../outcome/compile.ts';
import { outcomeOf } from '../outcome/bounds-to-outcome.ts';
import { timeInWords } from '../outcome/time-in-words.ts';
import { seriesToBounds } from '../series/series-to-bounds.ts';
import type { Problem } from '../problems/problem.ts';
import type { Series } from '../series/series.ts';
import { textToSeries } from '../series/text-to-series.ts';
import type { Outcome } from '../shape/generated/types.ts';
import type { Protocol } from '../protocol/protocol.ts';
import { coursesOf, type Course } from './course.ts';
import { formOf, type Form } from './form.ts';
import { handoffFacts } from './handoff-facts.ts';
import type { HandoffFacts } from './handoff.ts';
import { observedInWords } from './observed-in-words.ts';
import { sheetFacts } from './sheet-facts.ts';
import { sheetGaps } from './sheet-gaps.ts';
import { sheetLevel } from './sheet-level.ts';
import { sheetMeasures } from './sheet-measures.ts';
import { raisesInWords } from './sheet-raises.ts';
import { sheetWhy } from './sheet-why.ts';
import type { Said, Sheet } from './sheet.ts';
import { countInWords, stepDownOf, type StepDown } from './step-down.ts';
import { textToSets, type LocalTime } from './text-to-sets.ts';
import { titleOf } from './words.ts';
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
  return {
    form: formOf(compiled.protocol),
    series: (file, text) => textToSeries(file, text, compiled.protocol),
    table: (file, text, localTime) => textToSets(file, text, compiled.protocol, localTime),
    read: (series) => [readingOf(compiled, series)],
  };
}

function readingOf(compiled: Compiled, series: Series): Reading {
  const { protocol } = compiled;
  const outcome = outcomeOf(compiled, seriesToBounds(protocol, series));
  const stepDown = stepDownOf(compiled, series);
  const sheet: Sheet = {
    title: outcome.title,
    edition: `${outcome.protocol}, edition ${outcome.edition}, ${outcome.digest.slice(0, 'sha256:'.length + 12)}`,
    at: outcome.at === null ? null : timeInWords(outcome.at),
    refused: outcome.refused.map(said(protocol)),
    questioned: outcome.questioned.map(said(protocol)),
    level: sheetLevel(outcome, protocol),
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
    raises: outcome.level === null ? null : raisesInWords(wouldRaise(compiled, series), protocol),
    stepDown: stepDown && stepDownInWords(stepDown, protocol),
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

function stepDownInWords(found: StepDown, { ladder }: Protocol): string {
  const title = ladder.levels[found.level]?.title ?? '';
  const since = found.since === null ? '' : ` (${timeInWords(found.since)})`;
  const then = found.complete
    ? `The count is complete; whether to step down is for this person to agree: ${found.agreedBy}.`
    : `Until the count is complete, and this person agrees, it stays: ${found.agreedBy}.`;
  return `An earlier set called for “${title}”${since}. Counted since: ${countInWords(found)}. ${then}`;
}
