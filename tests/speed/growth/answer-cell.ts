import { writeFileSync } from 'node:fs';
import { cells } from './cells.ts';

/** What is told of one row. */
export interface Answered {
  readonly answer: string;
  /** Milliseconds of the processor for the question alone: the protocol was read before. */
  readonly took: number;
  /** The peak of the whole program, in MiB. */
  readonly memory: number;
}

/** A program of its own for each row, so that one that takes too long can be ended, and so that memory is its own. */
const [place, file] = process.argv.slice(2);
const question = cells[Number(place)]?.make();
if (!question || file === undefined) throw new Error('a row and a file are to be named');
const before = process.cpuUsage();
const answer = question.answer();
const { user, system } = process.cpuUsage(before);
const memory = Math.round(process.resourceUsage().maxRSS / 1024);
const told: Answered = { answer, took: (user + system) / 1000, memory };
writeFileSync(file, JSON.stringify(told));
