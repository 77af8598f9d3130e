import type { Document, MapNode } from '../../document/document.ts';
import { answersOf, type Answers, type LevelAnswer } from '../../outcome/answers.ts';
import type { Compiled } from '../../outcome/compile.ts';
import { hasErrors } from '../../problems/problem.ts';
import type { Ladder } from '../../protocol/protocol.ts';
import type { Requirements } from '../../protocol/requirements/read-requirements.ts';
import { documentToSeries } from '../../series/document-to-series.ts';
import { seriesToBounds } from '../../series/series-to-bounds.ts';
import { setVocabularyOf, type SetVocabulary } from '../../series/set-reading.ts';
import { mergeLevels } from '../../ward/merge-levels.ts';
import type { Ward } from '../../ward/ward.ts';

/** A protocol or a ward policy, as something that sets are put to one by one. */
export interface Reads extends Requirements {
  readonly kind: 'protocol' | 'ward';
  readonly name: string;
  readonly ladder: Ladder;
  readonly members: readonly Compiled[];
  readonly vocabulary: SetVocabulary;
}

export function readsOf(asked: Compiled | Ward): Reads {
  if ('members' in asked) {
    const { name, ladder, members, vocabulary, hazards, requirements } = asked;
    return { kind: 'ward', name, ladder, members, vocabulary, hazards, requirements };
  }
  const { protocol } = asked;
  const { name, ladder, hazards, requirements } = protocol;
  const vocabulary = setVocabularyOf(protocol);
  return { kind: 'protocol', name, ladder, members: [asked], vocabulary, hazards, requirements };
}

/** What the evaluator says of one set or series, from its text on: the level of all together, and what each protocol answers. */
export interface Evaluated {
  readonly level: LevelAnswer | null;
  readonly each: readonly Answers[];
}

/** Null when the set is refused, or a part of it: then it is no example of anything. */
export function evaluated({ members, vocabulary }: Reads, given: MapNode): Evaluated | null {
  const document: Document = { file: '', text: '', root: given };
  const { series, problems } = documentToSeries(document, vocabulary, { units: 'trade' });
  if (!series || hasErrors(problems)) return null;
  const bounds = members.map(({ protocol }) => seriesToBounds(protocol, series));
  if (bounds.some(({ facts }) => facts.refused.length > 0)) return null;
  const each = members.map((compiled, index) =>
    answersOf(compiled, bounds[index] as (typeof bounds)[number]),
  );
  return { level: mergeLevels(each.map(({ level }) => level)), each };
}
