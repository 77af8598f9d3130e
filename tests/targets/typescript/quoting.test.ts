import { parseSync } from 'vite';
import { expect, test } from 'vitest';
import { readProtocol } from '../../../src/index.ts';
import { logicToTypescript } from '../../../src/targets/typescript/logic-to-typescript.ts';
import { Code, code } from '../../../src/targets/typescript/code.ts';
import { bundledLadder, bundledText } from '../../bundled.ts';
import { runModule } from './load-module.ts';

const at = '@';

/** Texts that would end a string, a comment, a template or a line, or hide what follows. */
const attacks = [
  `'; process.exit(1); '`,
  `"; throw 1; "`,
  '*/ throw new Error("out"); /*',
  '${process.exit(1)}',
  '`; throw 1; `',
  String.raw`\'; throw 1; //`,
  String.raw`\u0027; throw 1`,
  '\u2028throw 1',
  '\u2029throw 1',
  '\nthrow 1\n',
  '\r\u0085throw 1',
  '</script><script>throw 1</script>',
  '<!-- throw 1',
  '//# sourceMappingURL=data:x',
  `${at}ts-nocheck`,
  '\u0000\u001b[31m\u009b',
  '\u202e\u200b\ufeff',
  '\ud800',
  String.raw`\\`,
];

test.each(attacks)('%j is a string and nothing else', async (text) => {
  const made = code`export const text = ${text};`.text;
  expect(made).toMatch(/^[ -~]+$/);
  expect(made).not.toMatch(/\*\/|<\/|<!--|`|\$\{/);
  const { text: read } = (await runModule(made)) as unknown as { text: string };
  expect(read).toBe(text);
});

test.each(attacks)('%j stays inside its comment', (text) => {
  for (const made of [Code.comment(text), Code.comment(text, text)]) {
    const { program, comments, errors } = parseSync('a.ts', `${made.text}\nexport const after = 1;\n`);
    expect(errors).toEqual([]);
    expect([comments.length, program.body.length]).toEqual([1, 1]);
    expect(made.text).not.toMatch(/[^\P{C}\n]|[\p{Zl}\p{Zp}]/u);
    expect(made.text).not.toContain('@ts-');
  }
});

test.each(['a-b', '', '1a', 'a b', 'a;b', 'a\u2028', '__proto__ '])('%j is no name', (name) => {
  expect(() => Code.name(name)).toThrow('is no name');
});

test.each([NaN, Infinity, -Infinity])('%s is no number of a program', (number) => {
  expect(() => code`${number}`).toThrow('is no number');
});

test('a protocol with such texts for titles and meanings is a module that runs as before', async () => {
  const plain = bundledText('lessons/one_threshold/protocol.yaml');
  const title = '*/ export const broken = `${process.exit(1)}`; /* </script> ';
  const text = plain.replace(/^title: .*$/m, `title: ${JSON.stringify(title)}`);
  expect(text).not.toBe(plain);
  const { protocol, problems } = readProtocol('protocol.yaml', text, { ladder: bundledLadder() });
  if (!protocol) throw new Error(problems.map(({ says }) => says).join('\n'));
  const made = logicToTypescript(protocol.logic, protocol.protocol);
  const module = await runModule(made);
  expect(Object.keys(module)).not.toContain('broken');
  expect(module.evaluate({ systolic: 88 }).level?.at_least).toBe('call_doctor');
});
