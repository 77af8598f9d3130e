/** A question to a worker, and which one it is. */
export interface Asked<Question> {
  readonly id: number;
  readonly question: Question;
}

/** What a worker posts: how far it is with a question, or, as the last of it, the answer. */
export type Answered<Answer> =
  | { readonly id: number; readonly soFar: unknown }
  | {
      readonly id: number;
      /** Null: a fault of the kit itself. */
      readonly answer: Answer | null;
    };

/** What a worker has in place of a page's window. */
interface WorkerPort {
  readonly addEventListener: (type: 'message', listen: (event: MessageEvent<Asked<unknown>>) => void) => void;
  readonly postMessage: (answer: Answered<unknown>) => void;
}

/**
 * In a worker: answers each question in the order in which they come. A fault must not carry what was observed into a log, so it is
 * caught here and told without words of its own. What takes long may `tell` how far it is.
 */
export function answerQuestions(answer: (question: never, tell: (soFar: unknown) => void) => unknown): void {
  const port = self as unknown as WorkerPort;
  port.addEventListener('message', ({ data: { id, question } }) => {
    let told: unknown = null;
    try {
      told = answer(question as never, (soFar) => port.postMessage({ id, soFar }));
    } catch {
      told = null;
    }
    port.postMessage({ id, answer: told });
  });
}
