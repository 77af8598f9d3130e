import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { sentencesToText } from '../../src/handbook/sentences/sentence.ts';
import { speak } from '../../src/handbook/sentences/spoken.ts';
import { bundled, bundledNames } from '../bundled.ts';

const folder = fileURLToPath(new URL('sentences/', import.meta.url));

/** `APPROVE=1` writes what is said now over what was approved; read what changed before you keep it. */
const approving = process.env['APPROVE'] === '1';

/** The whole logic of a protocol as a council reads it, each part under its name. */
function said(name: string): string {
  const { applies, limits, faults, measures, rules, partitions } = speak(bundled(name));
  const parts = [
    ['applies_when', [applies]] as const,
    ...[...limits].map(([part, sentence]) => [part, [sentence]] as const),
    ...faults,
    ...measures,
    ...rules,
    ...[...partitions].map(([part, sentence]) => [part, [sentence]] as const),
  ];
  return parts.map(([part, sentences]) => `${part}\n${sentencesToText(sentences)}`).join('\n');
}

test.each(bundledNames)('the sentences of %s read as they were approved', (name) => {
  const path = `${folder}${name}.txt`;
  const text = said(name);
  if (approving) writeFileSync(path, text);
  expect(existsSync(path) ? readFileSync(path, 'utf8') : 'nobody has approved this yet').toBe(text);
});

test('no approved sentences are left over', () => {
  expect(readdirSync(folder).toSorted()).toEqual(bundledNames.map((name) => `${name}.txt`).toSorted());
});
