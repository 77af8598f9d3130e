import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import type { Example } from './generators.ts';

/** Where counterexamples are kept; each is asked again by a test of its own. */
const foundFolder = fileURLToPath(new URL('found/', import.meta.url));

/** Keeps an example as a file, to be committed with what mends it. Returns its path. */
export function keep(example: Example, name: string, folder: string = foundFolder): string {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${name}.json`);
  writeFileSync(path, `${JSON.stringify(example, null, 2)}\n`);
  return path;
}

/** Every example that was kept. */
export function kept(folder: string = foundFolder): readonly (readonly [name: string, example: Example])[] {
  mkdirSync(folder, { recursive: true });
  const names = readdirSync(folder).filter((name) => name.endsWith('.json'));
  return names.sort().map((name) => [name, JSON.parse(readFileSync(join(folder, name), 'utf8')) as Example]);
}

/** Throws for a failed run as fast-check does, after keeping its smallest counterexample. */
export function report(details: fc.RunDetails<[Example]>, folder?: string): void {
  if (!details.failed) return;
  const [example] = details.counterexample ?? [];
  const path = example ? keep(example, `seed_${details.seed}_${details.numRuns}`, folder) : 'nowhere';
  throw new Error(`Kept in ${path}\n${fc.defaultReportMessage(details) ?? ''}`);
}
