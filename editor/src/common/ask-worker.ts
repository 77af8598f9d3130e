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

/** Asks one kind of question, and gets what that kind is answered with. `heard` gets what the worker tells on the way. */
type Ask<Question extends Kinds, Answers> = <K extends Question['kind'] & keyof Answers>(
  question: Extract<Question, { kind: K }>,
  heard?: (soFar: unknown) => void,
) => Promise<Answers[K]>;

interface Waiting {
  readonly answer: (answer: unknown) => void;
  readonly heard: (soFar: unknown) => void;
}

/** How a page asks a worker. Questions are answered in the order in which they were asked. */
export function asker<Question extends Kinds, Answers>(worker: Worker): Ask<Question, Answers> {
  const waiting = new Map<number, Waiting>();
  let last = 0;
  worker.addEventListener('message', ({ data }: MessageEvent<Answered<unknown>>) => {
    if ('soFar' in data) {
      waiting.get(data.id)?.heard(data.soFar);
      return;
    }
    waiting.get(data.id)?.answer(data.answer);
    waiting.delete(data.id);
  });
  worker.addEventListener('error', () => {
    for (const { answer } of waiting.values()) answer(null);
    waiting.clear();
  });
  return async (question, heard = () => undefined) => {
    last += 1;
    const id = last;
    const answer = await new Promise<unknown>((resolve) => {
      waiting.set(id, { answer: resolve, heard });
      worker.postMessage({ id, question });
    });
    if (answer === null) throw new OwnFault();
    return answer as Answers[(typeof question)['kind'] & keyof Answers];
  };
}
