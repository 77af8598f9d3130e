import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { transformWithOxc } from 'vite';
import { afterAll, expect, test } from 'vitest';
import { usage } from '../../src/command-line/usage.ts';
import { ask } from '../command-line/ask.ts';
import { opened } from '../handbook/page.ts';
import { hostileFolders, isPlain } from './hostile-folder.ts';

// Every form in which the command line gives something, with a text in it that would end, hide or start something there. None of them is Markdown.

const { folderWith, removePlace } = hostileFolders();
afterAll(removePlace);

/** What a form must still be, with the text in it. */
type Holds = (written: string, text: string) => void | Promise<void>;

const isJson: Holds = (written) => expect(() => void JSON.parse(written)).not.toThrow();
const isText: Holds = (written) => isPlain({ out: written, err: '' });

/** A page on which nothing runs and nothing is fetched, and the text is what is read there. */
const isQuietPage: Holds = (written, text) => {
  const document = opened(written);
  expect([...document.querySelectorAll('script, img, iframe, object, embed, form, base, link')]).toEqual([]);
  const attributes = [...document.querySelectorAll('*')].flatMap((each) =>
    each.getAttributeNames().map((name) => `${name}=${each.getAttribute(name) ?? ''}`),
  );
  expect(attributes.filter((each) => /^on|=\s*javascript:/i.test(each))).toEqual([]);
  expect(document.querySelector('h1')?.textContent).toContain(text);
};

const isModule: Holds = async (written) => {
  const { code } = await transformWithOxc(written, 'module.ts', { lang: 'ts' });
  const known = new Set(Object.keys(globalThis));
  const made = (await import(`data:text/javascript,${encodeURIComponent(code)}`)) as { evaluate: unknown };
  expect(typeof made.evaluate).toBe('function');
  expect(Object.keys(globalThis).filter((name) => !known.has(name))).toEqual([]);
};

/** Strings, names and comments as SMT-LIB has them: after they are taken out, brackets pair up, and nothing else is left of the text. */
const isBalanced: Holds = (written, text) => {
  const bare = written.replaceAll(/;[^\n]*|\|[^|]*\||"(?:[^"]|"")*"/g, '');
  let depth = 0;
  for (const sign of bare) {
    depth += sign === '(' ? 1 : sign === ')' ? -1 : 0;
    expect(depth).toBeGreaterThanOrEqual(0);
  }
  expect(depth).toBe(0);
  expect(bare).not.toContain(text);
};

const isXml: Holds = (written) => {
  expect(written).not.toMatch(/<(?:!DOCTYPE|!\[CDATA|script)/);
  const tags = [...written.matchAll(/<(\/?)([a-z]+)[^<>]*?(\/?)>/g)];
  const open: string[] = [];
  for (const [, closes, name = '', alone] of tags) {
    if (closes) expect(open.pop()).toBe(name);
    else if (!alone) open.push(name);
  }
  expect(open).toEqual([]);
};

interface Form {
  /** The option that asks for it; null: what is printed without one. */
  readonly option: string | null;
  readonly args: (folder: string, file: string) => readonly string[];
  readonly holds: Holds;
  /** Whether it is written to a file. */
  readonly intoFile?: true;
}

const other = 'protocols/lessons/one_threshold';
const set = '{ "systolic": 84 }';

const forms: readonly Form[] = [
  { option: null, args: (folder) => ['check', folder], holds: isText },
  { option: null, args: (folder) => ['check', '--unguarded', folder], holds: isText },
  { option: null, args: (folder) => ['check', '--findings', folder], holds: isText },
  { option: null, args: (folder) => ['prove', folder], holds: isText },
  { option: null, args: (folder) => ['compare', other, folder], holds: isText },
  { option: null, args: (folder) => ['read', folder, '--set', set], holds: isText },
  { option: '--handoff', args: (folder) => ['read', folder, '--set', set, '--handoff'], holds: isText },
  { option: '--show', args: (folder) => ['check', folder, '--show', 'document'], holds: isText },
  { option: '--show', args: (folder) => ['check', folder, '--show', 'logic'], holds: isText },
  { option: '--json', args: (folder) => ['check', folder, '--json'], holds: isJson },
  { option: '--json', args: (folder) => ['check', '--unguarded', folder, '--json'], holds: isJson },
  { option: '--json', args: (folder) => ['check', '--findings', folder, '--json'], holds: isJson },
  { option: '--json', args: (folder) => ['prove', folder, '--json'], holds: isJson },
  { option: '--json', args: (folder) => ['compare', other, folder, '--json'], holds: isJson },
  { option: '--json', args: (folder) => ['read', folder, '--set', set, '--json'], holds: isJson },
  {
    option: '--junit',
    args: (folder, file) => ['check', folder, '--junit', file],
    holds: isXml,
    intoFile: true,
  },
  {
    option: '--html',
    args: (folder, file) => ['compare', other, folder, '--html', file],
    holds: isQuietPage,
    intoFile: true,
  },
  {
    option: '--out',
    args: (folder, file) => ['handbook', folder, '--out', file],
    holds: isQuietPage,
    intoFile: true,
  },
  { option: '--to json-logic', args: (folder) => ['build', folder, '--to', 'json-logic'], holds: isJson },
  { option: '--to smt-lib', args: (folder) => ['build', folder, '--to', 'smt-lib'], holds: isBalanced },
  {
    option: '--ask',
    args: (folder) => ['build', folder, '--to', 'smt-lib', '--ask', 'rule:systolic_low'],
    holds: isBalanced,
  },
  { option: '--to typescript', args: (folder) => ['build', folder, '--to', 'typescript'], holds: isModule },
];

const texts = [
  '*/ globalThis.broken = 1; /*',
  '${globalThis.broken = 1}',
  '"; globalThis.broken = 1; "',
  '`; globalThis.broken = 1; `',
  '</script><script>globalThis.broken = 1</script><img src=x onerror=x>',
  ']]></failure></testcase></testsuite>',
  '=cmd|x!A1',
  '| (check-sat) " ; )(',
];

test.each(texts)('%s stays a text in every form', { timeout: 60_000 }, async (text) => {
  const folder = folderWith(text);
  for (const [index, { args, holds, intoFile }] of forms.entries()) {
    const file = join(folder, `written-${index}`);
    const call = args(folder, file);
    const { out, err } = await ask(call);
    expect(out + err, call.join(' ')).not.toBe('');
    isPlain({ out: '', err });
    const written = intoFile ? readFileSync(file, 'utf8') : out;
    expect(written, call.join(' ')).not.toBe('');
    await holds(written, text);
  }
});

/** What is asked, and forms nothing. */
const asking =
  '--set --in-force --at --author --agreed-by --minute --on --key --as --role --by --because --from --instead --port --sets --limits --where --help --version --unguarded --findings --to'.split(
    ' ',
  );
/** The rooms: what they make of a text is tried in the browser (tests/browser/safe.test.ts). */
const rooms = ['--to site'];

test('there is no option, and nothing to build, of which this does not know whether it forms something', () => {
  const options = new Set([...usage.matchAll(/--[a-z-]+[a-z]/g)].map(([option]) => option));
  const targets = [...usage.matchAll(/--to ([a-z|-]+)/g)].flatMap(([, names = '']) =>
    names.split('|').map((name) => `--to ${name}`),
  );
  const formed = forms.flatMap(({ option }) => (option === null ? [] : [option]));
  const known = new Set([...asking, ...rooms, ...formed]);
  expect([...options, ...targets].filter((each) => !known.has(each))).toEqual([]);
});
