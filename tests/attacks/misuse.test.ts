import { afterAll, expect, test } from 'vitest';
import { ask } from '../command-line/ask.ts';
import { at, everyName, place, removePlace, unreadable } from './unreadable.ts';

// Each call with what it cannot be asked: it ends with 2, says why on stderr in words, prints nothing, and leaves no file.

const whatIsThere = everyName();

afterAll(removePlace);

const lesson = 'protocols/lessons/one_threshold';
const logic = ['build', lesson, '--to', 'json-logic'];
const smt = ['build', lesson, '--to', 'smt-lib'];

const calls: readonly (readonly [name: string, (path: string) => string[]])[] = [
  ['read', (path) => ['read', path, '--set', '{}']],
  ['compare', (path) => ['compare', path, lesson]],
  ['compare, as the newer', (path) => ['compare', lesson, path]],
  ['read --handoff', (path) => ['read', path, '--set', '{}', '--handoff']],
  ['build', (path) => ['build', path, '--to', 'typescript', '--out', at('never.ts')]],
  ['handbook', (path) => ['handbook', path, '--out', at('never.html')]],
  ['prove', (path) => ['prove', path]],
  ['prove --json', (path) => ['prove', path, '--json']],
];

const opensRooms = new Set(['a_folder', 'with_pipe', 'nothing'].map((name) => at(name)));

const row = (name: string, args: readonly string[], says: RegExp): Row => [name, args, says];

type Row = readonly [name: string, args: readonly string[], says: RegExp, stdin?: string];

