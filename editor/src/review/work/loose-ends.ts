import {
  findingHeadings,
  findingsOf,
  lookForUnguarded,
  readDocument,
  readLadder,
  redCases,
  vitalSigns,
  type Compiled,
  type Document,
  type FindingsAsked,
} from '../../../../src/index.ts';
import { problemInWords } from '../../common/open-reader.ts';
import { nameOf } from '../../common/protocol-name.ts';
import type { LookedSoFar, LooseEnd, LooseEnds } from '../loose/loose-here.ts';
import type { Opening } from '../messages.ts';

/** A draft with its files as documents. */
export interface Drafted {
  readonly compiled: Compiled;
  readonly document: Document;
  readonly cases: Document | null;
}

/** The files of a protocol as documents; null when one of them cannot be read. */
export function draftedOf({ protocol: { file, text, cases } }: Opening, compiled: Compiled): Drafted | null {
  const { document } = readDocument(file, text);
  const ofCases = cases && readDocument(cases.file, cases.text).document;
  return document && { compiled, document, cases: ofCases };
}

/** What the rules do together that nobody may have meant. */
export function findingsHere(asked: FindingsAsked): LooseEnds {
  const { findings, open, problems } = findingsOf(asked);
  const found = findings.map(
    ({ kind, name, line, sentence, witnesses, accepted, needsAnswer }): LooseEnd => ({
      key: name,
      kind: 'finding',
      heading: findingHeadings[kind],
      line,
      says: sentence,
      shown: witnesses.map(({ words }) => words),
      yaml: witnesses.length === 0 ? null : witnesses.map(({ yaml }) => yaml).join(''),
      accepted,
      isOpen: needsAnswer && accepted === null,
    }),
  );
  const unsettled = open.map(({ kind, name, line, sentence }): LooseEnd => ({
    key: `open ${name}`,
    kind: 'open',
    heading: findingHeadings[kind],
    line,
    says: `${name}: ${sentence}`,
    shown: [],
    yaml: null,
    accepted: null,
    isOpen: true,
  }));
  return { ends: [...found, ...unsettled], problems: problems.map(problemInWords) };
}

/** So long, in milliseconds, is looked before the page hears how far it is. */
const slice = 250;

/** Every small change of the rules that no case notices. Told a little at a time. */
export function unguardedHere(
  { compiled, document, cases }: Drafted,
  opening: Opening,
  tell: (soFar: LookedSoFar) => void,
): LooseEnds {
  if (!cases) return none('It has no cases, so no case notices any change. Write one first.');
  const red = redCases(compiled.protocol, cases);
  if (red.length > 0)
    return none(`These cases do not come out as expected; mend them first: ${red.join('; ')}.`);
  const { of, steps } = lookForUnguarded({ document, compiled, cases, surroundings: around(opening) });
  const ends: LooseEnd[] = [];
  let next = performance.now() + slice;
  for (let looked = 0; looked < of; looked += 1) {
    const step = steps.next();
    if (step.done === true) break;
    if (step.value) ends.push(unguarded(step.value));
    if (performance.now() < next) continue;
    tell({ looked: looked + 1, of, ends: [...ends] });
    next = performance.now() + slice;
  }
  tell({ looked: of, of, ends });
  return { ends, problems: [] };
}

const none = (says: string): LooseEnds => ({ ends: [], problems: [says] });

type Unguarded = NonNullable<
  Extract<ReturnType<ReturnType<typeof lookForUnguarded>['steps']['next']>, { done?: false }>['value']
>;

const unguarded = ({ name, line, yaml, because, accepted }: Unguarded): LooseEnd => ({
  key: `change ${name}`,
  kind: 'unguarded',
  heading: 'Small changes that no case notices',
  line,
  says: name,
  shown: because === null ? [] : [because],
  yaml,
  accepted,
  isOpen: accepted === null,
});

/** What the draft is checked with, as the check of the file does. */
function around({ protocol, all }: Opening): Parameters<typeof lookForUnguarded>[0]['surroundings'] {
  const { ladder } = protocol.ladder
    ? readLadder(protocol.ladder.file, protocol.ladder.text)
    : { ladder: null };
  const texts = all.filter(({ kind }) => kind === 'protocol');
  const parents = new Map(texts.map((each) => [nameOf(each), { file: each.file, text: each.text }]));
  return { dictionary: vitalSigns, ladder, today: null, parents };
}
