import { mkdirSync, writeFileSync } from 'node:fs';
import { cpus } from 'node:os';
import { fileURLToPath } from 'node:url';
import { measureEngines } from './engines.ts';
import type { Figure } from './figure.ts';
import { growthTable } from './growth/measure-growth.ts';
import { measureLoading } from './loading.ts';
import { measureQuestions } from './questions.ts';
import { measureRooms } from './rooms/measure-rooms.ts';
import { measureStartUp } from './start-up.ts';

/** `npm run speed`: measures, prints, and with --write keeps the figures beside this file with the machine named. Not a test. */
const figures: readonly Figure[] = [
  ...measureStartUp(),
  ...(await measureEngines()),
  ...measureLoading(),
  ...measureQuestions(),
  ...(await measureRooms()),
];
const [cpu] = cpus();
const peak = Math.round(process.resourceUsage().maxRSS / 1024);
const wordFor = (reached: boolean | null): string => (reached === null ? '' : reached ? 'reached' : 'missed');
const lines = [
  '# Measured',
  '',
  `${cpus().length} × ${cpu?.model.trim() ?? 'unknown'}, Node ${process.version.slice(1)}; peak memory of the run ${peak} MiB. Written by \`npm run speed -- --write\`; one run,`,
  'so that the ratios hold beside each other. Absolute figures move with the machine.',
  '',
  '| what | measured | aimed at | |',
  '|---|---|---|---|',
  ...figures.map(({ what, found, aim, reached }) => `| ${what} | ${found} | ${aim} | ${wordFor(reached)} |`),
  '',
  '## Growth',
  '',
  'What is asked of every possible set, of protocols that were made up: the time of the processor, and beside it how long solvers take for',
  'the same question, their start with it. What a solver is not asked, is empty. Where the answer is *not settled*, a limit was reached',
  'that keeps the kit from looking on for ever: 20,000 groups of sets for a requirement, 3,000,000 stretches of values for a finding.',
  '',
  ...growthTable(),
  '',
];
process.stdout.write(lines.join('\n'));
if (process.argv.includes('--write')) {
  const path = fileURLToPath(new URL('measured.md', import.meta.url));
  mkdirSync(fileURLToPath(new URL('.', import.meta.url)), { recursive: true });
  writeFileSync(path, lines.join('\n'));
}
