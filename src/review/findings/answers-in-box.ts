import type { Document } from '../../document/document.ts';
import { answersOf, type Answers } from '../../outcome/answers.ts';
import type { Compiled } from '../../outcome/compile.ts';
import { hasErrors } from '../../problems/problem.ts';
import { documentToSeries } from '../../series/document-to-series.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import type { Bounds } from '../../series/bounds.ts';
import { seriesToBounds } from '../../series/series-to-bounds.ts';
import { setVocabularyOf } from '../../series/set-reading.ts';
import type { Box } from '../box.ts';
import { boxToGiven } from '../examples/box-to-given.ts';

/** One set of a box as it is read from a case file; null when it cannot be read, or when something of it is refused. */
export function boundsInBox(box: Box, protocol: Protocol, document: Document): Bounds | null {
  const root = boxToGiven(box, protocol);
  const { series, problems } = documentToSeries({ ...document, root }, setVocabularyOf(protocol), {
    units: 'trade',
  });
  if (!series || hasErrors(problems)) return null;
  const bounds = seriesToBounds(protocol, series);
  return bounds.facts.refused.length > 0 ? null : bounds;
}

/** What a protocol answers to one set of a box; null as above. */
export function answersInBox(box: Box, compiled: Compiled, document: Document): Answers | null {
  const bounds = boundsInBox(box, compiled.protocol, document);
  return bounds && answersOf(compiled, bounds);
}
