import {
  protocolReader,
  readEdition,
  readLadder,
  readProtocol,
  readWard,
  wardReader,
  type Reader,
} from '../../../src/index.ts';
import { answerQuestions } from '../common/answer-questions.ts';
import { localTime } from '../common/clock.ts';
import type { SiteProtocol } from '../common/site-protocol.ts';
import type { Answers, Question } from './messages.ts';

/** What the room reads with; null before one is opened. */
let reader: Reader | null = null;

interface Problem {
  readonly line: number;
  readonly says: string;
  readonly expected: string | null;
  readonly near_miss: string | null;
}

function inWords({ line, says, expected, near_miss: near }: Problem): string {
  const more = [
    expected === null ? '' : ` Expected: ${expected}.`,
    near === null ? '' : ` Did you mean “${near}”?`,
  ];
  return `Line ${line}: ${says}${more.join('')}`;
}

const nameOf = ({ id }: SiteProtocol): string => id.split('/').at(-1) ?? id;

type Opening = { readonly reader: Reader | null; readonly problems: readonly Problem[] };

function openProtocol({ file, text, ladder: given }: SiteProtocol, all: readonly SiteProtocol[]): Opening {
  const ladder = given ? readLadder(given.file, given.text) : { ladder: null, problems: [] };
  const parents = new Map(all.map((each) => [nameOf(each), { file: each.file, text: each.text }]));
  const { protocol, problems } = readProtocol(file, text, { ladder: ladder.ladder, parents });
  return {
    reader: protocol && protocolReader(protocol),
    problems: protocol ? [] : [...ladder.problems, ...problems],
  };
}

/** Opens a ward policy with those of the protocols here that it names. */
function openWard({ file, text, ladder: given }: SiteProtocol, all: readonly SiteProtocol[]): Opening {
  const { ladder } = given ? readLadder(given.file, given.text) : { ladder: null };
  const parents = new Map(all.map((each) => [nameOf(each), { file: each.file, text: each.text }]));
  const protocols = new Map(
    all.map((each) => {
      const name = nameOf(each);
      const isNamed = each.kind === 'protocol' && text.includes(name);
      return [name, isNamed ? readProtocol(each.file, each.text, { ladder, parents }).protocol : null];
    }),
  );
  const { ward, problems } = readWard(file, text, { ladder, protocols });
  return { reader: ward && wardReader(ward), problems: ward ? [] : problems };
}

/** Opens what is in force for a ward, and nothing else: its draft is never read with. */
function openInForce(inForce: NonNullable<SiteProtocol['in_force']>): Answers['open'] {
  if (inForce.kind === 'none') return { form: null, problems: inForce.says };
  const { reader: found, problems } = readEdition(inForce.file, inForce.text);
  reader = found && ('members' in found ? wardReader(found) : protocolReader(found));
  return { form: reader?.form ?? null, problems: problems.map(inWords) };
}

function open(asked: SiteProtocol, every: readonly SiteProtocol[]): Answers['open'] {
  reader = null;
  if (asked.in_force) return openInForce(asked.in_force);
  const all = every.filter(({ kind }) => kind === 'protocol');
  const opened = asked.kind === 'ward' ? openWard(asked, all) : openProtocol(asked, all);
  reader = opened.reader;
  return { form: reader?.form ?? null, problems: opened.problems.map(inWords) };
}

function read(text: string): Answers['read'] {
  if (!reader) return { readings: [], problems: ['No protocol is open.'] };
  const { series, problems } = reader.series('what was entered', text);
  if (!series) return { readings: [], problems: problems.map(({ says }) => says) };
  const readings = reader.read(series).map(({ sheet, facts, courses }) => ({ sheet, facts, courses }));
  return { readings, problems: [] };
}

function table(text: string, before: string): Answers['table'] {
  if (!reader) return { sets: [], problems: ['No protocol is open.'] };
  const { sets, problems } = reader.table('earlier sets', text, (day, clock) =>
    localTime(day, clock, before),
  );
  return { sets, problems: problems.map(inWords) };
}

function answer(question: Question): Answers[Question['kind']] {
  switch (question.kind) {
    case 'open':
      return open(question.protocol, question.all);
    case 'read':
      return read(question.text);
    case 'table':
      return table(question.text, question.before);
  }
}

answerQuestions(answer);
