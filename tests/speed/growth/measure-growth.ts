import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { hasSolver, solvers } from '../../../.config/solvers.mjs';
import type { Answered } from './answer-cell.ts';
import { cells, type Cell } from './cells.ts';

/** Nothing is waited for longer. */
const longest = 30_000;

const program = fileURLToPath(new URL('answer-cell.ts', import.meta.url));

/** The table of growth, as lines of Markdown: each question asked of the kit and of every solver that is there. */
export function growthTable(): readonly string[] {
  const judges = solvers.filter(hasSolver);
  const rows = cells.map((cell, place) => {
    const kit = ofKit(place);
    const others = judges.map((judge) => ofSolver(cell, judge));
    return `| ${[cell.asks, cell.of, ...kit, ...others].join(' | ')} |`;
  });
  const names = judges.map(({ name }) => name);
  const heads = ['asked', 'of', 'answer', 'took', 'memory', ...names];
  return [
    `| ${heads.join(' | ')} |`,
    `|${heads.map(() => '---').join('|')}|`,
    ...rows,
    ...(judges.length < solvers.length ? ['', 'Some solver was not there, and was not asked.'] : []),
  ];
}

const milliseconds = (took: number): string => `${Math.round(took).toLocaleString('en')} ms`;

/** Answer, time of the processor and memory. */
function ofKit(place: number): readonly [string, string, string] {
  const folder = mkdtempSync(join(tmpdir(), 'vitalwright-growth-'));
  const file = join(folder, 'told.json');
  const { status, stderr, error } = spawnSync(
    process.execPath,
    ['--import', 'tsx', program, String(place), file],
    {
      encoding: 'utf8',
      timeout: longest,
    },
  );
  try {
    if (error && 'code' in error && error.code === 'ETIMEDOUT')
      return ['none', `more than ${milliseconds(longest)}`, ''];
    if (status !== 0) throw error ?? new Error(stderr);
    const { answer, took, memory } = JSON.parse(readFileSync(file, 'utf8')) as Answered;
    return [answer, milliseconds(took), `${memory} MiB`];
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** How long a solver takes, its start with it; and its answer, where it is another one than the kit could give. */
function ofSolver({ make }: Cell, { name, args }: (typeof solvers)[number]): string {
  const { scripts, told } = make();
  const all = scripts();
  if (all.length === 0) return '';
  const start = performance.now();
  const { stdout, error } = spawnSync(name, args, {
    input: all.join('\n(reset)\n'),
    encoding: 'utf8',
    maxBuffer: 2 ** 28,
    timeout: longest,
  });
  if (error) return `more than ${milliseconds(longest)}`;
  const answers = stdout.split('\n').filter((line) => line !== '');
  if (answers.length !== all.length) throw new Error(`${name}: ${answers.slice(0, 3).join('; ')}`);
  return `${told(answers)}, ${milliseconds(performance.now() - start)}`;
}
