import { expect, test } from 'vitest';
import { textExamples } from '../../src/document/examples.ts';
import { textToDocument } from '../../src/document/text-to-document.ts';
import { visible } from '../../src/problems/visible.ts';
import { textWording } from '../../src/problems/wording/text.ts';

const shown = (text: string): string =>
  visible(JSON.stringify(text.length > 60 ? `${text.slice(0, 60)}…` : text));
const rows = textExamples.flatMap(({ code, form, accept, reject }) => [
  ...reject.map((text) => ({ name: `${code} in ${form} ${shown(text)}`, file: `a.${form}`, text, code })),
  ...accept.map((text) => ({
    name: `no ${code} in ${form} ${shown(text)}`,
    file: `a.${form}`,
    text,
    code: null,
  })),
]);

test.each(rows)('$name', ({ file, text, code }) => {
  const { document, problems } = textToDocument(file, text);
  const codes = problems.map((problem) => problem.code);
  if (code === null) {
    expect(codes).toEqual([]);
    expect(document).not.toBeNull();
  } else {
    expect(codes).toContain(code);
    expect(document).toBeNull();
  }
});

test('every problem of a text has examples', () => {
  const codes = new Set(textExamples.map(({ code }) => code));
  expect([...codes].sort()).toEqual(Object.keys(textWording).sort());
});
