import { readLessons, type Teacher } from '../../../src/index.ts';
import { answerQuestions } from '../common/answer-questions.ts';
import { planeHere } from '../common/map/plane-here.ts';
import { openReader, problemInWords } from '../common/open-reader.ts';
import type { SiteProtocol } from '../common/site-protocol.ts';
import type { Answers, Opened, Question } from './messages.ts';

/** What the room teaches from; null before something is opened. */
let teacher: Teacher | null = null;

function open(asked: SiteProtocol, all: readonly SiteProtocol[]): Opened {
  const { protocol, ward, problems } = openReader(asked, all);
  const reads = protocol ?? ward;
  teacher = reads && readLessons(reads, asked.cases);
  if (!teacher) return { kind: 'problems', problems: problems.map(problemInWords) };
  const { lessons, handout } = teacher;
  return {
    kind: 'open',
    lessons: { ...lessons, problems: lessons.problems.map(problemInWords) },
    handout,
  };
}

function mapOf(name: string | null): Answers['map']['map'] {
  const ground = teacher?.map(name);
  if (!ground) throw new RangeError('there is no such case');
  if ('why' in ground) return ground;
  const { compiled, at, heldAsIn, isOfLastSet, ...asked } = ground;
  return { ...planeHere(compiled, asked), at, heldAsIn, isOfLastSet };
}

function answer(question: Question): Answers[Question['kind']] {
  switch (question.kind) {
    case 'open':
      return open(question.protocol, question.all);
    case 'drill':
      return { drill: teacher?.drill(question.name) ?? null };
    case 'answer':
      return { answer: teacher?.answer(question.name) ?? null };
    case 'map':
      return { map: mapOf(question.name) };
  }
}

answerQuestions(answer);