const rows: readonly Row[] = [
  ...unreadable.flatMap(([name, path, check, other]) => [
    ...(check === null
      ? []
      : [
          row(`check: ${name}`, ['check', path], check),
          row(`check --json: ${name}`, ['check', path, '--json'], check),
          row(`check --junit: ${name}`, ['check', path, '--junit', at('never.xml')], check),
          row(`check --unguarded: ${name}`, ['check', path, '--unguarded'], /./),
          // A folder without protocols is a place to write the first one in, and is served.
          ...(opensRooms.has(path) ? [] : [row(`serve: ${name}`, ['serve', path, '--port', '0'], /./)]),
        ]),
    ...calls.map(([call, args]) => row(`${call}: ${name}`, args(path), other)),
    row(`check --show: ${name}`, ['check', path, '--show', 'logic'], /./),
  ]),
  ['check: an option that is unknown', ['check', '--jsno'], /Unknown option '--jsno'/],
  ['check: one that would colour the terminal', ['check', '--\u001b[31m'], /Unknown option '--␛\[31m'/],
  ['check: an option twice', ['check', lesson, '--json', '--json'], /--json' is given more than once/],
  [
    'check: two reports',
    ['check', lesson, '--junit', at('a.xml'), '--junit', at('b.xml')],
    /'--junit' is given more than once/,
  ],
  ['check: an option without its value', ['check', lesson, '--junit'], /--junit/],
  ['check: an option with a value too many', ['check', lesson, '--json=yes'], /does not take an argument/],
  ['check: two questions', ['check', lesson, '--show', 'logic', '--unguarded'], /Only one of/],
  ['check: a report nobody writes', ['check', lesson, '--unguarded', '--junit', at('a.xml')], /Only one of/],
  ['check: a stage that is none', ['check', lesson, '--show', 'constructor'], /document, logic, bounds/],
  ['check: a report in a folder', ['check', lesson, '--junit', place], /it is a folder/],
  ['check: a report below a file', ['check', lesson, '--junit', 'README.md/x.xml'], /is a file/],
  ['check: a report on a full disk', ['check', lesson, '--junit', '/dev/full'], /neither a file nor free/],
  ['check: a report without a name', ['check', lesson, '--junit', ''], /was not written/],
  ['check: one path of two', ['check', lesson, at('no_such')], /no such file/],
  ['compare: one protocol', ['compare', lesson], /Two protocols/],
  ['compare: three protocols', ['compare', lesson, lesson, lesson], /Two protocols/],
  [
    'compare: a protocol and a policy',
    ['compare', lesson, 'alder_wing'],
    /with a protocol, and a ward policy with/,
  ],
  ['compare: an unknown option', ['compare', lesson, lesson, '--jsn'], /Unknown option/],
  ['read: no protocol', ['read'], /One protocol/],
  ['read: two protocols', ['read', lesson, lesson, '--set', '{}'], /One protocol/],
  ['read: a set twice', ['read', lesson, '--set', '{}', '--set', '{}'], /'--set' is given more than once/],
  ['read: two forms', ['read', lesson, '--json', '--handoff', '--set', '{}'], /not both/],
  ['read: a set that is no JSON', ['read', lesson, '--set', '{systolic: 104'], /NOTHING HAS BEEN READ/],
  ['read: a set that stops', ['read', lesson], /NOTHING HAS BEEN READ/, '{ "systolic": 10'],
  ['read: nothing on standard input', ['read', lesson], /Nothing is written here/, ''],
  ['read: a set over 1 MiB', ['read', lesson], /longer than 1 MiB/, 'x'.repeat(1_048_577)],
  ['read: a set in another encoding', ['read', lesson], /broken/, '\uFFFD\uFFFD{\u0000}\u0000'],
  ['read: YAML for JSON', ['read', lesson], /NOTHING HAS BEEN READ/, 'systolic: 104'],
  [
    'read: a word that every object has',
    ['read', lesson, '--set', '{"rate_constructor":1}'],
    /rate_constructor/,
  ],
  ['build: no protocol', ['build', '--to', 'typescript'], /One protocol/],
  ['build: two protocols', [...logic, lesson], /One protocol/],
  ['build: no target', ['build', lesson], /--to takes/],
  ['build: a target that is none', ['build', lesson, '--to', 'constructor'], /--to takes/],
  ['build: two targets', [...logic, '--to', 'typescript'], /'--to' is given more than once/],
  ['build: two files', [...logic, '--out', at('a'), '--out', at('b')], /'--out' is given more than once/],
  ['build: to a folder', [...logic, '--out', place], /it is a folder/],
  ['build: to a full disk', [...logic, '--out', '/dev/full'], /neither a file nor free/],
  ['build: to a pipe', [...logic, '--out', at('pipe')], /neither a file nor free/],
  ['build: to a circle of links', [...logic, '--out', at('circle')], /was not written/],
  ['build: below a name that would colour', [...logic, '--out', at('\u001b[31m', 'a')], /␛\[31m/],
  ['build: a question to JSON Logic', [...logic, '--ask', 'set'], /--ask is for --to smt-lib alone/],
  ['build: rooms, but not where to', ['build', '--to', 'site'], /--out FOLDER/],
  ['build: rooms to where something is', ['build', '--to', 'site', '--out', place], /is not empty/],
  [
    'build: rooms of nothing',
    ['build', at('none'), '--to', 'site', '--out', at('rooms')],
    /There is no folder/,
  ],
  [
    'build: rooms of two folders',
    [...logic.slice(0, 2), lesson, '--to', 'site', '--out', at('rooms')],
    /At most one folder/,
  ],
  [
    'build: sets of a module',
    ['build', lesson, '--to', 'typescript', '--where', 'systolic=1'],
    /--where is for/,
  ],
  ['build: a question that is none', [...smt, '--ask', 'constructor'], /--ask takes set, rule:NAME/],
  ['build: an empty question', [...smt, '--ask', ''], /--ask takes set, rule:NAME/],
  ['build: two questions', [...smt, '--ask', 'set', '--ask', 'set'], /'--ask' is given more than once/],
  ['build: a rule that is not there', [...smt, '--ask', 'rule:systolic_lwo'], /Did you mean "systolic_low"/i],
  [
    'build: a rule that every object has',
    [...smt, '--ask', 'rule:__proto__'],
    /there is no rule "__proto__"/,
  ],
  ['build: a rule that would colour', [...smt, '--ask', 'rule:\u001b[31m'], /there is no rule "␛\[31m"/],
  [
    'build: a rule that would end a symbol',
    [...smt, '--ask', 'rule:| (assert false)'],
    /there is no rule "\|/,
  ],
  ['build: a state that is none', [...smt, '--ask', 'rule:systolic_low=maybe'], /met, not_met or undecided/],
  ['build: a level that is not there', [...smt, '--ask', 'level:call'], /there is no level "call"/],
  ['build: what a level is not asked', [...smt, '--ask', 'level:call_doctor=met'], /at_least or could_be/],
  ['build: one rule together', [...smt, '--ask', 'together:systolic_low'], /takes two rules/],
  ['build: sets that are none', [...smt, '--sets', 'all'], /--sets takes complete, partial or any/],
  ['build: limits that are none', [...smt, '--limits', 'none'], /--limits takes as_written or within_bounds/],
  ['build: where nothing is', [...smt, '--where', 'systolic'], /--where takes NAME=WHAT/],
  ['build: where nobody reads it', [...smt, '--where', 'sistolic=90'], /Did you mean "systolic"/i],
  ['build: where it is no number', [...smt, '--where', 'systolic=low'], /"low" is no plain number in mmHg/],
  ['build: where it is beyond all', [...smt, '--where', 'systolic=90..9000'], /not possible at any age/],
  ['build: where it is between two steps', [...smt, '--where', 'systolic=90.5'], /between two steps/],
  ['build: where no number is', [...smt, '--where', 'systolic=100..90'], /down to "90"/],
  ['build: where it is twice', [...smt, '--where', 'systolic=90', '--where', 'systolic=91'], /there twice/],
  ['build: where nothing is assumed', [...smt, '--where', 'systolic=assumed'], /nothing is assumed/],
  [
    'build: a question to a full disk',
    [...smt, '--ask', 'set', '--out', '/dev/full'],
    /neither a file nor free/,
  ],
  ['handbook: nothing is named', ['handbook'], /One protocol or ward policy/],
  ['handbook: two of them', ['handbook', lesson, lesson], /One protocol or ward policy/],
  ['handbook: two files', ['handbook', lesson, '--out', at('a'), '--out', at('b')], /more than once/],
  ['handbook: to a folder', ['handbook', lesson, '--out', place], /it is a folder/],
  ['handbook: to a full disk', ['handbook', lesson, '--out', '/dev/full'], /neither a file nor free/],
  ['handbook: an edition that is not there', ['handbook', 'alder_wing@99'], /no sealed edition 99/],
  ['handbook: the file of an edition', ['handbook', 'protocols/alder_wing/editions/1.yaml'], /NAME@N/],
  ['handbook: a ladder', ['handbook', 'protocols/alder_ladder/ladder.yaml'], /NAME@N/],
  ['prove: an option that is unknown', ['prove', lesson, '--jsn'], /Unknown option '--jsn'/],
  ['prove: an option twice', ['prove', lesson, '--json', '--json'], /--json' is given more than once/],
  ['prove: an option with a value too many', ['prove', lesson, '--json=yes'], /does not take an argument/],
  ['prove: one that is not there beside one that is', ['prove', lesson, at('no_such')], /no_such/],
  ['prove: a name that would colour the terminal', ['prove', '\u001b[31m'], /␛\[31m/],
  ['new: no name', ['new'], /One name/],
  ['new: two names', ['new', 'one', 'two'], /One name/],
  ['new: a name that leads out', ['new', '../out'], /One name/],
  ['new: a name with capitals', ['new', 'Ward'], /One name/],
  ['new: a name that every object has', ['new', '__proto__'], /One name/],
  ['new: a word of the language', ['new', 'rule'], /One name/],
  ['new: what is there', ['new', 'pressure_reading'], /already there/],
  ['new: an option', ['new', 'ward_one', '--json'], /Unknown option/],
  ['serve: two folders', ['serve', 'protocols', 'protocols'], /At most one folder/],
  ['serve: a port that is none', ['serve', '--port', '-1'], /port/],
  ['serve: a port beyond all', ['serve', '--port', '65536'], /between 0 and 65535/],
  ['serve: a port twice', ['serve', '--port', '0', '--port', '1'], /'--port' is given more than once/],
  [
    'serve: a file that holds no protocol',
    ['serve', 'README.md', '--port', '0'],
    /it is no folder|not built/,
  ],
  ['help: more beside it', ['help', 'check', 'read'], /takes nothing beside it/],
  ['--version: more beside it', ['--version', '--json'], /takes nothing beside it/],
  ['a call that is unknown', ['chekc'], /Did you mean "check"/],
  ['a call that every object has', ['constructor'], /There is no call "constructor"/],
  ['a call that would colour the terminal', ['\u001b]0;x\u0007'], /There is no call "␛]0;x␇"/],
  ['an empty call', [''], /There is no call ""/],
];

test.each(rows.map(([name, ...rest]) => ({ name, rest })))(
  '$name',
  async ({ rest: [args, says, stdin = ''] }) => {
    const { exit, out, err } = await ask(args, stdin);
    expect(err).toMatch(says);
    expect([exit, out]).toEqual([2, '']);
    expect(err).toMatch(/\n$/);
    expect(err.replaceAll(/[\n\t]/g, '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
    expect(err).not.toMatch(/^\s+at .*:\d+|undefined|\[object|node:/m);
    expect(everyName()).toEqual(whatIsThere);
  },
);

test.each([
  ['an empty file', at('empty.yaml')],
  ['another encoding', at('bytes.yaml')],
  ['a list', at('a_list.yaml')],
])('check: %s was looked at, and does not hold', async (_, path) => {
  const { exit, out, err } = await ask(['check', path]);
  expect(exit).toBe(1);
  expect(out).toContain('1 of 1 file must be mended');
  expect(err).toContain('error:');
});

test.each([[['--help']], [['-h']], [['help']], [['check', '--help']], [['read', '-h']]])(
  '%j prints what can be asked',
  async (args) => {
    const { exit, out, err } = await ask(args);
    expect([exit, err]).toEqual([0, '']);
    expect(out).toContain('vitalwright check [PATH...]');
  },
);

test('without a call it prints what can be asked, and ends with 2', async () => {
  expect((await ask([])).exit).toBe(2);
});

test('--version prints the version of the package', async () => {
  expect(await ask(['--version'])).toEqual({
    exit: 0,
    out: expect.stringMatching(/^vitalwright \d+\.\d+\.\d+\n$/),
    err: '',
  });
});
