import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { SourceFile } from './imports.ts';

export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Paths of all files of the repository, those not yet committed too, those that git ignores left out. */
export function repositoryFiles(): string[] {
  const listed = execFileSync('git', ['ls-files', '-z', '--cached', '--others', '--exclude-standard'], {
    cwd: root,
  });
  return listed
    .toString('utf8')
    .split('\0')
    .filter((path) => path !== '' && existsSync(join(root, path)));
}

export function textOfFile(path: string): string {
  return readFileSync(join(root, path), 'utf8');
}

/** The files of code below `src/`, by their path below it. */
export function sourceFiles(): SourceFile[] {
  return repositoryFiles()
    .filter((path) => /^src\/.*\.[jt]s$/.test(path))
    .map((path) => ({ path: path.slice('src/'.length), text: textOfFile(path) }));
}

/** The files of code of the rooms, by their path below `editor/`. */
export function editorFiles(): SourceFile[] {
  return repositoryFiles()
    .filter((path) => /^editor\/.*\.tsx?$/.test(path))
    .map((path) => ({ path: path.slice('editor/'.length), text: textOfFile(path) }));
}
