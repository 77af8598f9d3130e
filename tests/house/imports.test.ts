import { expect, test } from 'vitest';
import { againstTheOrder, circle, importsOf, reachesOutside, type SourceFile } from './imports.ts';

const file = (path: string, text: string): SourceFile => ({ path, text });
const importing = (path: string, ...names: string[]): SourceFile =>
  file(path, names.map((name) => `import '${name}';`).join('\n'));

test('every way to import is seen, and words in strings and comments are not', () => {
  const text = `
    // import './comment.ts';
    const words = "import './string.ts'";
    import './bare.ts';
    import whole, { type One } from './named.ts';
    import type { Two } from './type.ts';
    export { three } from './again.ts';
    export * from './all.ts';
    type Four = import('./inline.ts').Four;
    const five = await import('./late.ts');
    const six = await import(words);
  `;
  expect(importsOf(file('a.ts', text)).toSorted()).toEqual(
    [
      '',
      './again.ts',
      './all.ts',
      './bare.ts',
      './inline.ts',
      './late.ts',
      './named.ts',
      './type.ts',
    ].toSorted(),
  );
});

test('an import against the order is found', () => {
  const wrong = [
    importing('logic/a.ts', '../outcome/b.ts'),
    importing('document/c.ts', '../../tests/house/layers.ts', '../../tests/cases.json'),
    importing('index.ts', './command-line/main.ts'),
    file('series/d.ts', 'const late = await import(`./${name}.ts`);'),
  ];
  expect(againstTheOrder(wrong)).toEqual([
    'logic/a.ts → outcome/b.ts',
    'document/c.ts → ../tests/house/layers.ts',
    'document/c.ts → ../tests/cases.json',
    'index.ts → command-line/main.ts',
    'series/d.ts → a name that is worked out',
  ]);
});

test('an import in the order is let through', () => {
  const right = [
    importing('outcome/a.ts', '../logic/b.ts', './c.ts', 'yaml'),
    importing('index.ts', './outcome/a.ts'),
    importing('command-line/main.ts', '../index.ts', '../../package.json', '../../schema/set.schema.json'),
  ];
  expect(againstTheOrder(right)).toEqual([]);
});

test('a circle is found, also one of types over three files', () => {
  const files = [
    importing('a/one.ts', './two.ts'),
    file('a/two.ts', `import type { Three } from '../b/three.ts';`),
    importing('b/three.ts', '../a/one.ts'),
  ];
  expect(circle(files)).toEqual(['a/one.ts', 'a/two.ts', 'b/three.ts', 'a/one.ts']);
  expect(circle(files.slice(0, 2))).toEqual([]);
});

test.each([
  [`import { readFileSync } from 'node:fs';`, 'node:fs'],
  [`const fs = await import('node:fs');`, 'node:fs'],
  ['export const at = Date.now();', 'Date.now'],
  ['export const at = new Date();', 'new Date()'],
  ['export const at = Date();', 'new Date()'],
  ['export const chance = Math.random();', 'Math.random'],
  [`export const page = await fetch('x');`, 'fetch'],
  ['export const home = process.env;', 'process'],
  ['export const home = globalThis.process;', 'globalThis'],
  [`export const made = new Function('return 1');`, 'Function'],
  [`export const made = eval('1');`, 'eval'],
  ['export const here = import.meta.url;', 'import.meta'],
  ['const { env } = process;', 'process'],
  ['export const all = { process };', 'process'],
  ['export function read(text: string) { return text + process.cwd(); }', 'process'],
])('%s reaches outside', (text, what) => {
  expect(reachesOutside(file('logic/a.ts', text))).toContain(what);
});

test.each([
  ['export const at = new Date(text);'],
  ['export const at = Date.parse(text);'],
  ['export const part = found.process;'],
  ['export const part = { process: found, fetch: 1 };'],
  ['export function show(process: Process): string { return process.file; }'],
  ['export const show = (fetch: string): string => fetch;'],
  ['export interface Found { readonly process: Process; fetch(): void }'],
  ['export const most = Math.max(1, 2);'],
  ['// Date.now() and process.env'],
  [`export const words = 'Date.now()';`],
  ['export const call = (run: Function) => run;'],
])('%s does not', (text) => {
  expect(reachesOutside(file('logic/a.ts', text))).toEqual([]);
});
