import { runCall } from './calls.ts';
import { exit, type Terminal } from './terminal.ts';

const { stdin, stdout, stderr, env } = process;

const terminal: Terminal = {
  out: (text) => void stdout.write(text),
  err: (text) => void stderr.write(text),
  stdin: async () => {
    const parts: Buffer[] = [];
    for await (const part of stdin) parts.push(part as Buffer);
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

// A reader that has seen enough closes the pipe: that is no fault of ours.
stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(exit.well);
  throw error;
});

try {
  process.exitCode = await runCall(process.argv.slice(2), terminal);
} catch (error) {
  stderr.write(
    `This is a fault of vitalwright itself, not of your files: ${error instanceof Error ? (error.stack ?? error.message) : String(error)}\n`,
  );
  process.exitCode = exit.couldNotAsk;
}
