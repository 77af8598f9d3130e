import { posix } from 'node:path';
import { expect, test } from 'vitest';
import { circle, importsOf, reachesOutside, type SourceFile } from './imports.ts';
import { editorFiles, repositoryFiles } from './repository.ts';

const files = editorFiles().filter(({ path }) => path.startsWith('src/'));

/** Where an import leads, from the top of the repository; null for a package. */
const targetOf = (from: string, name: string): string | null =>
  name.startsWith('.') ? posix.join('editor', posix.dirname(from), name) : null;

/** Packages that a room may be made of. */
const packages =
  /^(?:react|react-dom\/client|react-aria-components|monaco-editor\/[\w./-]+|@observablehq\/plot|@noble\/hashes\/\w+\.js)$/;

/** Imports of a room that lead neither to its own files nor to the public door of the kit, nor to a package of the list. */
function astray(file: SourceFile): string[] {
  return importsOf(file)
    .filter((name) => {
      const target = targetOf(file.path, name);
      if (target === null) return !packages.test(name);
      return !(target.startsWith('editor/src/') || target === 'src/index.ts');
    })
    .map((name) => `${file.path} → ${name}`);
}

test('an import past the public door is found', () => {
  const wrong = {
    path: 'src/room/a.tsx',
    text: `import '../../../src/outcome/compile.ts';\nimport 'lodash';`,
  };
  expect(astray(wrong)).toEqual([
    'src/room/a.tsx → ../../../src/outcome/compile.ts',
    'src/room/a.tsx → lodash',
  ]);
  expect(
    astray({ path: 'src/room/a.tsx', text: `import '../../../src/index.ts';\nimport './b.ts';` }),
  ).toEqual([]);
});

test('the rooms import from the public door and their own files alone', () => {
  expect(files.length).toBeGreaterThan(10);
  expect(files.flatMap(astray)).toEqual([]);
});

test('every import of the rooms names a file that is there', () => {
  const there = new Set(repositoryFiles());
  const lost = files.flatMap((file) =>
    importsOf(file)
      .map((name) => targetOf(file.path, name))
      .filter((target) => target !== null && !there.has(target))
      .map((target) => `${file.path} → ${target ?? ''}`),
  );
  expect(lost).toEqual([]);
});

test('no files of the rooms import each other in a circle', () => {
  expect(circle(files)).toEqual([]);
});

test('nothing is kept but the remembered units, the answers of the drill and drafts of what is written, nothing is fetched but the protocols and their sealed editions, nothing is sent but what is saved of them and what is decided, and nothing is logged', () => {
  const keeping = ['localStorage', 'sessionStorage', 'indexedDB', 'caches', 'cookieStore'];
  const sending = ['fetch', 'XMLHttpRequest', 'WebSocket', 'EventSource', 'console'];
  const uses = files.flatMap((file) => {
    const reached = new Set(reachesOutside(file));
    const named = [...keeping, ...sending, 'document.cookie', 'sendBeacon', 'history.'].filter(
      (name) =>
        reached.has(name) ||
        new RegExp(`(?<![\\w'.])${name.replace('.', '\\.')}(?=[.(\\s=])`).test(file.text),
    );
    return named.map((name) => `${file.path}: ${name}`);
  });
  expect([...new Set(uses)].toSorted()).toEqual([
    'src/common/fetch-edition.ts: fetch',
    'src/common/fetch-protocols.ts: fetch',
    'src/common/remembered-units.ts: localStorage',
    'src/common/save.ts: fetch',
    'src/review/decide/fetch-stored.ts: fetch',
    'src/review/decide/send.ts: fetch',
    'src/teach/kept-results.ts: localStorage',
    'src/write/desk/drafts.ts: localStorage',
  ]);
});
