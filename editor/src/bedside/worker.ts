import {
  openWard,
  protocolReader,
  readEdition,
  readLadder,
  readProtocol,
  wardReader,
  type Form,
  type Reader,
} from '../../../src/index.ts';
import { answerQuestions } from '../common/answer-questions.ts';
import { localTime } from '../common/clock.ts';
import type { SiteProtocol } from '../common/site-protocol.ts';
import type { Answers, Question } from './messages.ts';

/** What the room reads with. The first that asks for it waits until all of the check is done. */
let opened: () => Opened = () => ({ reader: null, problems: [] });

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

interface Opened {
  readonly reader: Reader | null;
  readonly problems: readonly Problem[];
}

/** What was opened: its form at once, and what is read with once all of the check is done. */
interface Opening {
  readonly form: Form | null;
  readonly problems: readonly Problem[];
  readonly finish: () => Opened;
}

function openProtocol({ file, text, ladder: given }: SiteProtocol, all: readonly SiteProtocol[]): Opening {
  const ladder = given ? readLadder(given.file, given.text) : { ladder: null, problems: [] };
  const parents = new Map(all.map((each) => [nameOf(each), { file: each.file, text: each.text }]));
  const { protocol, problems: found } = readProtocol(file, text, { ladder: ladder.ladder, parents });
  const reader = protocol && protocolReader(protocol);
  const problems = protocol ? [] : [...ladder.problems, ...found];
  return { form: reader?.form ?? null, problems, finish: () => ({ reader, problems }) };
}

/** Opens a ward policy with those of the protocols here that it names. */
function openWardHere({ file, text, ladder: given }: SiteProtocol, all: readonly SiteProtocol[]): Opening {
  const { ladder } = given ? readLadder(given.file, given.text) : { ladder: null };
  const parents = new Map(all.map((each) => [nameOf(each), { file: each.file, text: each.text }]));
  const protocols = new Map(
    all.map((each) => {
      const name = nameOf(each);
      const isNamed = each.kind === 'protocol' && text.includes(name);
      return [name, isNamed ? readProtocol(each.file, each.text, { ladder, parents }).protocol : null];
    }),
  );
  const { form, problems, finish } = openWard(file, text, { ladder, protocols });
  return {
    form,
    problems,
    finish: () => {
      const { ward, problems: found } = finish();
      return { reader: ward && wardReader(ward), problems: found };
    },
  };
}

/** Opens what is in force for a ward, and nothing else: its draft is never read with. */
function openInForce(inForce: NonNullable<SiteProtocol['in_force']>): Answers['open'] {
  opened = () => ({ reader: null, problems: [] });
  if (inForce.kind === 'none') return { form: null, problems: inForce.says };
  const { reader: found, problems } = readEdition(inForce.file, inForce.text);
  const reader = found && ('members' in found ? wardReader(found) : protocolReader(found));
  opened = () => ({ reader, problems });
  return { form: reader?.form ?? null, problems: problems.map(inWords) };
}

function open(asked: SiteProtocol, every: readonly SiteProtocol[]): Answers['open'] {
  if (asked.in_force) return openInForce(asked.in_force);
  const all = every.filter(({ kind }) => kind === 'protocol');
  const { form, problems, finish } =
    asked.kind === 'ward' ? openWardHere(asked, all) : openProtocol(asked, all);
  let done: Opened | null = null;
  opened = () => (done ??= finish());
  return { form, problems: form ? [] : problems.map(inWords) };
}

const cannotBeUsed = 'This cannot be used for a patient. Use the paper policy until it is mended.';

function read(text: string): Answers['read'] {
  const { reader, problems: wrong } = opened();
  if (!reader) return { readings: [], problems: [cannotBeUsed, ...wrong.map(inWords)] };
  const { series, problems } = reader.series('what was entered', text);
  if (!series) return { readings: [], problems: problems.map(({ says }) => says) };
  const readings = reader.read(series).map(({ sheet, facts, courses }) => ({ sheet, facts, courses }));
  return { readings, problems: [] };
}

function table(text: string, before: string): Answers['table'] {
  const { reader, problems: wrong } = opened();
  if (!reader) return { sets: [], problems: [cannotBeUsed, ...wrong.map(inWords)] };
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
