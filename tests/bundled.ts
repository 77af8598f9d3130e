import { readdirSync, readFileSync } from 'node:fs';
import {
  beginReadEdition,
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

const sealed = new Map<string, Compiled>();

/** The sealed first edition of a bundled protocol, which the ward policy reads with while the file beside it is a draft of the next one. */
function sealedEdition(name: string): Compiled {
  const known = sealed.get(name);
  if (known) return known;
  const path = `${name}/editions/1.yaml`;
  const { reader, problems } = beginReadEdition(path, bundledText(path));
  if (!reader || 'members' in reader)
    throw new Error(problems.map(({ line, says }) => `${path}:${line}: ${says}`).join('\n'));
  sealed.set(name, reader);
  return reader;
}

/** The sealed editions that the bundled ward policy names, by name. */
export function bundledMembers(): Map<string, Compiled> {
  const text = bundledText('alder_wing/ward.yaml');
  const named = bundledNames.filter((name) => text.includes(`{ protocol: ${name}, edition: 1 }`));
  return new Map(named.map((name) => [name, sealedEdition(name)]));
}

/** The bundled ward policy, ready to be asked: the draft of its next edition, over the sealed editions that it names. */
export function bundledWard(): Ward {
  const path = 'alder_wing/ward.yaml';
  const { ward, problems } = readWard(path, bundledText(path), {
    ladder: bundledLadder(),
    protocols: bundledMembers(),
  });
  if (!ward) throw new Error(problems.map(({ line, says }) => `${path}:${line}: ${says}`).join('\n'));
  return ward;
}
