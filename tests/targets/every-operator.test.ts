import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { operators } from '../../src/logic/operators.ts';

// Every target, with each operator in turn left out, does not compile.

const root = fileURLToPath(new URL('../..', import.meta.url));
const targets = [
  'src/targets/evaluator/operations.ts',
  'src/targets/smt-lib/operators.ts',
  'src/targets/typescript/graph.ts',
  'src/targets/typescript/write-parts.ts',
];

/** The text of a target without its answer to an operator, importing from where the target itself stands. */
function without(target: string, operator: string): string {
  const text = readFileSync(join(root, target), 'utf8').replaceAll(
    /from '(\.{1,2}\/[^']+)'/g,
    (_, path: string) => `from '${join(root, dirname(target), path)}'`,
  );
  const key = /^\w+$/.test(operator) ? operator : `'${operator}'`;
  const lines = text.split('\n');
  const from = lines.findIndex((line) => line.trimStart().startsWith(`${key}: (`));
  const indent = (line: string): number => line.length - line.trimStart().length;
  const own = indent(lines[from] ?? '');
  const more = lines
    .slice(from + 1)
    .findIndex((line) => line !== '' && indent(line) <= own && !/^\s*}?,$/.test(line));
  return [...lines.slice(0, from), ...lines.slice(from + 1 + more)].join('\n');
}

test('a target that forgets an operator does not compile', { timeout: 120_000 }, () => {
  const folder = mkdtempSync(join(tmpdir(), 'operators-'));
  const names = Object.keys(operators);
  const files = targets.flatMap((target, place) =>
    names.map((operator, index) => {
      const file = `target_${place}_${index}.ts`;
      writeFileSync(join(folder, file), without(target, operator));
      const named = /^\w+$/.test(operator) ? operator : `"${operator}"`;
      return { file, says: `Property '${named}' is missing` };
    }),
  );
  writeFileSync(
    join(folder, 'tsconfig.json'),
    JSON.stringify({
      extends: join(root, 'tsconfig.json'),
      include: ['*.ts'],
      compilerOptions: { types: [], noUnusedLocals: false },
    }),
  );
  const tsc = join(root, 'node_modules/typescript/bin/tsc');
  const { stdout } = spawnSync(process.execPath, [tsc, '--pretty', 'false', '-p', folder], {
    cwd: folder,
    encoding: 'utf8',
  });
  const lines = stdout.split('\n').filter((line) => /^\S/.test(line));
  expect(
    files.filter(
      ({ file, says }) => !lines.some((line) => line.startsWith(`${file}(`) && line.includes(says)),
    ),
  ).toEqual([]);
  // And for no other reason.
  expect(lines.filter((line) => !/^target_\d+_\d+\.ts\(.*Property '.+' is missing/.test(line))).toEqual([]);
});
