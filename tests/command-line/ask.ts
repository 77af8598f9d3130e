import { runCall } from '../../src/command-line/calls.ts';
import type { Terminal } from '../../src/command-line/terminal.ts';

/** What a call printed, and how it ended. */
export interface Answer {
  readonly exit: number;
  readonly out: string;
  readonly err: string;
}

/** Makes a call as the command line does, with what is on standard input. The folder is the project's. */
export async function ask(
  args: readonly string[],
  stdin = '',
  more: Partial<Terminal> = {},
): Promise<Answer> {
  const said = { out: '', err: '' };
  const terminal: Terminal = {
    out: (text) => void (said.out += text),
    err: (text) => void (said.err += text),
    stdin: () => Promise.resolve(stdin),
    width: 80,
    colour: false,
    today: '2026-03-02',
    now: '2026-03-02T12:05:00Z',
    seenFolder: null,
    ...more,
  };
  const exit = await runCall(args, terminal);
  return { exit, ...said };
}
