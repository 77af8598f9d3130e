import fc from 'fast-check';
import { expect, test } from 'vitest';
import { YamlReader } from '../../src/document/yaml-reader.ts';
import { yamlToDocument } from '../../src/document/yaml-to-document.ts';
import { bundledNames, bundledText, lessonNames } from '../bundled.ts';

const files = [...bundledNames, ...lessonNames, 'alder_wing'].flatMap((name) =>
  name === 'alder_wing' ? ['alder_wing/ward.yaml'] : [`${name}/protocol.yaml`, `${name}/cases.yaml`],
);

test.each(files)('%s in pieces is the same document, and again after a change', (file) => {
  const reader = new YamlReader();
  const text = bundledText(file);
  expect(reader.read(file, text)).toEqual(yamlToDocument(file, text));
  const changed = text.replace(/(\d+)(?=[^\d]*$)/, '1$1').replace(/^(title:.*)$/m, '$1 and more');
  expect(reader.read(file, changed)).toEqual(yamlToDocument(file, changed));
  expect(reader.read(file, `\n${text}`)).toEqual(yamlToDocument(file, `\n${text}`));
});

/** What somebody types, or deletes, or what the cut itself could stumble over. */
const typed = fc.oneof(
  fc.constantFrom(
    '\n',
    ' ',
    '  ',
    ':',
    ': ',
    '- ',
    '\n- ',
    '\n  - ',
    '#',
    '"',
    "'",
    '{',
    '}',
    '[',
    ']',
    ',',
    '|',
    '>-\n',
    '\t',
    '\r\n',
    '\n---\n',
    '\n...\n',
    '%YAML 1.1\n',
    '&a ',
    '*a',
    '!!x ',
    '\nkey: ',
    '\nrules:\n',
    '\n\n',
    '<<: ',
    '? ',
    '\nx: "\ny: 1"',
    '\n  - a: |\n  - b',
    '\uFEFF',
    '\u0000',
    '0x1F',
  ),
  fc.string({ maxLength: 4 }),
);

const short = ['lessons/one_threshold/protocol.yaml', 'lessons/a_score/cases.yaml', 'alder_wing/ward.yaml'];

test('whatever is typed or deleted, the answer is that of the whole text', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...short),
      fc.array(fc.tuple(fc.nat(), fc.nat({ max: 30 }), typed), { minLength: 1, maxLength: 6 }),
      (file, edits) => {
        const reader = new YamlReader();
        let text = bundledText(file);
        reader.read(file, text);
        for (const [where, deleted, put] of edits) {
          const at = where % (text.length + 1);
          text = text.slice(0, at) + put + text.slice(at + (where % 3 === 0 ? deleted : 0));
          expect(reader.read(file, text)).toEqual(yamlToDocument(file, text));
        }
      },
    ),
    { numRuns: 300 },
  );
});
