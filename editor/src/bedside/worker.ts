import { beginReadEdition, protocolReader, wardReader, type Reader } from '../../../src/index.ts';
import { answerQuestions } from '../common/answer-questions.ts';
import { localTime } from '../common/clock.ts';
import { beginReader, problemInWords, type PageProblem } from '../common/open-reader.ts';
import type { SiteProtocol } from '../common/site-protocol.ts';
import type { Answers, Question } from './messages.ts';

interface Opened {
  readonly reader: Reader | null;
  readonly problems: readonly PageProblem[];
}

/** What the room reads with. The first that asks for it waits until all of the check is done. */
let opened: () => Opened = () => ({ reader: null, problems: [] });

/** Opens what is in force for a ward, and nothing else: its draft is never read with. */
function openInForce(inForce: NonNullable<SiteProtocol['in_force']>): Answers['open'] {
  opened = () => ({ reader: null, problems: [] });
  if (inForce.kind === 'none') return { form: null, problems: inForce.says };
  const { reader, problems, finish } = beginReadEdition(inForce.file, inForce.text);
  let done: Opened | null = null;
  opened = () => (done ??= sealedReader(finish()));
  return { form: readerOf(reader)?.form ?? null, problems: reader ? [] : problems.map(problemInWords) };
}

const readerOf = (asked: ReturnType<typeof beginReadEdition>['reader']): Reader | null =>
  asked && ('members' in asked ? wardReader(asked) : protocolReader(asked));

const sealedReader = ({ reader, problems }: Omit<ReturnType<typeof beginReadEdition>, 'finish'>): Opened => ({
  reader: readerOf(reader),
  problems,
});

function open(asked: SiteProtocol, all: readonly SiteProtocol[]): Answers['open'] {
  if (asked.in_force) return openInForce(asked.in_force);
  const { form: begun, problems, finish } = beginReader(asked, all);
  const form = begun();
  let done: Opened | null = null;
  opened = () => (done ??= readerFrom(finish()));
  return { form, problems: form ? [] : problems.map(problemInWords) };
}

function readerFrom({
  protocol,
  ward,
  problems,
}: ReturnType<ReturnType<typeof beginReader>['finish']>): Opened {
  return { reader: protocol ? protocolReader(protocol) : ward && wardReader(ward), problems };
}

const cannotBeUsed = 'This cannot be used for a patient. Use the paper policy until it is mended.';

function read(text: string): Answers['read'] {
  const { reader, problems: wrong } = opened();
  if (!reader) return { readings: [], problems: [cannotBeUsed, ...wrong.map(problemInWords)] };
  const { series, problems } = reader.series('what was entered', text);
  if (!series) return { readings: [], problems: problems.map(({ says }) => says) };
  const readings = reader.read(series).map(({ sheet, facts, courses }) => ({ sheet, facts, courses }));
  return { readings, problems: [] };
}

function table(text: string, before: string): Answers['table'] {
  const { reader, problems: wrong } = opened();
  if (!reader) return { sets: [], problems: [cannotBeUsed, ...wrong.map(problemInWords)] };
  const { sets, problems } = reader.table('earlier sets', text, (day, clock) =>
    localTime(day, clock, before),
  );
  return { sets, problems: problems.map(problemInWords) };
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
