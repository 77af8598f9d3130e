import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { siteServer, type ServedSite } from '../../src/command-line/site-server.ts';
import { digestOf } from '../../src/command-line/saving/compare-and-swap.ts';

/** What a server answered over a real socket. */
export interface Heard {
  readonly status: number;
  readonly headers: Readonly<Record<string, unknown>>;
  /** The JSON of the body, or its text where it is none. */
  readonly body: unknown;
}

export interface Sent {
  readonly method?: string;
  readonly url?: string;
  /** In the place of the usual ones; undefined takes one away. */
  readonly headers?: Readonly<Record<string, string | undefined>>;
  readonly body?: string | Uint8Array;
}

/** A folder with protocols, and a real server of it on a free port. */
export interface SaveSite {
  readonly folder: string;
  readonly port: number;
  readonly cookie: string;
  /** Sends as a page of the rooms would, but for what is said otherwise. */
  send(sent: Sent): Promise<Heard>;
  /** Asks for a save as a page of the rooms would. */
  save(asked: Readonly<Record<string, unknown>>): Promise<Heard>;
  close(): Promise<void>;
}

/** The text of a first protocol, and its digest. */
export const before = 'protocol: a_curve # before\n';
export const beforeDigest = digestOf(Buffer.from(before));
export const digest = (text: string): string => digestOf(Buffer.from(text));

/** What there is to begin with: path and text. */
const files: Readonly<Record<string, string>> = {
  'protocols/lessons/a_curve/protocol.yaml': before,
  'protocols/lessons/a_curve/cases.yaml': 'cases: []\n',
  'protocols/a_ward/ward.yaml': 'ward: a_ward\n',
  'protocols/a_ward/cases.yaml': 'ward: a_ward\n',
  'protocols/a_ladder/ladder.yaml': 'ladder: a_ladder\n',
  'outside/protocol.yaml': 'outside',
  'site/index.html': '<!doctype html><title>Rooms</title>',
};

export async function openSite(more: Partial<ServedSite> = {}): Promise<SaveSite> {
  const top = mkdtempSync(join(tmpdir(), 'vitalwright-save-'));
  for (const [path, text] of Object.entries(files)) {
    mkdirSync(dirname(join(top, path)), { recursive: true });
    writeFileSync(join(top, path), text);
  }
  const folder = join(top, 'protocols');
  const token = 'token-of-this-start';
  const answers = { protocols: () => Promise.resolve('{}'), edition: () => Promise.resolve(null) };
  const deciding = { decides: null, seal: () => Promise.reject(new Error('nothing is sealed here')) };
  const rest = { token, saves: folder, ...answers, ...deciding, ...more };
  const server = siteServer({ folder: join(top, 'site'), ...rest });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  const cookie = `vitalwright_${port}=${token}`;
  const send = async (sent: Sent): Promise<Heard> => sendTo(port, cookie, sent);
  return {
    folder,
    port,
    cookie,
    send,
    save: async (asked) =>
      send({
        body: JSON.stringify({ id: 'lessons/a_curve', part: 'protocol', on_disk: beforeDigest, ...asked }),
      }),
    close: async () => {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      rmSync(top, { recursive: true, force: true });
    },
  };
}

async function sendTo(port: number, cookie: string, sent: Sent): Promise<Heard> {
  const origin = `http://127.0.0.1:${port}`;
  const usual = { host: origin.slice(7), origin, cookie, 'content-type': 'application/json' };
  const all = Object.entries({ ...usual, ...sent.headers });
  const headers = Object.fromEntries(
    all.flatMap(([name, value]) => (value === undefined ? [] : [[name, value] as const])),
  );
  return new Promise((resolve, reject) => {
    const { method = 'POST', url = '/save' } = sent;
    const asked = request(
      { host: '127.0.0.1', port, method, path: url, headers, agent: false },
      (response) => {
        const parts: Buffer[] = [];
        response.on('data', (part: Buffer) => parts.push(part));
        response.on('error', reject);
        response.on('end', () => {
          const text = Buffer.concat(parts).toString('utf8');
          const isJson = response.headers['content-type']?.startsWith('application/json');
          resolve({
            status: response.statusCode ?? 0,
            headers: response.headers,
            body: isJson && text !== '' ? JSON.parse(text) : text,
          });
        });
      },
    );
    asked.on('error', reject);
    asked.end(sent.body);
  });
}

/** Every file below a folder with its text, by its path; what is left behind shows too. */
export function everything(folder: string): Record<string, string> {
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true });
  const paths = entries.filter((entry) => entry.isFile()).map((entry) => join(entry.parentPath, entry.name));
  return Object.fromEntries(
    paths.toSorted().map((path) => [path.slice(folder.length + 1), readFileSync(path, 'utf8')]),
  );
}
