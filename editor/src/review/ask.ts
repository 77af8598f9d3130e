import { asker } from '../common/ask-worker.ts';
import type { Answers, Question } from './messages.ts';

/** A worker of this room. */
export interface Helper {
  readonly ask: ReturnType<typeof asker<Question, Answers>>;
  /** Ends it, whatever it is doing: nothing goes on behind a search that was left off. */
  end(): void;
}

export function newHelper(): Helper {
  const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
  return { ask: asker<Question, Answers>(worker), end: () => worker.terminate() };
}
