import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { Finding } from '../../src/problems/problem.ts';
import { reporter } from '../../src/problems/problem.ts';
import type { DictionaryFile } from '../../src/vocabulary/generated/dictionary-file.ts';
import { readDictionary, type Dictionary } from '../../src/vocabulary/dictionary.ts';

/** The dictionary of the kit as its text says it. */
export const vitalSignsFile = parse(
  readFileSync(new URL('../../schema/vital_signs.yaml', import.meta.url), 'utf8'),
) as DictionaryFile;

/** The same, read, with what its reader found. */
export function readVitalSigns(): { dictionary: Dictionary; findings: readonly Finding[] } {
  const findings: Finding[] = [];
  return { dictionary: readDictionary(vitalSignsFile, reporter(findings)), findings };
}
