import { answerQuestions } from '../common/answer-questions.ts';
import type { Answers, Question } from './messages.ts';
import { Desk } from './work/desk.ts';

const desk = new Desk();

function answer(question: Question): Answers[Question['kind']] {
  switch (question.kind) {
    case 'open':
      return desk.open(question);
    case 'compare':
      return desk.compare();
    case 'witness':
      return desk.witness(question.at);
  }
}

answerQuestions(answer);
