import { afterAll, expect, test } from 'vitest';
import { ask } from '../command-line/ask.ts';
import { at, everyName, place, removePlace, unreadable } from './unreadable.ts';

// The calls that seal, approve, put in force and withdraw, and those that make a key or a handoff, with what they cannot be asked: they end
// with 2, or with 1 where what was looked at does not hold, say why on stderr in words, print nothing, and write nothing anywhere.

const whatIsThere = everyName();

afterAll(removePlace);

const lesson = 'protocols/lessons/one_threshold';
const approved = ['--as', 'Dr Ash', '--role', 'chair', '--minute', '7'];
const agreed = ['--agreed-by', 'Dr Ash', '--minute', '7'];
const decided = ['--by', 'Dr Ash', '--because', 'a reason'];

type Row = readonly [name: string, args: readonly string[], says: RegExp, exit?: 1 | 2];

const calls: readonly (readonly [name: string, (path: string) => string[]])[] = [
  ['seal', (path) => ['seal', path]],
  ['approvers', (path) => ['approvers', path, ...agreed]],
  ['approve', (path) => ['approve', `${path}@1`, ...approved]],
  ['put-in-force', (path) => ['put-in-force', `${path}@1`, ...decided]],
  ['withdraw', (path) => ['withdraw', path, ...decided, '--instead', 'the paper policy']],
];

/** These can be looked at; what they say does not hold. */
const looked = new Set(['an empty file', 'another encoding', 'a list']);
const record = new Set([...looked, 'a file over 1 MiB', 'a file that the system does not give']);
const exitOf = (call: string, what: string): 1 | 2 =>
  (call === 'seal' && looked.has(what)) || (call === 'withdraw' && record.has(what)) ? 1 : 2;

