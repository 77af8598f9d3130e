import { spawn, type ChildProcess } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { request } from 'node:http';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { digestOf } from '../../src/command-line/saving/compare-and-swap.ts';
import { headOf } from '../../src/editions/record.ts';
import { loadRecord } from '../../src/command-line/record-files.ts';
import { draft, inForce, at, type Place } from './policy.ts';

// The real server, as a process that is killed while it enters.

interface Server {
  readonly child: ChildProcess;
  readonly port: number;
  readonly cookie: string;
}

async function serve({ protocols }: Place): Promise<Server> {
  const args = ['--import', 'tsx', 'src/command-line/main.ts', 'serve', protocols, '--port', '0'];
  const env = { ...process.env, VITALWRIGHT_STATE: join(protocols, '..', 'state') };
  const child = spawn(process.execPath, args, { stdio: ['ignore', 'pipe', 'inherit'], env });
  const said = await new Promise<string>((resolve) => {
    let text = '';
    child.stdout.on('data', (part: Buffer) => {
      text += part.toString();
      if (text.includes('Ctrl-C')) resolve(text);
    });
    child.once('close', () => resolve(text));
  });
  const port = Number(/127\.0\.0\.1:(\d+)/.exec(said)?.[1]);
  const page = await fetch(`http://127.0.0.1:${port}/`);
  return { child, port, cookie: (page.headers.get('set-cookie') ?? '').split(';')[0] ?? '' };
}

async function post({ port, cookie }: Server, path: string, body: object): Promise<number> {
  const origin = `http://127.0.0.1:${port}`;
  return new Promise((resolve) => {
    const asked = request(
      `${origin}${path}`,
      { method: 'POST', headers: { origin, cookie, 'content-type': 'application/json' } },
      (response) => {
        response.resume();
        response.once('close', () => resolve(response.statusCode ?? 0));
      },
    );
    asked.once('error', () => resolve(0));
    asked.end(JSON.stringify(body));
  });
}

const stopped = async (child: ChildProcess): Promise<void> =>
  new Promise((resolve) => void child.once('close', () => resolve()));

async function withdrawal({ ward }: Place): Promise<object> {
  const { record } = await loadRecord(ward);
  const named = { what: 'withdraw', id: 'small_ward', head: record && headOf(record), at: null, jws: null };
  return { ...named, by: 'Dr Ash', because: 'Wrong.', instead: 'Paper.', from: '' };
}

test('a server that is killed while a policy is withdrawn leaves the old record or the new one', async () => {
  const found: number[] = [];
  for (const delay of [0, 8, 25, 400]) {
    const made = await inForce();
    const server = await serve(made);
    const answered = post(server, '/decide', await withdrawal(made));
    setTimeout(() => server.child.kill('SIGKILL'), delay);
    await stopped(server.child);
    const status = await answered;
    const { record, problems } = await loadRecord(made.ward);
    expect(problems).toEqual([]);
    const count = record?.entries.length ?? 0;
    expect(count === 4 || count === 5).toBe(true);
    // What was answered was entered.
    if (status === 200) expect(count).toBe(5);
    found.push(count);
    expect((await at('2026-03-16T08:00:00Z', ['check', made.protocols])).exit).toBe(0);
  }
  // At least the last one had the time to be entered; else this would show nothing.
  expect(found).toContain(5);
}, 120_000);

test('sealing goes on in a process of its own, and a withdrawal does not wait for it', async () => {
  const made = await inForce();
  await draft(made, 2);
  const server = await serve(made);
  const on_disk = digestOf(await readFile(join(made.ward, 'ward.yaml')));
  const ends: string[] = [];
  const sealing = post(server, '/seal', { id: 'small_ward', authors: ['Dr Elm'], on_disk });
  const withdrawn = post(server, '/decide', await withdrawal(made));
  void sealing.then(() => ends.push('sealed'));
  void withdrawn.then(() => ends.push('withdrawn'));
  expect([await sealing, await withdrawn]).toEqual([200, 200]);
  expect(ends).toEqual(['withdrawn', 'sealed']);
  expect(await readFile(join(made.ward, 'editions', '2.yaml'), 'utf8')).toContain('\n  - Dr Elm\n');
  server.child.kill('SIGTERM');
  await stopped(server.child);
}, 120_000);
