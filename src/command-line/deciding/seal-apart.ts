import { spawn } from 'node:child_process';

/** How a call ended, and what it said. */
export interface Ended {
  /** Its exit code; null: it was killed. */
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

/** Seals the protocol or ward policy of a file, in the name of its authors. */
export type SealApart = (path: string, authors: readonly string[]) => Promise<Ended>;

/** `vitalwright seal` as a process of its own, of the very program that serves the rooms. */
export const sealApart: SealApart = async (path, authors) => {
  const named = authors.map((author) => `--author=${author}`);
  const program = [...process.execArgv, process.argv[1] ?? '', 'seal', path, ...named];
  const child = spawn(process.execPath, program, { stdio: ['ignore', 'pipe', 'pipe'] });
  const said = { out: '', err: '' };
  child.stdout.setEncoding('utf8').on('data', (part: string) => void (said.out += part));
  child.stderr.setEncoding('utf8').on('data', (part: string) => void (said.err += part));
  return new Promise((resolve, reject) => {
    child.once('error', reject);
    child.once('close', (code) => resolve({ code, ...said }));
  });
};
