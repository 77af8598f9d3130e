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
      return { case: bench.caseInFull(question.name) };
    case 'form':
      return bench.form();
    case 'draft':
      return bench.draft(question.name, question.given);
    case 'add_case':
      return bench.addCase(question);
    case 'offers':
      return bench.offers(question);
    case 'hover':
      return bench.hover(question);
    case 'map':
      return bench.map(question);
    case 'unguarded':
      return bench.unguarded(question);
    case 'requirements':
      return bench.requirements(question);
  }
}

answerQuestions(answer);
