import type { Terminal } from '../../src/command-line/terminal.ts';

/** A terminal at a moment, on which nothing is written. */
export const terminalAt = (now: string, seenFolder: string | null = null): Terminal => ({
  out: () => undefined,
  err: () => undefined,
  stdin: () => Promise.resolve(''),
  width: 80,
  colour: false,
  today: now.slice(0, 10),
  now,
  seenFolder,
});

/** The same, at whatever time it is when it is asked. */
export const terminalNow = (seenFolder: string | null = null): Terminal => ({
  ...terminalAt('', seenFolder),
  get today() {
    return new Date().toISOString().slice(0, 10);
  },
  get now() {
    return new Date().toISOString();
  },
});