const rows: readonly Row[] = [
  ...calls.flatMap(([call, args]) =>
    unreadable.map(([what, path]): Row => [
      `${call}: ${what}`,
      args(path),
      /There is no (protocol|sealed edition|approvers\.yaml)|larger than 1 MiB|cannot be read|error: |is to be named/,
      exitOf(call, what),
    ]),
  ),
  ...calls.map(([call]): Row => [`${call}: nothing named`, [call], /is to be named/]),
  ...calls.map(([call, args]): Row => [
    `${call}: an option that is unknown`,
    [...args('alder_wing'), '--jsno'],
    /Unknown option '--jsno'/,
  ]),
  ['seal: two protocols', ['seal', lesson, lesson], /One protocol or ward policy/],
  ['seal: an author without a name', ['seal', lesson, '--author'], /--author/],
  ['seal: an option that is unknown', ['seal', lesson, '--authr', 'Dr Elm'], /Unknown option '--authr'/],
  ['approvers: no minute', ['approvers', lesson], /--minute/],
  ['approvers: nobody agreed', ['approvers', lesson, '--minute', '7'], /--agreed-by/],
  ['approvers: no list of them', ['approvers', lesson, ...agreed], /There is no approvers\.yaml/],
  ['approve: an edition without its number', ['approve', 'pressure_reading', ...approved], /with its number/],
  ['approve: a number that is none', ['approve', 'pressure_reading@x', ...approved], /with its number/],
  [
    'approve: an edition that is not there',
    ['approve', 'pressure_reading@99', ...approved],
    /no sealed edition 99/,
  ],
  ['approve: nobody', ['approve', 'pressure_reading@1', '--role', 'chair', '--minute', '7'], /--as/],
  [
    'approve: a day that is none',
    ['approve', 'pressure_reading@1', ...approved, '--on', '2026-02-30'],
    /cannot have been approved/,
    1,
  ],
  ...(['approve', 'put-in-force'] as const).flatMap((call): Row[] => {
    const asked =
      call === 'approve'
        ? ['approve', 'pressure_reading@1', ...approved]
        : [call, 'alder_wing@1', ...decided];
    return [
      [`${call}: a key that is not there`, [...asked, '--key', at('no_such')], /no_such/],
      [`${call}: a key that is a folder`, [...asked, '--key', place], /it is a folder/],
      [`${call}: a key that is empty`, [...asked, '--key', at('empty.yaml')], /is no private key/],
      [`${call}: a key that is a list`, [...asked, '--key', at('a_list.yaml')], /is no private key/],
      [`${call}: a key that is a pipe`, [...asked, '--key', at('pipe')], /pipe/],
    ];
  }),
  ['put-in-force: no reason', ['put-in-force', 'alder_wing@1', '--by', 'Dr Ash'], /--because/],
  ['put-in-force: a protocol', ['put-in-force', 'pressure_reading@1', ...decided], /is a protocol/],
  [
    'put-in-force: a time that is none',
    ['put-in-force', 'alder_wing@1', ...decided, '--from', 'soon'],
    /"soon"/,
    1,
  ],
  ['withdraw: nothing instead', ['withdraw', 'alder_wing', ...decided], /--instead/],
  [
    'withdraw: a time that is none',
    ['withdraw', 'alder_wing', ...decided, '--instead', 'paper', '--from', 'soon'],
    /"soon"/,
    1,
  ],
  [
    'withdraw: an option that is unknown',
    ['withdraw', 'alder_wing', '--insted', 'paper', ...decided],
    /Unknown option '--insted'/,
  ],
  ['key: nothing', ['key'], /To be given: new, and the file/],
  ['key: another word', ['key', 'old', at('a')], /To be given: new/],
  ['key: two files', ['key', 'new', at('a'), at('b')], /To be given: new/],
  ['key: a file without a name', ['key', 'new', ''], /To be given: new/],
  ['key: a folder', ['key', 'new', place], /is there already/],
  ['key: a file that is there', ['key', 'new', at('empty.yaml')], /is there already/],
  ['key: a full disk', ['key', 'new', '/dev/full'], /is there already/],
  ['key: a pipe', ['key', 'new', at('pipe')], /is there already/],
  ['key: a circle of links', ['key', 'new', at('circle')], /is there already/],
  ['key: in a repository', ['key', 'new', 'a.key'], /is kept with git/],
  ['key: an option', ['key', 'new', at('a'), '--json'], /Unknown option/],
  ['read --handoff: a list', ['read', lesson, '--handoff', '--set', '[]'], /NOTHING HAS BEEN READ/],
  ['read --handoff: nothing on standard input', ['read', lesson, '--handoff'], /NOTHING HAS BEEN READ/],
  ['read --handoff: with JSON', ['read', lesson, '--handoff', '--json', '--set', '{}'], /not both/],
  [
    'read --handoff: a number that is a text',
    ['read', lesson, '--handoff', '--set', '{"systolic":"104"}'],
    /NOTHING HAS BEEN READ/,
  ],
  ['read --in-force: a protocol', ['read', lesson, '--in-force', '--set', '{}'], /NO POLICY IN FORCE/],
  [
    'read --in-force: a time that is none',
    ['read', 'alder_wing', '--in-force', '--at', 'soon', '--set', '{}'],
    /is no time/,
  ],
  [
    'read --at: without --in-force',
    ['read', lesson, '--at', '2026-03-02T12:05:00Z', '--set', '{}'],
    /stands beside --in-force/,
  ],
];

test.each(rows.map(([name, ...rest]) => ({ name, rest })))(
  '$name',
  async ({ rest: [args, says, code = 2] }) => {
    const { exit, out, err } = await ask(args);
    expect(err).toMatch(says);
    expect([exit, out]).toEqual([code, '']);
    expect(err).toMatch(/\n$/);
    expect(err.replaceAll(/[\n\t]/g, '')).not.toMatch(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/u);
    expect(err).not.toMatch(/^\s+at .*:\d+|undefined|\[object|node:|ENOENT/m);
    expect(everyName()).toEqual(whatIsThere);
  },
);
