import type { Answered, Answers, Question } from './messages.ts';

/** Thrown when the kit itself is at fault. It carries nothing of what was entered. */
class OwnFault extends Error {
  constructor() {
    super('The kit itself is at fault.');
  }
}

const worker = new Worker(new URL('./worker.ts', import.meta.url), { type: 'module' });
const waiting = new Map<number, (answer: Answered['answer']) => void>();
let last = 0;

worker.addEventListener('message', ({ data }: MessageEvent<Answered>) => {
  waiting.get(data.id)?.(data.answer);
  waiting.delete(data.id);
});
worker.addEventListener('error', () => {
  for (const tell of waiting.values()) tell(null);
  waiting.clear();
});

/** Asks the worker. Questions are answered in the order in which they were asked. */
export async function ask<K extends Question['kind']>(
  question: Extract<Question, { kind: K }>,
): Promise<Answers[K]> {
  last += 1;
  const id = last;
  const answer = await new Promise<Answered['answer']>((resolve) => {
    waiting.set(id, resolve);
    worker.postMessage({ id, question });
  });
  if (answer === null) throw new OwnFault();
  return answer as Answers[K];
}
