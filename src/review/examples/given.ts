import type { Document, MapNode } from '../../document/document.ts';
import { answersOf } from '../../outcome/answers.ts';
import type { Compiled } from '../../outcome/compile.ts';
import { hasErrors } from '../../problems/problem.ts';
import { documentToSeries } from '../../series/document-to-series.ts';
import { seriesToBounds } from '../../series/series-to-bounds.ts';
import { setVocabularyOf } from '../../series/set-reading.ts';
import type { Answered } from './answered.ts';
import { telling, type Telling } from './telling.ts';

/** What a case gives: one set, or a series of them. */
export interface Given {
  readonly key: 'given' | 'series';
  readonly node: MapNode;
}

/** A protocol and the changed one, and the case file that an example is for. */
export interface Both {
  readonly before: Compiled;
  readonly after: Compiled;
  readonly cases: Document;
}

/** What both protocols answer; null when the set cannot be read. */
export function answersTo({ node }: Given, { before, after, cases }: Both): [Answered, Answered] | null {
  const document = { ...cases, root: node };
  const { series, problems } = documentToSeries(document, setVocabularyOf(before.protocol), {
    units: 'trade',
  });
  if (!series || hasErrors(problems)) return null;
  const [first, second] = [before, after].map((compiled): Answered => ({
    compiled,
    answers: answersOf(compiled, seriesToBounds(compiled.protocol, series)),
  }));
  return first && second ? [first, second] : null;
}

/** What tells the two apart for what is given; null when nothing does. */
export function tells(given: Given, both: Both): Telling | null {
  const answers = answersTo(given, both);
  return answers && telling(...answers);
}
