import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { drifted, readInputs, root } from '../../src/generate/generate.ts';
import { outputs } from '../../src/generate/outputs.ts';
import { readOnly } from '../../src/generate/read-only.ts';
import { checkShape } from '../../src/shape/check-shape.ts';
import { yamlToDocument } from '../../src/document/yaml-to-document.ts';
import { toPlain } from '../../src/document/document.ts';
import { vitalSigns } from '../../src/vocabulary/generated/vital-signs.ts';

const inputs = readInputs();
/** All but the longest file, which takes most of the time to format and is compared once. */
const quick = outputs.filter(({ path }) => !path.endsWith('validators.js'));
const standing = (path: string): string => readFileSync(join(root, path), 'utf8');

test('the generated files are what would be written now', async () => {
  expect(await drifted(inputs)).toEqual([]);
});

test('a change of a schema is seen as a drift', async () => {
  const changed = JSON.stringify(inputs.schemas).replace(
    '"How soon the one who is told is at the bedside."',
    '"How soon."',
  );
  const paths = await drifted({ ...inputs, schemas: JSON.parse(changed) as typeof inputs.schemas }, quick);
  expect(paths).toEqual(['src/shape/generated/types.ts']);
});

test('a change of a limit is seen in the validators', async () => {
  const changed = JSON.stringify(inputs.schemas).replace('"maxLength":2000', '"maxLength":2001');
  const schemas = JSON.parse(changed) as typeof inputs.schemas;
  const validators = outputs.find(({ path }) => path.endsWith('validators.js'));
  const made = [await validators?.make(inputs), await validators?.make({ ...inputs, schemas })];
  expect(made[0]).toContain('> 2000');
  expect(made[1]).toContain('> 2001');
});

test('a change of the dictionary is seen as a drift, and one of its form is none', async () => {
  const drift = (vitalSignsText: string): Promise<readonly string[]> =>
    drifted({ ...inputs, vitalSigns: vitalSignsText }, quick);
  expect(await drift(inputs.vitalSigns.replace('language: 1', 'language:  1 # one'))).toEqual([]);
  const changed = inputs.vitalSigns.replace(
    'Common practice, no published source',
    'Common practice, not published',
  );
  expect(await drift(changed)).toContain('src/vocabulary/generated/vital-signs.ts');
});

test.each(outputs)('$path says where it comes from', ({ path }) => {
  expect(standing(path).split('\n')[0]).toMatch(
    /^(\/\/|<!--) Generated from schema\/\S+; do not edit\. npm run generate( -->)?$/,
  );
});

test('the validators run where code from text is forbidden, and load nothing', () => {
  const code = standing('src/shape/generated/validators.js');
  expect(code).not.toMatch(/\brequire\s*\(|\beval\b|\bnew Function\b|\bFunction\s*\(|^import /m);
});

test('the dictionary is the text of schema/vital_signs.yaml, and cannot be changed', () => {
  const { document } = yamlToDocument('schema/vital_signs.yaml', inputs.vitalSigns);
  if (!document) throw new Error('schema/vital_signs.yaml has problems');
  expect(checkShape('dictionary', document).problems).toEqual([]);
  expect(vitalSigns).toEqual(JSON.parse(JSON.stringify(toPlain(document.root))));
  for (const part of [vitalSigns, vitalSigns.observations, Object.values(vitalSigns.observations)[0]])
    expect(part).toSatisfy(Object.isFrozen);
});

test('a dictionary that has not the shape of one is not generated from', async () => {
  const dictionary = outputs.find(({ path }) => path.endsWith('vital-signs.ts'));
  const make = async (vitalSignsText: string): Promise<string> =>
    dictionary?.make({ ...inputs, vitalSigns: vitalSignsText }) ?? '';
  await expect(make('dictionary: x\nlanguage: 1')).rejects.toThrow('vital_signs.yaml');
  await expect(make('dictionary: x\ndictionary: y')).rejects.toThrow('stands here twice');
});

test('generated types cannot be changed either', () => {
  expect(readOnly('a?: Quantity[]')).toBe('readonly a?: readonly Quantity[]');
  expect(readOnly('points: [Quantity, Quantity][]')).toBe(
    'readonly points: readonly (readonly [Quantity, Quantity])[]',
  );
  expect(readOnly('[k: string]: Comparison | Conditions')).toBe(
    'readonly [k: string]: Comparison | Conditions',
  );
  expect(readOnly('/** a: b[] */')).toBe('/** a: b[] */');
});
