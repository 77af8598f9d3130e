import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { beforeAll, expect, test } from 'vitest';
import { readSet } from '../../../src/index.ts';
import { answersOf } from '../../../src/outcome/answers.ts';
import { seriesToBounds } from '../../../src/series/series-to-bounds.ts';
import { logicToTypescript } from '../../../src/targets/typescript/logic-to-typescript.ts';
import { drawn } from '../../agreement/draw.ts';
import { askable, bundledNames, lessonNames } from '../../bundled.ts';
import { drawPlainSet } from '../json-logic/plain-sets.ts';
import { loadModule, plainModule } from './load-module.ts';

const names = [...bundledNames, ...lessonNames];

/** A set with what it lacks as null, and yes or no as words. */
const typed = (set: Readonly<Record<string, unknown>>): Record<string, unknown> =>
  Object.fromEntries(
    Object.entries(set).map(([name, value]) => [
      name,
      value === true ? 'yes' : value === false ? 'no' : value,
    ]),
  );

test.each(names)('%s: the module says of a set what the kit says', async (name) => {
  const compiled = askable(name);
  const { protocol, logic } = compiled;
  const module = await loadModule(compiled);
  const backs = [...protocol.measures.values()]
    .filter(({ how }) => 'over' in how)
    .map((measure) => measure.name);
  const sets = drawn((draw) => drawPlainSet(draw, protocol));
  const property = fc.property(sets, (set) => {
    const { series } = readSet('set.json', JSON.stringify(set), compiled);
    if (!series) throw new Error('the set cannot be read');
    const bounds = seriesToBounds(protocol, series);
    const kit = answersOf(compiled, bounds);
    const at = (input: string): number =>
      bounds.narrow[logic.inputs.findIndex((each) => each.name === input)] ?? 0;
    const lookedBack = (back: string): object => ({
      low: at(`${back}:low`),
      high: at(`${back}:high`),
      sure: at(`${back}:sure`) === 1,
      maybe: at(`${back}:maybe`) === 1,
      open: at(`${back}:open`) === 1,
      count: at(`${back}:count`) || 1,
    });
    const look_backs = Object.fromEntries(backs.map((back) => [back, lookedBack(back)]));
    const outcome = module.evaluate({ ...typed(set), look_backs });
    const level = (index: number | null): string | null => protocol.ladder.levels[index ?? -1]?.name ?? null;
    expect(outcome.applies).toBe(kit.applies);
    expect(outcome.level).toEqual(
      kit.level && {
        at_least: level(kit.level.atLeast),
        could_be: level(kit.level.couldBe),
        settled: kit.level.settled,
      },
    );
    expect(outcome.rules).toEqual(Object.fromEntries(kit.rules.map(({ rule, state }) => [rule.name, state])));
    expect(new Set(outcome.refused)).toEqual(
      new Set(bounds.facts.refused.map(({ observation }) => observation)),
    );
  });
  fc.assert(property, { numRuns: 150, seed: 20_261_125 });
});

const folder = mkdtempSync(join(tmpdir(), 'module-'));
const tsc = fileURLToPath(new URL('../../../node_modules/typescript/bin/tsc', import.meta.url));
const strict =
  '--noEmit --ignoreConfig --strict --exactOptionalPropertyTypes --noUncheckedIndexedAccess --noImplicitReturns --target es2022 --module esnext --moduleResolution bundler --allowImportingTsExtensions --types';

/** What the compiler says of files, with every strictness that there is. */
function compilerSays(files: readonly string[]): string {
  const { stdout } = spawnSync(process.execPath, [tsc, ...strict.split(' '), '', ...files], {
    cwd: folder,
    encoding: 'utf8',
  });
  return stdout;
}

test('every module compiles as it is', () => {
  const files = names.map((name) => {
    const { logic, protocol } = askable(name);
    const file = `${name.replace('/', '_')}.ts`;
    writeFileSync(join(folder, file), logicToTypescript(logic, protocol));
    return file;
  });
  expect(compilerSays(files)).toBe('');
});

