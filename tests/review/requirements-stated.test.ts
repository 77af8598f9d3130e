import { expect, test } from 'vitest';
import { proveRequirements, requirementKey, requirementsOf } from '../../src/index.ts';
import { askable } from '../bundled.ts';

test('what a ladder states under a name that the file has too is a requirement of its own', () => {
  const asked = askable('early_warning_score');
  const names = requirementsOf(asked).map(({ name }) => name);
  expect(names).toContain('nothing_needed_hides');
  expect(names).toContain('alder_ladder nothing_needed_hides');
  expect(new Set(names).size).toBe(names.length);
  const told: string[] = [];
  const proofs = proveRequirements(asked, { progress: ({ requirement }) => void told.push(requirement) });
  expect(proofs.map(({ requirement }) => requirementKey(requirement))).toEqual(names);
  expect(names).toEqual(expect.arrayContaining([...new Set(told)]));
});
