import { expect, test } from 'vitest';
import { partAt } from '../../src/document/document.ts';
import type { Problem } from '../../src/problems/problem.ts';
import { checkShape } from '../../src/shape/check-shape.ts';
import { kinds } from '../../src/shape/files.ts';
import { shapeWording } from '../../src/problems/wording/shape.ts';
import { faultsAt, type Fault } from './faults.ts';
import { planted } from './planted.ts';
import { reached } from './reached.ts';

// At each place that the schemas state something about, each mistake that can be made there is made, alone.

const places = kinds.flatMap((kind) =>
  reached(kind).map((each) => ({ ...each, name: `${kind} /${each.path.join('/')}` })),
);
const told = new Set<string>();

/** Words that only somebody who knows how the check is made would understand. */
const forbidden =
  /schema|oneof|must match|additional|propert|instance|\bnull\b|\barray\b|\bobject\b|\bstring\b|\binteger\b|\bundefined\b|\bNaN\b/i;

const sentences = ({ says, expected }: Problem): string => `${says} ${expected ?? ''}`;

function wrongIn(
  { kind }: { kind: (typeof kinds)[number] },
  { name, file, code, path, part }: Fault,
): string[] {
  const document = planted(file);
  const { value, problems } = checkShape(kind, document);
  const wrong: string[] = [];
  if (value !== null) wrong.push('it has a value');
  if (problems.length !== 1)
    wrong.push(
      `${problems.length} problems: ${problems.map((each) => `${each.code} ${each.says}`).join(' | ')}`,
    );
  const [problem] = problems;
  if (!problem) return wrong.map((each) => `${name}: ${each}`);
  told.add(problem.code);
  const { node, keySpan } = partAt(document, path);
  const span = part === 'key' && keySpan ? keySpan : node.span;
  if (problem.code !== code) wrong.push(`${problem.code} in place of ${code}`);
  if (problem.column !== span.start + 1) wrong.push(`column ${problem.column} in place of ${span.start + 1}`);
  if (forbidden.test(sentences(problem))) wrong.push(sentences(problem));
  return wrong.map((each) => `${name}: ${each}`);
}

test.each(places)('every mistake in $name is told, once, where it stands, in plain words', (place) => {
  const faults = faultsAt(place);
  expect(faults.flatMap((fault) => wrongIn(place, fault))).toEqual([]);
});

test('every place that is stated is reached, and a mistake can be made at each but the root', () => {
  expect(places.length).toBeGreaterThan(250);
  const untouched = places
    .filter((place) => place.path.length > 0 && faultsAt(place).length === 0)
    .map(({ name }) => name);
  expect(untouched).toEqual([]);
});

test('every problem of shape was told', () => {
  expect([...told].sort()).toEqual(Object.keys(shapeWording).sort());
});
