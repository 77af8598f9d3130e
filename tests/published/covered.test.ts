import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { responseFigures, totalRange } from './early-warning-responses.ts';
import { codes, faults, units } from './lists.ts';
import { testProtocol } from './kit.ts';
import { works, type Work } from './works.ts';

const page = readFileSync(new URL('COVERED.md', import.meta.url), 'utf8');
const [held = '', notHeld = ''] = page.split('\n## ').slice(1);

/** The cells of the rows of a table, its heading left out. */
const rowsOf = (section: string): string[][] =>
  section
    .split('\n')
    .filter((line) => line.startsWith('| ') && !line.includes('figures |') && !line.startsWith('| figures'))
    .map((line) => line.split(' | ').map((cell) => cell.replaceAll(/^\| | \|$/g, '')));

const namesIn = (cell: string): string[] => cell.split(' ').map((name) => name.replaceAll('`', ''));

/** The names of figures without what tells several of one apart. */
const namesOf = (lines: readonly { readonly id: string }[]): string[] => [
  ...new Set(lines.map(({ id }) => id.split(': ')[0] ?? '')),
];

/** What each file holds. */
const files = new Map<string, string[]>([
  ...works.map(
    ({ name, figures = [], finds = [] }) =>
      [`figures/${name}.yaml`, namesOf([...figures, ...finds])] as const,
  ),
  ['lists/codes.yaml', namesOf(codes.codes)],
  ['lists/units.yaml', namesOf([...units.codes, ...units.conversions])],
  ['lists/faults.yaml', namesOf(faults.faults)],
  ['early-warning-responses.ts', namesOf([totalRange, ...responseFigures])],
]);

const claimed = new Map(
  rowsOf(held).map(([file = '', , names = '']) => [/\[(.*)\]/.exec(file)?.[1] ?? '', namesIn(names)]),
);

test('the page says of every file what it holds, and of no other', () => {
  expect([...claimed.keys()].toSorted()).toEqual([...files.keys()].toSorted());
});

test.each([...files])('%s holds what the page says', (file, names) => {
  expect(claimed.get(file)?.toSorted()).toEqual(names.toSorted());
});

test('what is not held has a reason, stands once, and is in no file', () => {
  const rows = rowsOf(notHeld);
  expect(rows.filter(([, why = '']) => why.length < 10)).toEqual([]);
  const names = rows.flatMap(([cell = '']) => namesIn(cell));
  expect(new Set(names).size).toBe(names.length);
  const inFiles = new Set([...files.values()].flat());
  expect(names.filter((name) => inFiles.has(name))).toEqual([]);
});

/** The figures of a file whose source is not cited in it or in its protocol. */
const uncited = ({ protocol, sources = {}, figures = [], finds = [] }: Work): string[] => {
  const ofProtocol = protocol === undefined ? new Map() : testProtocol(protocol).protocol.sources;
  const isCited = (name: string): boolean => sources[name] !== undefined || ofProtocol.has(name);
  return [...figures, ...finds].filter(({ source }) => !isCited(source)).map(({ id }) => id);
};

test('every figure has a source, and no name stands twice', () => {
  expect(works.flatMap(uncited)).toEqual([]);
  expect(faults.faults.filter(({ source }) => faults.sources[source] === undefined)).toEqual([]);
  const ids = works.flatMap(({ figures = [], finds = [] }) => [...figures, ...finds].map(({ id }) => id));
  expect(ids.filter((id, index) => ids.indexOf(id) !== index)).toEqual([]);
});
