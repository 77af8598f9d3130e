import { execFile } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { newToken } from '../../src/command-line/saving/token.ts';
import { editionAt } from '../../src/command-line/site-editions.ts';
import { siteBelow, type SiteProtocol } from '../../src/command-line/site-protocols.ts';
import { siteServer } from '../../src/command-line/site-server.ts';
import { sealHere } from '../command-line/seal-here.ts';
import { terminalNow } from '../command-line/terminal-at.ts';

const path = (name: string): string => fileURLToPath(new URL(`../../${name}`, import.meta.url));

/** The rooms as they are now, built and served as `vitalwright serve` does it. */
export interface BuiltSite {
  /** `http://127.0.0.1:…` */
  readonly origin: string;
  /** Served below a path too, as on a web server that is not its own: `http://127.0.0.1:…/ward/rooms/`. */
  readonly below: string;
  /** Puts other protocols in the place of the bundled ones; null: the bundled ones again. */
  serveProtocols(protocols: readonly SiteProtocol[] | null): void;
  /** The folder of the built rooms: the static site. */
  readonly built: string;
  /** The folder that is served, and that the rooms save into: a copy of the bundled protocols. */
  readonly folder: string;
  close(): Promise<void>;
}

const prefix = '/ward/rooms';

export async function buildSite(): Promise<BuiltSite> {
  const outDir = mkdtempSync(join(tmpdir(), 'vitalwright-site-'));
  const vite = [path('node_modules/vite/bin/vite.js'), 'build', '--config', path('editor/vite.config.ts')];
  // A program of its own: inside the test run, React would be built for trying things out.
  await promisify(execFile)(process.execPath, [...vite, '--logLevel', 'error', '--outDir', outDir], {
    env: { ...process.env, NODE_ENV: 'production' },
  });
  const copies = mkdtempSync(join(tmpdir(), 'vitalwright-protocols-'));
  const folder = join(copies, 'protocols');
  cpSync(path('protocols'), folder, { recursive: true });
  let others: readonly SiteProtocol[] | null = null;
  const protocols = async (): Promise<string> =>
    JSON.stringify(
      others
        ? { saves: false, protocols: others, ladders: [] }
        : await siteBelow(folder, true, terminalNow()),
    );
  const edition = async (address: string): Promise<string | null> => editionAt(folder, address);
  const clock = terminalNow();
  const deciding = { decides: clock, seal: sealHere(clock) };
  const server = siteServer({
    folder: outDir,
    token: newToken(),
    protocols,
    edition,
    saves: folder,
    ...deciding,
  });
  server.prependListener('request', (request) => {
    if (request.url?.startsWith(`${prefix}/`)) request.url = request.url.slice(prefix.length);
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : 0;
  return {
    origin: `http://127.0.0.1:${port}`,
    below: `http://127.0.0.1:${port}${prefix}/`,
    built: outDir,
    folder,
    serveProtocols: (protocols_) => {
      others = protocols_;
    },
    close: async () => {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      for (const each of [outDir, copies]) rmSync(each, { recursive: true, force: true });
    },
  };
}
