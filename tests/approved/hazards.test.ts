import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { handbookToHtml } from '../../src/handbook/handbook.ts';
import { proveRequirements } from '../../src/review/requirements/prove.ts';
import { teacherOf } from '../../src/teach/teacher.ts';
import { askable, lessonNames } from '../bundled.ts';
import { opened, type Part } from '../handbook/page.ts';

const folder = fileURLToPath(new URL('hazards/', import.meta.url));

/** `APPROVE=1` writes what is said now over what was approved; read what changed before you keep it. */
const approving = process.env['APPROVE'] === '1';

const stating = lessonNames.filter((name) => askable(name).protocol.requirements.length > 0);

const wordsOf = ({ textContent }: Part): string => (textContent ?? '').replaceAll(/\s+/g, ' ').trim();

/** The section as it is read aloud, a line for each part. The digest is left out: it changes with every word of a protocol. */
function said(name: string): string {
  const reads = askable(name);
  const page = opened(
    handbookToHtml({
      reads,
      teacher: teacherOf(reads, null),
      accepted: [],
      proofs: proveRequirements(reads),
      changes: null,
      edition: null,
    }),
  );
  const parts = [...page.querySelectorAll('.hazards h2, .hazards p, .hazards tr, .hazards h4, .hazards ul.logic > li')];
  return `${parts.map(wordsOf).join('\n').replaceAll(/digest [0-9a-f]{12}/g, 'digest (digest)')}\n`;
}

const fileOf = (name: string): string => `${name.replace('lessons/', '')}.txt`;

test.each(stating)('the hazards of %s, and what was found of them, read as they were approved', (name) => {
  const path = `${folder}${fileOf(name)}`;
  const text = said(name);
  if (approving) writeFileSync(path, text);
  expect(existsSync(path) ? readFileSync(path, 'utf8') : 'nobody has approved this yet').toBe(text);
});

test('some lesson states hazards, and no approved text is left over', () => {
  expect(stating.length).toBeGreaterThan(3);
  expect(readdirSync(folder).toSorted()).toEqual(stating.map(fileOf).toSorted());
});
