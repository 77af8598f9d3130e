import { connect } from 'node:net';
import { PassThrough } from 'node:stream';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { readBody } from '../../src/command-line/saving/read-body.ts';
import { largestBody } from '../../src/command-line/saving/may-save.ts';
import { refusals } from '../../src/command-line/saving/refusals.ts';
import { beforeDigest, digest, everything, openSite, type SaveSite } from './save-site.ts';

let site: SaveSite;
let untouched: Record<string, string>;

beforeAll(async () => {
  site = await openSite({ patience: 300 });
  untouched = everything(site.folder);
});

afterAll(async () => site.close());

/** What a raw connection heard, whether the server closed it, and how many bytes were sent by then. */
interface Raw {
  readonly heard: string;
  readonly sent: number;
}

/** Sends the head of a save and then, piece by piece, what `piece` gives until it gives null; ends when the server closes. */
async function raw(head: readonly string[], piece: () => string | null, mayEnd = false): Promise<Raw> {
  const socket = connect(site.port, '127.0.0.1');
  let [heard, sent] = ['', 0];
  const host = `127.0.0.1:${site.port}`;
  const all = [
    'POST /save HTTP/1.1',
    `Host: ${host}`,
    `Origin: http://${host}`,
    `Cookie: ${site.cookie}`,
    'Content-Type: application/json',
    ...head,
  ];
  socket.write(`${all.join('\r\n')}\r\n\r\n`);
  socket.on('data', (part) => (heard += part.toString('utf8')));
  socket.on('error', () => undefined);
  const closed = new Promise<void>((resolve) => socket.once('close', () => resolve()));
  const more = (): void => {
    const next = socket.destroyed ? null : piece();
    if (next === null) {
      if (mayEnd) socket.end();
      return;
    }
    sent += next.length;
    if (socket.write(next)) setImmediate(more);
    else socket.once('drain', more);
  };
  more();
  await closed;
  return { heard, sent };
}

const half = '{ "id": "lessons/a_curve", "part": "protocol", "text": "half';

function expectSays(heard: string, why: 'too_large' | 'too_slow'): void {
  const [status, says] = refusals[why];
  expect(heard).toContain(`HTTP/1.1 ${status} `);
  expect(heard).toContain(JSON.stringify({ says }));
  expect(everything(site.folder)).toEqual(untouched);
}

test('a body that says it is too large is refused before it comes', async () => {
  const { heard, sent } = await raw([`Content-Length: ${largestBody + 1}`], () => null);
  expectSays(heard, 'too_large');
  expect(sent).toBe(0);
});

test('a body without end is refused once it is too large, and then cut off', async () => {
  const piece = 'a'.repeat(0x40_00);
  const start = Date.now();
  const { heard } = await raw(['Transfer-Encoding: chunked'], () => `4000\r\n${piece}\r\n`);
  expectSays(heard, 'too_large');
  // Long before the time for a whole request is over.
  expect(Date.now() - start).toBeLessThan(15_000);
});

test('a body of exactly the largest size is saved; one byte more is not, in one piece or in many', async () => {
  const empty = JSON.stringify({ id: 'large', part: 'protocol', text: '', on_disk: null });
  const text = 'a'.repeat(largestBody - empty.length);
  const tooLarge = await site.save({ id: 'large', text: `${text}a`, on_disk: null });
  expect([tooLarge.status, tooLarge.body]).toEqual([413, { says: refusals.too_large[1] }]);
  expect((await site.save({ id: 'large', text, on_disk: null })).status).toBe(200);
  expect(everything(site.folder)['large/protocol.yaml']).toBe(text);
  untouched = everything(site.folder);
});

test('half a body is waited for, but not long', async () => {
  let isSent = false;
  const { heard } = await raw(['Content-Length: 500'], () => (isSent ? null : ((isSent = true), half)));
  expectSays(heard, 'too_slow');
});

test('a body that trickles in is not waited for longer', async () => {
  const start = Date.now();
  let last = start;
  const { heard } = await raw(['Transfer-Encoding: chunked'], () => {
    if (Date.now() - last < 20) return '';
    last = Date.now();
    return '1\r\n{\r\n';
  });
  expectSays(heard, 'too_slow');
  expect(Date.now() - start).toBeGreaterThanOrEqual(300);
});

test('who hangs up before all is there has saved nothing, even when what came could be read', async () => {
  const asked = { id: 'lessons/a_curve', part: 'protocol', text: 'mine', on_disk: beforeDigest };
  for (const body of [half, JSON.stringify(asked)]) {
    const pieces = [body];
    const { heard } = await raw(['Content-Length: 500'], () => pieces.pop() ?? null, true);
    expect(heard).not.toContain('200 OK');
    expect(everything(site.folder)).toEqual(untouched);
  }
  const text = untouched['lessons/a_curve/protocol.yaml'] ?? '';
  const next = await site.save({ text });
  expect([next.status, next.body]).toEqual([200, { digest: digest(text) }]);
  expect(digest(text)).toBe(beforeDigest);
});

test('what is held of a body never passes the largest size', async () => {
  const stream = new PassThrough();
  const found = readBody(stream, 10, 1000);
  stream.write('12345');
  stream.write('67890');
  stream.write('1');
  expect(await found).toBe('too_large');
  const whole = new PassThrough();
  const read = readBody(whole, 10, 1000);
  whole.end('1234567890');
  expect(Buffer.from((await read) as Uint8Array).toString()).toBe('1234567890');
});
