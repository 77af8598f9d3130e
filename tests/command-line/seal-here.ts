import type { SealApart } from '../../src/command-line/deciding/seal-apart.ts';
import type { Terminal } from '../../src/command-line/terminal.ts';
import { ask } from './ask.ts';

/** Seals in this very process, at the time of a terminal: what a server does with a process of its own. */
export const sealHere =
  (terminal: Terminal): SealApart =>
  async (path, authors) => {
    const { today, now } = terminal;
    const named = authors.map((author) => `--author=${author}`);
    const { exit, out, err } = await ask(['seal', path, ...named], '', { today, now });
    return { code: exit, out, err };
  };
