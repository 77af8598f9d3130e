import { runCall } from '../../src/command-line/calls.ts';
import type { Terminal } from '../../src/command-line/terminal.ts';

/*
 * A process that makes one call of the command line as soon as it is told to, by a line on standard input: so that several begin at
 * once, and one can be killed in the middle of it. Its arguments: the time, then those of the call.
 */
const [now = '', ...args] = process.argv.slice(2);
const terminal: Terminal = {
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  stdin: () => Promise.resolve(''),
  width: 80,
  colour: false,
  today: now.slice(0, 10),
  now,
  seenFolder: null,
};

// Everything is loaded before the word is given.
await runCall([args[0] ?? ''], { ...terminal, err: () => undefined, out: () => undefined });
process.stdout.write('ready\n');
await new Promise((resolve) => process.stdin.once('data', resolve));
process.exit(await runCall(args, terminal));
