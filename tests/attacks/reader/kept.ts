import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Found } from './search.ts';

const folder = fileURLToPath(new URL('../found/', import.meta.url));

/** Keeps a text as a file, to be committed with what mends it; a test asks it again. Returns its path. */
export function keep(found: Found, name: string): string {
  mkdirSync(folder, { recursive: true });
  const path = join(folder, `${name}.json`);
  writeFileSync(path, `${JSON.stringify(found, null, 2)}\n`);
  return path;
}

/** Every text that was kept. */
export function kept(): readonly (readonly [name: string, found: Found])[] {
  mkdirSync(folder, { recursive: true });
  const names = readdirSync(folder).filter((name) => name.endsWith('.json'));
  return names
    .toSorted()
    .map((name) => [name, JSON.parse(readFileSync(join(folder, name), 'utf8')) as Found]);
}
