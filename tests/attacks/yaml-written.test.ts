import { expect, test } from 'vitest';
import { flowText, plainText } from '../../src/authoring/yaml-text.ts';
import { toPlain } from '../../src/document/document.ts';
import { yamlToDocument } from '../../src/document/yaml-to-document.ts';
import { addCase, readDocument, spliced, type Plain } from '../../src/index.ts';
import { textToYaml } from '../../src/review/examples/node-to-yaml.ts';
import { bundledText } from '../bundled.ts';
import { refusedTexts, takenTexts } from './texts.ts';

const read = (yaml: string): unknown => {
  const { document, problems } = yamlToDocument('written.yaml', yaml);
  expect(problems).toEqual([]);
  return document && toPlain(document.root);
};

test.each(takenTexts)(
  '%j is read back as it was meant, in brackets, in lines, as a key and in a printed case',
  (text) => {
    expect(read(`a: ${plainText(text)}\n`)).toEqual({ a: text });
    expect(read(`a: ${textToYaml(text)}\n`)).toEqual({ a: text });
    expect(read(`- ${textToYaml(text)}\n- 1\n`.replaceAll(/^/gm, '  ').replace(/^/, 'a:\n'))).toEqual({
      a: [text, 1],
    });
    expect(read(`a: ${flowText([text, { b: text }])}\n`)).toEqual({ a: [text, { b: text }] });
  },
);

test.each(refusedTexts)(
  '%j never gets through by being written: it is refused again, or shown by its number',
  (text) => {
    for (const yaml of [`a: ${plainText(text)}\n`, `a: ${textToYaml(text)}\n`]) {
      const { document, problems } = yamlToDocument('written.yaml', yaml);
      if (problems.length === 0) expect(document && toPlain(document.root)).toEqual({ a: text });
      expect(yaml.split('\n')).toHaveLength(2);
    }
  },
);

test.each(takenTexts)(
  'a case called %j that is pasted is one more case with that name, and the others stay',
  (text) => {
    const before = bundledText('lessons/one_threshold/cases.yaml');
    const yaml = `  - case: ${textToYaml(text)}\n    set: { systolic: 88 }\n    expect:\n      level: { at_least: none, could_be: none, settled: no }\n`;
    const after = spliced(before, addCase(before, yaml, { protocol: 'one_threshold' }) ?? []);
    const cases = (from: string): readonly Plain[] =>
      (toPlain(readDocument('cases.yaml', from).document?.root as never) as { cases: readonly Plain[] })
        .cases;
    expect(cases(after).slice(0, -1)).toEqual(cases(before));
    expect((cases(after).at(-1) as { case: unknown }).case).toBe(text);
  },
);
