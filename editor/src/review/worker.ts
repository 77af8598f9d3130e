import { answerQuestions } from '../common/answer-questions.ts';
import type { Answers, Question } from './messages.ts';
import { Desk } from './work/desk.ts';

const desk = new Desk();

function answer(question: Question, tell: (soFar: unknown) => void): Answers[Question['kind']] {
  switch (question.kind) {
    case 'open':
      return desk.open(question);
    case 'compare':
      return desk.compare();
    case 'witness':
      return desk.witness(question.at);
    case 'map':
      return desk.map(question);
    case 'prove':
      return desk.prove(tell);
    case 'findings':
      return desk.findings();
    case 'unguarded':
      return desk.unguarded(tell);
    case 'report':
      return desk.report();
    case 'handbook':
      return desk.handbook(question);
  }
}

answerQuestions(answer);
