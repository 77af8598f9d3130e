import { protocolReader, wardReader, type Reader } from '../../../src/index.ts';
import { answerQuestions } from '../common/answer-questions.ts';
import { localTime } from '../common/clock.ts';
import { openReader, problemInWords } from '../common/open-reader.ts';
import type { SiteProtocol } from '../common/site-protocol.ts';
import type { Answers, Question } from './messages.ts';

/** What the room reads with; null before one is opened. */
let reader: Reader | null = null;

function open(asked: SiteProtocol, all: readonly SiteProtocol[]): Answers['open'] {
  const { protocol, ward, problems } = openReader(asked, all);
  reader = ward ? wardReader(ward) : protocol && protocolReader(protocol);
  return { form: reader?.form ?? null, problems: problems.map(problemInWords) };
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
