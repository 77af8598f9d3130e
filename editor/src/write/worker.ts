import { answerQuestions } from '../common/answer-questions.ts';
import type { Answers, Question } from './messages.ts';
import { Bench } from './work/bench.ts';

const bench = new Bench();

function answer(question: Question): Answers[Question['kind']] {
  switch (question.kind) {
    case 'open':
      bench.open(question);
      return { opened: true };
    case 'check':
      return bench.check(question.texts);
    case 'case':
      return bench.caseInFull(question.name);
  }
}

answerQuestions(answer);
