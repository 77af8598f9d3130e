import { mkdirSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { jsonText } from '../../src/command-line/json-text.ts';
import { ask } from '../command-line/ask.ts';
import { hostileFolders, isPlain } from './hostile-folder.ts';
import { refusedTexts, takenTexts } from './texts.ts';

const { place, folderWith, removePlace } = hostileFolders();
afterAll(removePlace);

/** Every text anywhere in a value. */
const textsIn = (value: unknown): string[] =>
  typeof value === 'string'
    ? [value]
    : value !== null && typeof value === 'object'
      ? Object.values(value).flatMap(textsIn)
      : [];

test.each(takenTexts)(
  '%j breaks no artefact, is the same text in the outcome, and plain in the terminal',
  async (text) => {
    const folder = folderWith(text);
    const artefact = await ask(['build', folder, '--to', 'json-logic']);
    expect(artefact.err).toBe('');
    expect(JSON.parse(artefact.out)).toMatchObject({ logic: 1, protocol: 'one_threshold' });
    const set = '{ "systolic": 84 }';
    const outcome = await ask(['read', folder, '--set', set, '--json']);
    expect(textsIn(JSON.parse(outcome.out))).toContain(text);
    const others = [
      ['read', folder, '--set', set],
      ['read', folder, '--set', set, '--handoff'],
      ['check', folder],
    ];
    for (const answer of [artefact, outcome, ...(await Promise.all(others.map(async (args) => ask(args))))])
      isPlain(answer);
  },
);

test.each(refusedTexts)('%j is refused in a protocol, and shown plainly', async (text) => {
  const folder = folderWith(text);
  for (const args of [
    ['check', folder],
    ['check', folder, '--json'],
    ['read', folder, '--set', '{}'],
  ]) {
    const answer = await ask(args);
    expect(answer.exit).toBeGreaterThan(0);
    isPlain(answer);
  }
});

test.each(refusedTexts.filter((text) => !text.includes('\0')))(
  'a folder called %j is named plainly',
  async (text) => {
    const folder = join(place, text);
    mkdirSync(place, { recursive: true });
    renameSync(folderWith('A title'), folder);
    for (const args of [
      ['check', folder],
      ['check', folder, '--json'],
      ['read', folder, '--set', '{"sys":1}'],
      ['build', folder],
    ]) {
      isPlain(await ask(args));
    }
    isPlain(await ask(['check', join(folder, text)]));
    const { files } = JSON.parse((await ask(['check', folder, '--json'])).out) as {
      files: { file: string }[];
    };
    expect(files.some(({ file }) => file.includes(text))).toBe(true);
  },
);

test.each([...takenTexts, ...refusedTexts])('%j is plain in JSON, and read back the same', (text) => {
  const json = jsonText({ [text]: [text] });
  isPlain({ out: json, err: '' });
  expect(Object.entries(JSON.parse(json) as object)).toEqual(Object.entries({ [text]: [text] }));
});
