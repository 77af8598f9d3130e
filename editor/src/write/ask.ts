import { asker } from '../common/ask-worker.ts';
import type { Answers, Question } from './messages.ts';

/** A worker of this room, to be asked. */
export const newAsker = (): ReturnType<typeof asker<Question, Answers>> =>
  asker<Question, Answers>(new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' }));

/** The one that answers while somebody types: it is asked nothing that takes long. */
export const ask = newAsker();
