/** What a call of the command line reads and writes: the process's own streams, or a test's. */
export interface Terminal {
  /** Results. */
  out(text: string): void;
  /** Problems. */
  err(text: string): void;
  /** Everything on standard input. */
  stdin(): Promise<string>;
  /** Columns; 80 where there is no terminal. */
  readonly width: number;
  /** Whether results go to a terminal that shows colour. */
  readonly colour: boolean;
  /** Year-month-day. */
  readonly today: string;
  /** This moment, with its offset: `2026-03-02T12:05:00+00:00`. Never before `today` began. */
  readonly now: string;
  /** The folder in which this reader keeps what it has seen of each record; null: nowhere, and nothing is known from before. */
  readonly seenFolder: string | null;
}

/** Exit codes: all is well; something that was asked to be checked does not hold; it could not be asked. */
export const exit = { well: 0, doesNotHold: 1, couldNotAsk: 2 } as const;
export type Exit = (typeof exit)[keyof typeof exit];

/** One call: its arguments after its name. */
export type Call = (args: readonly string[], terminal: Terminal) => Promise<Exit>;
