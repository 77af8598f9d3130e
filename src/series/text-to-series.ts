import { jsonToDocument } from '../document/json-to-document.ts';
import { hasErrors, type Problem } from '../problems/problem.ts';
import { checkShape } from '../shape/check-shape.ts';
import { documentToSeries } from './document-to-series.ts';
import type { Series } from './series.ts';
import type { SetVocabulary } from './set-reading.ts';

/** Reads a set or a series from JSON, with UCUM units, for what a protocol or a ward knows by name. Null when it cannot be asked. */
export function textToSeries(
  file: string,
  text: string,
  vocabulary: SetVocabulary,
): { series: Series | null; problems: readonly Problem[] } {
  const { document, problems } = jsonToDocument(file, text);
  if (!document || hasErrors(problems)) return { series: null, problems };
  const shape = checkShape('set', document).problems;
  if (hasErrors(shape)) return { series: null, problems: [...problems, ...shape] };
  const read = documentToSeries(document, vocabulary, { units: 'ucum' });
  return {
    series: hasErrors(read.problems) ? null : read.series,
    problems: [...problems, ...shape, ...read.problems],
  };
}
