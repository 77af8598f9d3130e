import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { compareSides } from '../../src/review/compare/compare.ts';
import { askable, bundledNames, bundledText } from '../bundled.ts';
import type { Figure } from './figure.ts';
import { movedThreshold } from './moved-threshold.ts';

const main = fileURLToPath(new URL('../../dist/main.js', import.meta.url));

/** Put before the command line: what the whole program took is written down as it ends. */
const watching = `data:text/javascript,${encodeURIComponent(
  `import { writeFileSync } from 'node:fs';
   process.on('exit', () => writeFileSync(process.env.SPEED_TOLD, JSON.stringify(process.resourceUsage())));`,
)}`;

interface Took {
  /** Seconds of the processor, start and reading with it. */
  readonly seconds: number;
  /** The peak, in MiB. */
  readonly memory: number;
}

/** Runs one call of the command line. It may answer that something does not hold; that it could not be asked is an error. */
function taken(args: readonly string[]): Took {
  const folder = mkdtempSync(join(tmpdir(), 'vitalwright-speed-'));
  const told = join(folder, 'told.json');
  try {
    const { status, stderr } = spawnSync(process.execPath, ['--import', watching, main, ...args], {
      encoding: 'utf8',
      env: { ...process.env, SPEED_TOLD: told },
      maxBuffer: 2 ** 28,
    });
    if (status !== 0 && status !== 1) throw new Error(`vitalwright ${args.join(' ')}: ${stderr}`);
    const used = JSON.parse(readFileSync(told, 'utf8')) as NodeJS.ResourceUsage;
    return {
      seconds: (used.userCPUTime + used.systemCPUTime) / 1e6,
      memory: Math.round(used.maxRSS / 1024),
    };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const seconds = (found: number): string => `${found.toFixed(1)} s`;

/** One call of the command line against what is aimed at. */
function figure(what: string, args: readonly string[], aim: number, most: number | null): Figure {
  const took = taken(args);
  return {
    what,
    found: `${seconds(took.seconds)}, ${took.memory} MiB`,
    aim: `within ${aim} s${most === null ? '' : ` and ${most} MiB`}`,
    reached: took.seconds <= aim && (most === null || took.memory <= most),
  };
}

const statesSome = (path: string): boolean => /^must_always:/m.test(bundledText(path));

/** How long the whole calls take that ask about every possible set, in seconds of the processor. */
export function measureQuestions(): readonly Figure[] {
  const protocols = bundledNames.flatMap((name) => [
    ...(statesSome(`${name}/protocol.yaml`)
      ? [figure(`prove ${name}`, ['prove', name, '--json'], 2, 300)]
      : []),
    figure(`findings of ${name}`, ['check', '--findings', `protocols/${name}`], 2, 300),
  ]);
  const ward = statesSome('alder_wing/ward.yaml')
    ? [figure('prove alder_wing, the whole ward', ['prove', 'alder_wing', '--json'], 10, null)]
    : [];
  return [...protocols, ...ward, ...comparisons()];
}

/** Two editions of the largest protocols, and of a score, of which the second has one threshold moved by a step. */
function comparisons(): readonly Figure[] {
  return (['reading_technique', 'pressure_reading', 'early_warning_score'] as const).map((name) => {
    const after = movedThreshold(name);
    const start = process.cpuUsage();
    const { verdict, levels_whole: isWhole } = compareSides(askable(name), after, null);
    const { user, system } = process.cpuUsage(start);
    const took = (user + system) / 1e6;
    const whole = verdict === 'changes' && isWhole;
    return {
      what: `what one moved threshold of ${name} changes`,
      found: `${seconds(took)}${whole ? '' : ', not whole'}`,
      aim: 'whole, within 2 s',
      reached: whole && took <= 2,
    };
  });
}
