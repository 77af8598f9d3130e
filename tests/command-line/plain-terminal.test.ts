import { expect, test } from 'vitest';
import { plainTerminal } from '../../src/command-line/plain-terminal.ts';
import type { Terminal } from '../../src/command-line/terminal.ts';

let days = 0;
const said: string[] = [];
const given: Terminal = {
  out: (text) => void said.push(text),
  err: (text) => void said.push(text),
  stdin: () => Promise.resolve('{}'),
  width: 72,
  colour: true,
  get today() {
    return `2026-03-0${(days += 1)}`;
  },
  get now() {
    return `${this.today}T12:00:00Z`;
  },
  seenFolder: null,
};

test('the time goes on, for whoever asks again', () => {
  const terminal = plainTerminal(given);
  expect([terminal.today, terminal.today, terminal.now]).toEqual([
    '2026-03-01',
    '2026-03-02',
    '2026-03-03T12:00:00Z',
  ]);
});

test('results stay as they are, problems become plain, all else is the same', async () => {
  const terminal = plainTerminal(given);
  terminal.out('\u001b[1mA\n');
  terminal.err('\u001b[1mA\tB\n\u202e');
  expect(said).toEqual(['\u001b[1mA\n', '␛[1mA\tB\n<U+202E>']);
  expect([terminal.width, terminal.colour, terminal.seenFolder, await terminal.stdin()]).toEqual([
    72,
    true,
    null,
    '{}',
  ]);
});
