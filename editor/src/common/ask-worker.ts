import type { Answered } from './answer-questions.ts';

/** Thrown when the kit itself is at fault. It carries nothing of what was entered. */
class OwnFault extends Error {
  constructor() {
    super('The kit itself is at fault.');
  }
}

interface Kinds {
  readonly kind: string;
}

/** Asks one kind of question, and gets what that kind is answered with. */
type Ask<Question extends Kinds, Answers> = <K extends Question['kind'] & keyof Answers>(
  question: Extract<Question, { kind: K }>,
) => Promise<Answers[K]>;

/** How a page asks a worker. Questions are answered in the order in which they were asked. */
export function asker<Question extends Kinds, Answers>(worker: Worker): Ask<Question, Answers> {
  const waiting = new Map<number, (answer: unknown) => void>();
  let last = 0;
  worker.addEventListener('message', ({ data }: MessageEvent<Answered<unknown>>) => {
    waiting.get(data.id)?.(data.answer);
    waiting.delete(data.id);
  });
  worker.addEventListener('error', () => {
    for (const tell of waiting.values()) tell(null);
    waiting.clear();
  });
  return async (question) => {
    last += 1;
    const id = last;
    const answer = await new Promise<unknown>((resolve) => {
      waiting.set(id, resolve);
      worker.postMessage({ id, question });
    });
    if (answer === null) throw new OwnFault();
    return answer as Answers[(typeof question)['kind'] & keyof Answers];
  };
}
