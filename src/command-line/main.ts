import { writeSync } from 'node:fs';
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
  today: localDay(new Date()),
};

function localDay(now: Date): string {
  const two = (part: number): string => String(part).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
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
