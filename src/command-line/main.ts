import { writeSync } from 'node:fs';
import { homedir } from 'node:os';
import { join } from 'node:path';
import { limits } from '../document/limits.ts';
import { runCall } from './calls.ts';
import { exit, type Terminal } from './terminal.ts';

/** Bytes of standard input that are read before no more is wanted. */
const largest = limits.bytes + 8;

const { stdin, stdout, stderr, env } = process;

const terminal: Terminal = {
  out: (text) => void stdout.write(text),
  err: (text) => void stderr.write(text),
  stdin: async () => {
    const parts: Buffer[] = [];
    let size = 0;
    // What is longer than any text that the kit reads is refused; so its end need not be waited for, if it has one.
    for await (const part of stdin) {
      parts.push(part as Buffer);
      size += (part as Buffer).length;
      if (size > largest) break;
    }
    return Buffer.concat(parts).toString('utf8');
  },
  width: stdout.columns ?? (Number(env['COLUMNS']) || 80),
  colour: stdout.isTTY && !env['NO_COLOR'] && env['TERM'] !== 'dumb',
  // Asked each time: the server of the rooms runs for days.
  get today() {
    return localDay(new Date());
  },
  get now() {
    return localTime(new Date());
  },
  seenFolder: seenFolder(),
};

function localDay(now: Date): string {
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function localTime(now: Date): string {
  const east = -now.getTimezoneOffset();
  const offset = `${east < 0 ? '-' : '+'}${two(Math.floor(Math.abs(east) / 60))}:${two(Math.abs(east) % 60)}`;
  const clock = [now.getHours(), now.getMinutes(), now.getSeconds()].map(two).join(':');
  return `${localDay(now)}T${clock}${offset}`;
}

function two(part: number): string {
  return String(part).padStart(2, '0');
}

/** Outside every repository: where programs keep what they know on this machine, for this person. */
function seenFolder(): string {
  // A variable that is empty says nothing.
  const [own, state] = [env['VITALWRIGHT_STATE'], env['XDG_STATE_HOME']].map((each) =>
    each === '' ? undefined : each,
  );
  return own ?? join(state ?? join(homedir(), '.local', 'state'), 'vitalwright');
}

/**
 * What was to be told cannot be: the disk is full, or the reader has seen enough and closed the pipe. Then nobody may take the exit code for
 * "all is well", nor for "does not hold".
 */
function untold(why: NodeJS.ErrnoException, said: string): void {
  if (why.code !== 'EPIPE' && said !== '') {
    try {
      writeSync(2, said);
    } catch {
      // Nowhere is left to say it.
    }
  }
  process.exit(exit.couldNotAsk);
}

stdout.on('error', (error: NodeJS.ErrnoException) =>
  untold(
    error,
    `The answer could not be written (${error.code ?? error.message}): what there is of it is not whole.\n`,
  ),
);
stderr.on('error', (error: NodeJS.ErrnoException) => untold(error, ''));

try {
  process.exitCode = await runCall(process.argv.slice(2), terminal);
} catch (error) {
  stderr.write(
    `This is a fault of vitalwright itself, not of your files: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`,
  );
  process.exitCode = exit.couldNotAsk;
}
