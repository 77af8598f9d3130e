import { expect, test } from 'vitest';
import { repositoryFiles, textOfFile } from './repository.ts';
import { forbidden, saysForbidden } from './words.ts';

test.each(forbidden)('$what is caught, and what looks like it is not', ({ what, example, harmless }) => {
  expect(saysForbidden('any.md', `first line\n${example}`)).toContain(`any.md:2: ${what}`);
  expect(saysForbidden('any.md', harmless)).toEqual([]);
});

test('no file says what none may say; the only ones without words are the pictures of the rooms', () => {
  const isPicture = (path: string): boolean => /^editor\/pictures\/[a-z_]+\.png$/.test(path);
  const files = repositoryFiles().filter((path) => !isPicture(path));
  expect(files.length).toBeGreaterThan(20);
  expect(files.flatMap((path) => saysForbidden(path, textOfFile(path)))).toEqual([]);
});
