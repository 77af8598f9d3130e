import { expect, test } from 'vitest';
import { parseAllDocuments } from 'yaml';
import { allExamples, commandsOf, examplesOf, pages, type Example } from './pages.ts';
import { textOfFile } from './repository.ts';

const examples = allExamples();
const of = (...languages: string[]): Example[] =>
  examples.filter(({ language }) => languages.includes(language));
const place = ({ page, line }: Example): string => `${page}:${line}`;
const scripts = Object.keys((JSON.parse(textOfFile('package.json')) as { scripts: object }).scripts);

/** npm's own short names for scripts; everything else is `npm run`. */
const shortNames = ['start', 'test'];

/** Scripts that a text calls by `npm …`. */
function scriptsCalled(text: string): string[] {
  const calls = text.matchAll(/\bnpm (?:run (?:--silent |-s )?)?([\w:-]+)/g);
  return [...calls]
    .filter(([call, name]) => /\brun /.test(call) || shortNames.includes(name ?? ''))
    .map(([, name]) => name ?? '');
}

function problemsOfYaml(text: string): string[] {
  return parseAllDocuments(text, { strict: true }).flatMap((document) =>
    document.errors.map(({ message }) => message),
  );
}

test('fences are found, with their language, their words and their line', () => {
  const text = 'Before\n\n```yaml file=a.yaml\na: 1\n```\n\n```\nplain\n```\n';
  expect(examplesOf('page.md', text)).toEqual([
    { page: 'page.md', line: 3, language: 'yaml', about: new Map([['file', 'a.yaml']]), text: 'a: 1\n' },
    { page: 'page.md', line: 7, language: '', about: new Map(), text: 'plain\n' },
  ]);
  expect(() => examplesOf('page.md', 'a\n```json\n{}')).toThrow('page.md:2');
});

test('commands are found with what they print', () => {
  const [example] = examplesOf('page.md', '```console\n$ one --x\nfirst\nsecond\n\n$ two\n```\n');
  expect(example && commandsOf(example)).toEqual([
    { command: 'one --x', output: 'first\nsecond' },
    { command: 'two', output: '' },
  ]);
});

test('broken YAML and calls of scripts are seen', () => {
  expect(problemsOfYaml('a: {b: 1')).not.toEqual([]);
  expect(scriptsCalled('`npm start`, `npm run lint` and npm ci')).toEqual(['start', 'lint']);
});

test('every example says its language', () => {
  const known = ['yaml', 'json', 'ts', 'js', 'sh', 'console', 'text'];
  expect(examples.length).toBeGreaterThan(0);
  expect(examples.filter(({ language }) => !known.includes(language)).map(place)).toEqual([]);
});

test('every YAML example parses', () => {
  expect(
    of('yaml').flatMap((example) => problemsOfYaml(example.text).map((what) => `${place(example)}: ${what}`)),
  ).toEqual([]);
});

test.each(of('json').map((example) => [place(example), example] as const))(
  'the JSON example %s parses',
  (_, { text }) => {
    expect(() => JSON.parse(text) as unknown).not.toThrow();
  },
);

test('an example of a file is a part of that file, word for word', () => {
  const shown = examples.filter(({ about }) => about.has('file'));
  const wrong = shown.filter(({ about, text }) => !textOfFile(about.get('file') ?? '').includes(text));
  expect(wrong.map(place)).toEqual([]);
});

test('every script that a page calls is there, and README calls the two that come first', () => {
  const missing = pages().flatMap((page) =>
    scriptsCalled(textOfFile(page))
      .filter((script) => !scripts.includes(script))
      .map((script) => `${page}: npm run ${script}`),
  );
  expect(missing).toEqual([]);
  expect(scriptsCalled(textOfFile('README.md'))).toEqual(expect.arrayContaining(['start', 'test']));
});
