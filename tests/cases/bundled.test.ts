import { expect, test } from 'vitest';
import { runCases } from '../../src/index.ts';
import { askable, bundledNames, bundledText, lessonNames } from '../bundled.ts';

test.each([...bundledNames, ...lessonNames])('%s: every case comes out as the council expects', (name) => {
  const { results, problems } = runCases(
    `${name}/cases.yaml`,
    bundledText(`${name}/cases.yaml`),
    askable(name),
  );
  expect(problems.map(({ line, says }) => `${line}: ${says}`)).toEqual([]);
  expect(results.length).toBeGreaterThan(0);
});

test.each(bundledNames)('%s has at least twenty cases', (name) => {
  const { results } = runCases(`${name}/cases.yaml`, bundledText(`${name}/cases.yaml`), askable(name));
  expect(results.length).toBeGreaterThanOrEqual(20);
});
