import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** A folder of what cannot be read. */
export const place = mkdtempSync(join(tmpdir(), 'misuse-'));
export const at = (...names: string[]): string => join(place, ...names);

mkdirSync(at('a_folder', 'protocol.yaml'), { recursive: true });
mkdirSync(at('with_pipe'));
mkdirSync(at('nothing'));
mkdirSync(at('too_large'));
writeFileSync(at('empty.yaml'), '');
writeFileSync(at('bytes.yaml'), Buffer.from([0xff, 0xfe, 0x70, 0x00]));
writeFileSync(at('a_list.yaml'), '- protocol\n');
writeFileSync(at('too_large', 'protocol.yaml'), 'x'.repeat(1_048_577));
symlinkSync('circle', at('circle'));
for (const pipe of [at('pipe'), at('with_pipe', 'protocol.yaml')])
  spawnSync('bash', ['-c', 'mkfifo "$0"', pipe]);

export const everyName = (): string[] => readdirSync(place, { recursive: true }).map(String).toSorted();
export const removePlace = (): void => rmSync(place, { recursive: true, force: true });

/** What no protocol can be read from, and what `check` and the others say of it. */
export const unreadable: readonly (readonly [
  name: string,
  path: string,
  check: RegExp | null,
  other: RegExp,
])[] = [
  ['a path that is not there', at('no_such'), /there is no such file/, /There is no protocol/],
  ['no name at all', '', /"": there is no such file/, /There is no protocol(?: or ward policy)? ""/],
  ['a path through a file', 'README.md/protocol.yaml', /its folder is a file/, /There is no protocol/],
  ['a circle of links', at('circle'), /link that leads back/, /There is no protocol/],
  ['a pipe that nobody writes to', at('pipe'), /neither a file nor a folder/, /There is no protocol/],
  ['a folder with such a pipe', at('with_pipe'), /There is no protocol, ladder/, /There is no protocol/],
  ['a device without end', '/dev/zero', /neither a file nor a folder/, /There is no protocol/],
  [
    'a folder that is called as a file',
    at('a_folder'),
    /There is no protocol, ladder/,
    /There is no protocol/,
  ],
  ['a folder with nothing in it', at('nothing'), /There is no protocol, ladder/, /There is no protocol/],
  ['a file over 1 MiB', at('too_large'), /larger than 1 MiB/, /larger than 1 MiB/],
  ['a file that the system does not give', '/proc/self/mem', /cannot be read \(/, /cannot be read \(/],
  ['an empty file', at('empty.yaml'), null, /Nothing is written here/],
  ['another encoding', at('bytes.yaml'), null, /broken \(U\+FFFD\)/],
  ['a list', at('a_list.yaml'), null, /a list, where a file begins/],
  [
    'a name that would colour the terminal',
    at('a\u001b[31m\u009bb\u202e'),
    /a␛\[31m<U\+009B>b<U\+202E>/,
    /␛/,
  ],
  ['a name of 5,000 letters', 'x'.repeat(5000), /cannot be read \(ENAMETOOLONG\)/, /There is no protocol/],
];
