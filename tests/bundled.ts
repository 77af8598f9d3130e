import { readdirSync, readFileSync } from 'node:fs';
import {
  readLadder,
  readProtocol,
  readWard,
  type Compiled,
  type Ladder,
  type Parents,
  type Ward,
} from '../src/index.ts';
import type { Protocol } from '../src/protocol/protocol.ts';

const folder = new URL('../protocols/', import.meta.url);

/** The protocols that come with the kit, for tests that hold for each of them. */
export const bundledNames = [
  'pressure_reading',
  'early_warning_score',
  'pregnancy_severe_pressure',
  'child_low_pressure',
  'sepsis_screen',
  'bleeding_watch',
  'reading_technique',
] as const;

/** The smallest protocols, one idea each, by their place below protocols/. */
export const lessonNames = readdirSync(new URL('lessons/', folder))
  .sort()
  .map((name) => `lessons/${name}`);

/** The text of a file below protocols/. */
export const bundledText = (path: string): string => readFileSync(new URL(path, folder), 'utf8');

export function bundledLadder(): Ladder {
  const { ladder, problems } = readLadder(
    'alder_ladder/ladder.yaml',
    bundledText('alder_ladder/ladder.yaml'),
  );
  if (!ladder) throw new Error(problems.map(({ says }) => says).join('\n'));
  return ladder;
}

/** Each lesson by its name, as another one may be based on it. */
const parents: Parents = new Map(
  lessonNames.map((name) => {
    const file = `${name}/protocol.yaml`;
    return [name.replace('lessons/', ''), { file, text: bundledText(file) }];
  }),
);

const read = new Map<string, Compiled>();

/** A bundled protocol, ready to be asked. */
export function askable(name: string): Compiled {
  const known = read.get(name) ?? readBundled(name);
  read.set(name, known);
  return known;
}

function readBundled(name: string): Compiled {
  const path = `${name}/protocol.yaml`;
  const { protocol, problems } = readProtocol(path, bundledText(path), { ladder: bundledLadder(), parents });
  if (!protocol) throw new Error(problems.map(({ line, says }) => `${path}:${line}: ${says}`).join('\n'));
  return protocol;
}

/** A bundled protocol, checked. */
export const bundled = (name: string): Protocol => askable(name).protocol;

/** The bundled ward policy, ready to be asked. */
export function bundledWard(): Ward {
  const path = 'alder_wing/ward.yaml';
  const protocols = new Map(bundledNames.map((name) => [name, askable(name)]));
  const { ward, problems } = readWard(path, bundledText(path), { ladder: bundledLadder(), protocols });
  if (!ward) throw new Error(problems.map(({ line, says }) => `${path}:${line}: ${says}`).join('\n'));
  return ward;
}
