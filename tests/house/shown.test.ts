import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { allExamples, commandsOf, pages } from './pages.ts';
import { root, textOfFile } from './repository.ts';

/** In a page, `npx vitalwright` is the installed command; here it is the same command from its source. */
const npx = 'npx() { shift; node --import tsx src/command-line/main.ts "$@"; }';

/** Where what is seen of a record is kept while these tests run. */
const seen = mkdtempSync(join(tmpdir(), 'vitalwright-seen-'));
afterAll(() => rmSync(seen, { recursive: true, force: true }));

/** What a command prints on a plain terminal, problems and results together. */
function printed(command: string): string {
  const env = { ...process.env, NO_COLOR: '1', COLUMNS: '80', VITALWRIGHT_STATE: seen };
  const { stdout } = spawnSync('sh', ['-c', `${npx}\n{ ${command}\n} 2>&1`], {
    cwd: root,
    env,
    encoding: 'utf8',
  });
  return stdout.trimEnd();
}

const shown = allExamples()
  // An example of how a policy is agreed writes: it is made in a copy, by the test of that.
  .filter(({ language, about }) => language === 'console' && !about.has('in'))
  .flatMap((example) =>
    commandsOf(example).map((each) => ({ place: `${example.page}:${example.line}`, ...each })),
  );

test.each(shown)('$place: `$command` prints what the page shows', ({ command, output }) => {
  expect(command).toMatch(/\bnpx vitalwright\b/);
  expect(printed(command)).toBe(output);
});

/** Calls of the command line that a text names, such as `check` in `vitalwright check`. */
function callsIn(text: string): string[] {
  return [...text.matchAll(/`(?:npx )?vitalwright ([a-z][a-z-]*)/g)].map(([, call]) => call ?? '');
}

test('calls are found in a text', () => {
  expect(callsIn('`vitalwright check` and `npx vitalwright put-in-force X`, not vitalwright serve')).toEqual([
    'check',
    'put-in-force',
  ]);
});

test('every call that a page names is one that the command line knows', () => {
  const help = printed('npx vitalwright --help');
  const named = new Set(pages().flatMap((page) => callsIn(textOfFile(page))));
  expect(named.size).toBeGreaterThan(0);
  expect([...named].filter((call) => !new RegExp(`\\b${call}\\b`).test(help))).toEqual([]);
});
