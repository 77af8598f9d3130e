import { execFile } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { siteAnswer } from '../../src/command-line/site-answer.ts';
import { protocolsBelow, type SiteProtocol } from '../../src/command-line/site-protocols.ts';

const path = (name: string): string => fileURLToPath(new URL(`../../${name}`, import.meta.url));

/** The rooms as they are now, built and served as `vitalwright serve` does it. */
export interface BuiltSite {
  /** `http://127.0.0.1:…` */
  readonly origin: string;
  /** Served below a path too, as on a web server that is not its own: `http://127.0.0.1:…/ward/rooms/`. */
  readonly below: string;
  /** Puts other protocols in the place of the bundled ones; null: the bundled ones again. */
  serveProtocols(protocols: readonly SiteProtocol[] | null): void;
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
  let others: readonly SiteProtocol[] | null = null;
  let port = 0;
  const protocols = async (): Promise<string> =>
    JSON.stringify(others ?? (await protocolsBelow(path('protocols'))));
  const server = createServer((request, response) => {
    const { method = '', headers } = request;
    const asked = request.url ?? '';
    const url = asked.startsWith(`${prefix}/`) ? asked.slice(prefix.length) : asked;
    void siteAnswer({ method, url, host: headers.host }, { folder: outDir, port, protocols }).then(
      (answer) => {
        response.writeHead(answer.status, answer.headers).end(answer.body);
      },
    );
  });
  await new Promise<void>((resolve) => server.listen(0, '127.0.0.1', resolve));
  const address = server.address();
  if (typeof address === 'object' && address !== null) ({ port } = address);
  return {
    origin: `http://127.0.0.1:${port}`,
    below: `http://127.0.0.1:${port}${prefix}/`,
    serveProtocols: (protocols_) => {
      others = protocols_;
    },
    close: async () => {
      server.closeAllConnections();
      await new Promise((resolve) => server.close(resolve));
      rmSync(outDir, { recursive: true, force: true });
    },
  };
}
