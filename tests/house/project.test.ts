import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { anyTypesOf } from './imports.ts';
import { editorFiles, repositoryFiles, root, sourceFiles, textOfFile } from './repository.ts';

const files = repositoryFiles();
const lines = (text: string): number => text.trimEnd().split('\n').length;

interface Package {
  readonly scripts: Readonly<Record<string, string>>;
  readonly dependencies: Readonly<Record<string, string>>;
  readonly devDependencies: Readonly<Record<string, string>>;
}
const manifest = JSON.parse(textOfFile('package.json')) as Package;

test('the top level holds what belongs there and nothing else', () => {
  const settings = ['LICENSE', 'package.json', 'package-lock.json', 'tsconfig.json'];
  const allowed = [
    'README.md',
    'DEVELOPERS.md',
    'protocols',
    'schema',
    'src',
    'editor',
    'tests',
    ...settings,
  ];
  const found = new Set(files.map((path) => path.split('/')[0] ?? ''));
  expect([...found].filter((name) => !name.startsWith('.') && !allowed.includes(name))).toEqual([]);
  expect(allowed.filter((name) => name !== 'editor' && !found.has(name))).toEqual([]);
});

test('what is built and installed is not in the repository', () => {
  expect(files.filter((path) => /^(?:dist|node_modules|coverage)\//.test(path))).toEqual([]);
});

test('no hand-written file of src or of the rooms is longer than 350 lines', () => {
  const long = [...sourceFiles(), ...editorFiles()].filter(
    ({ path, text }) => !path.includes('generated/') && lines(text) > 350,
  );
  expect(long.map(({ path, text }) => `${path}: ${lines(text)}`)).toEqual([]);
});

test('no file says that a type may be anything', () => {
  const own = files.filter((path) => /\.tsx?$/.test(path) && !path.includes('/generated/'));
  expect(own.flatMap((path) => anyTypesOf({ path, text: textOfFile(path) }))).toEqual([]);
});

test('a type that may be anything is seen, and the word is not', () => {
  expect(anyTypesOf({ path: 'a.ts', text: 'let a: any;\nlet b = c as Map<string, any>;' })).toHaveLength(2);
  expect(anyTypesOf({ path: 'a.ts', text: `const any = { any: 'any' }; // any` })).toEqual([]);
});

test('versions of dependencies are exact', () => {
  const versions = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });
  expect(versions.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
});

test('every script calls a file that is there', () => {
  const called = Object.values(manifest.scripts).flatMap(
    (script) => script.match(/[\w./-]+\.(?:ts|mjs)\b/g) ?? [],
  );
  expect(called.length).toBeGreaterThan(3);
  expect(called.filter((path) => !existsSync(join(root, path)))).toEqual([]);
});

test('every TypeScript test file of the tests folder is one that the test run takes', () => {
  const tests = files.filter((path) => /\.(?:test|spec)\.\w+$/.test(path));
  expect(tests.filter((path) => !/^tests\/.*\.test\.ts$/.test(path))).toEqual([]);
});
