import { asker } from '../common/ask-worker.ts';
import type { Answers, Question } from './messages.ts';

type Ask = ReturnType<typeof asker<Question, Answers>>;

/** A worker of this room. */
export interface Helper {
  readonly ask: Ask;
  /** Ends it, whatever it is doing. */
  end(): void;
}

export function newHelper(): Helper {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  return { ask: asker<Question, Answers>(worker), end: () => worker.terminate() };
}

/** Asks the one that answers while somebody types: it is asked nothing that takes long. */
export const { ask } = newHelper();
