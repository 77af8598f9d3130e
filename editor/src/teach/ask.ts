import { asker } from '../common/ask-worker.ts';
import type { Answers, Question } from './messages.ts';

/** Asks the worker of this room. */
export const ask = asker<Question, Answers>(
  new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' }),
);
