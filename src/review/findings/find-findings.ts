import { documentToCases } from '../../cases/document-to-cases.ts';
import { partAt, type Document } from '../../document/document.ts';
import { findingToProblem } from '../../document/finding-to-problem.ts';
import { Lines } from '../../document/lines.ts';
import { answersOf } from '../../outcome/answers.ts';
import type { Compiled } from '../../outcome/compile.ts';
import type { Problem } from '../../problems/problem.ts';
import { seriesToBounds } from '../../series/series-to-bounds.ts';
import { nearMiss } from '../../vocabulary/near-miss.ts';
import { Asking } from './asking.ts';
import type { Finding, Found, OpenQuestion } from './finding.ts';
import { kinds } from './kinds.ts';
import type { Accepted } from '../reasons-under.ts';
import { acceptedIn } from './accepted.ts';
import { openSentences } from './wording.ts';

/** What a protocol does not tell by itself. */
export interface Findings {
  readonly findings: readonly Finding[];
  readonly open: readonly OpenQuestion[];
  /** Answers to what is not found any more. */
  readonly problems: readonly Problem[];
}

/** A checked protocol, with its file as it was read, and its cases where there are some. */
export interface FindingsAsked {
  readonly compiled: Compiled;
  readonly document: Document;
  readonly cases: Document | null;
}

/** Asks every kind of finding of a protocol. Exact: what is found is shown by sets, or proven for all of them; the rest is told as open. */
export function findingsOf({ compiled, document, cases }: FindingsAsked): Findings {
  const known = cases ? documentToCases(cases, compiled.protocol).cases : [];
  const answers = known.map(({ series }) => answersOf(compiled, seriesToBounds(compiled.protocol, series)));
  const asking = new Asking(compiled, document, answers);
  const found = kinds.flatMap((kind) => [...kind(asking)]);
  const accepted = acceptedIn(document);
  const lines = new Lines(document.text);
  const line = ({ path }: Found): number => lines.at(partAt(document, path).node.span.start).index + 1;
  return {
    findings: found.flatMap((each) =>
      each.is === 'found' ? [withAnswer(each, line(each), accepted.get(each.name)?.accepted ?? null)] : [],
    ),
    open: found.flatMap((each) => (each.is === 'not_settled' ? [openQuestion(each, line(each))] : [])),
    problems: stale(accepted, found, document),
  };
}

function withAnswer(
  { kind, name, path, sentence, witnesses, needsAnswer }: Extract<Found, { is: 'found' }>,
  line: number,
  accepted: string | null,
): Finding {
  return { kind, name, path, line, sentence, witnesses, needsAnswer, accepted };
}

function openQuestion(
  { kind, name, path, because }: Extract<Found, { is: 'not_settled' }>,
  line: number,
): OpenQuestion {
  return { kind, name, path, line, because, sentence: openSentences[because] };
}

/** An answer to what is not found is to be looked at: the protocol has moved on. While the question is open, it stays. */
function stale(
  accepted: ReadonlyMap<string, Accepted>,
  found: readonly Found[],
  document: Document,
): Problem[] {
  const names = new Set(found.map(({ name }) => name));
  const unanswered = found.filter(({ name }) => !accepted.has(name));
  return [...accepted].flatMap(([name, { at, inherited }]) =>
    names.has(name) || inherited
      ? []
      : [
          findingToProblem(document, {
            code: 'finding_not_there',
            facts: { finding: name },
            path: ['findings', at, 'finding'],
            part: 'value',
            nearMiss: nearMiss(name, unanswered),
          }),
        ],
  );
}
