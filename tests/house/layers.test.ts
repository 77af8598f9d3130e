import { expect, test } from 'vitest';
import { againstTheOrder, circle, importsOf, rank, reachesOutside, targetOf } from './imports.ts';
import { door, layers, layersAsMarkdown } from './layers.ts';
import { repositoryFiles, sourceFiles, textOfFile } from './repository.ts';

const files = sourceFiles();

test('every file of src stands in a folder of the table', () => {
  expect(files.length).toBeGreaterThan(0);
  expect(files.map(({ path }) => path).filter((path) => rank(path) === -1)).toEqual([]);
  expect(rank('somewhere/else.ts')).toBe(-1);
});

test('imports go one way', () => {
  expect(againstTheOrder(files)).toEqual([]);
});

test('no files import each other in a circle', () => {
  expect(circle(files)).toEqual([]);
});

test('every relative import names a file that is there', () => {
  const there = new Set(repositoryFiles());
  const lost = files.flatMap((file) =>
    importsOf(file)
      .map((name) => targetOf(file.path, name))
      .filter((to) => to !== null && !there.has(`src/${to}`) && !to.startsWith('..'))
      .map((to) => `${file.path} → ${to}`),
  );
  expect(lost).toEqual([]);
});

test('from problems to review, no code reaches outside', () => {
  const pure = files.filter(({ path }) => path === door || layers[rank(path)]?.pure);
  const found = pure.flatMap((file) => reachesOutside(file).map((what) => `${file.path}: ${what}`));
  expect(pure.length).toBeGreaterThan(0);
  expect(found).toEqual([]);
});

test('the independent judge imports nothing from src', () => {
  const judge = repositoryFiles().filter(
    (path) => path.startsWith('tests/oracle/') && !path.endsWith('.test.ts'),
  );
  expect(judge.length).toBeGreaterThan(0);
  const imports = judge.flatMap((path) => importsOf({ path, text: textOfFile(path) }));
  expect(imports.filter((name) => /\bsrc\b|\bvitalwright\b|^$/.test(name))).toEqual([]);
});

test('DEVELOPERS.md shows the table of the layers', () => {
  expect(textOfFile('DEVELOPERS.md')).toContain(layersAsMarkdown());
});
