import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

/** The command line as one program that starts quickly, with rooms of one empty page beside it. */
export interface Program {
  readonly file: string;
  remove(): void;
}

/** Built into a folder of its own, so that a test of it does not depend on what was built before. */
export async function buildProgram(): Promise<Program> {
  const outDir = mkdtempSync(join(tmpdir(), 'program-'));
  const configFile = fileURLToPath(new URL('../../.config/vite.config.ts', import.meta.url));
  await build({ configFile, logLevel: 'error', build: { outDir, emptyOutDir: false } });
  mkdirSync(join(outDir, 'site'));
  writeFileSync(join(outDir, 'site', 'index.html'), '<!doctype html><title>Rooms</title>');
  writeFileSync(join(outDir, 'package.json'), '{ "type": "module" }');
  return { file: join(outDir, 'main.js'), remove: () => rmSync(outDir, { recursive: true, force: true }) };
}