const use = (given: string, more = ''): string =>
  `import { evaluate, type RuleId, type LevelId } from './two_signs.ts';\nexport const found = evaluate(${given});\n${more}`;
const whole = '{ heart_rate: 100, respiratory_rate: 20, age: 40 }';

const documented = readFileSync(new URL('as-documented.txt', import.meta.url), 'utf8');

const printer = 'declare const console: { log: (...all: unknown[]) => void };\n';

const programs: readonly (readonly [name: string, text: string, says: string | null])[] = [
  ['a set as it should be', use(whole), null],
  [
    'what was not taken',
    use('{ heart_rate: null, respiratory_rate: { unobtainable: "cold" }, age: null }'),
    null,
  ],
  ['a range', use('{ heart_rate: { low: 90, high: 100 }, respiratory_rate: 20, age: 40 }'), null],
  [
    'a misspelt observation',
    use('{ heart_rat: 100, respiratory_rate: 20, age: 40 }'),
    "'heart_rat' does not exist",
  ],
  ['a forgotten observation', use('{ heart_rate: 100, age: 40 }'), "'respiratory_rate' is missing"],
  [
    'a text where a number belongs',
    use('{ heart_rate: "100", respiratory_rate: 20 }'),
    "'string' is not assignable",
  ],
  ['the page about the module', `${printer}${documented}`, null],
  ['a rule that there is not', use(whole, "export const rule: RuleId = 'no_such_rule';"), '"no_such_rule"'],
  ['a level that there is not', use(whole, "export const level: LevelId = 'call_docter';"), '"call_docter"'],
];

/** The programs compiled beside one module, in one go. */
const said = new Map<string, string>();
beforeAll(() => {
  const { logic, protocol } = askable('lessons/two_signs_together');
  writeFileSync(join(folder, 'two_signs.ts'), logicToTypescript(logic, protocol));
  for (const [index, [, text]] of programs.entries())
    writeFileSync(join(folder, `program_${index}.ts`), text);
  const lines = compilerSays(programs.map((_, index) => `program_${index}.ts`)).split('\n');
  for (const [index, [name]] of programs.entries())
    said.set(name, lines.filter((line) => line.startsWith(`program_${index}.ts`)).join('\n'));
  said.set('elsewhere', lines.filter((line) => /^\S/.test(line) && !line.startsWith('program_')).join('\n'));
});

test.each(programs)('%s: what the compiler says', (name, _, says) => {
  if (says === null) expect(said.get(name)).toBe('');
  else expect(said.get(name)).toContain(says);
});

test('the compiler finds fault with nothing else', () => {
  expect(said.get('elsewhere')).toBe('');
});

test('the page about the module shows what runs', async () => {
  const { logic, protocol } = askable('lessons/two_signs_together');
  writeFileSync(join(folder, 'two_signs.mjs'), await plainModule(logicToTypescript(logic, protocol)));
  const program = (await plainModule(documented)).replace('two_signs.ts', 'two_signs.mjs');
  writeFileSync(join(folder, 'as-documented.mjs'), program);
  const { stdout, stderr } = spawnSync(process.execPath, ['as-documented.mjs'], {
    cwd: folder,
    encoding: 'utf8',
  });
  expect(stderr).toBe('');
  expect(stdout).toMatchInlineSnapshot(`
    "{
      at_least: 'look_again',
      could_be: 'tell_nurse_in_charge',
      settled: false
    } {
      fast_rate: 'met',
      fast_breathing: 'undecided',
      both_fast: 'undecided'
    }
    {
      at_least: 'look_again',
      could_be: 'tell_nurse_in_charge',
      settled: false
    } { at_least: 'usual_round', could_be: 'usual_round', settled: true }
    "
  `);
});

test('from plain JavaScript a misspelt observation counts as not taken, and nothing is settled', async () => {
  const { evaluate } = await loadModule(askable('lessons/two_signs_together'));
  const misspelt = evaluate({ heart_rat: 72, respiratory_rate: 16, age: 40 });
  expect(misspelt).toEqual(evaluate({ heart_rate: null, respiratory_rate: 16, age: 40 }));
  expect(misspelt.level).toMatchObject({ at_least: null, settled: false });
});
