import { stat } from 'node:fs/promises';
import type { Server } from 'node:http';
import { basename, dirname } from 'node:path';
import { builtSite } from './built-site.ts';
import { sealApart } from './deciding/seal-apart.ts';
import { fileNames, UnreadableFile } from './files.ts';
import { parseCall } from './parse-call.ts';
import { newToken } from './saving/token.ts';
import { editionAt } from './site-editions.ts';
import { siteBelow } from './site-protocols.ts';
import { siteServer, thisMachine } from './site-server.ts';
import { exit, type Call, type Exit, type Terminal } from './terminal.ts';

/** Where the rooms are, when nobody says otherwise. */
const usualPort = 4710;

/** `vitalwright serve [FOLDER] [--port N]`: the rooms, with the protocols below a folder, until it is stopped. */
export const serve: Call = async (args, terminal) => {
  const call = parseCall(args, { port: { type: 'string' } }, terminal);
  if (!call) return exit.couldNotAsk;
  const port = portOf(call.values.port);
  const [asked = 'protocols', ...more] = call.positionals;
  if (port === null || more.length > 0) {
    terminal.err('At most one folder, and a port between 0 and 65535, where 0 takes any that is free.\n');
    return exit.couldNotAsk;
  }
  const rooms = await builtSite();
  if (rooms === null) {
    terminal.err('The rooms are not built yet: npm run build\n');
    return exit.couldNotAsk;
  }
  try {
    const folder = await folderOf(asked);
    const read = async (): ReturnType<typeof siteBelow> => siteBelow(folder, true, terminal);
    // Read once before the rooms open: what is in force is checked now, not while somebody waits at a bed.
    const count = (await read()).protocols.length;
    const protocols = async (): Promise<string> => JSON.stringify(await read());
    const edition = async (address: string): Promise<string | null> => editionAt(folder, address);
    const answers = { protocols, edition, saves: folder, decides: terminal, seal: sealApart };
    const server = siteServer({ folder: rooms, token: newToken(), ...answers });
    return await openRooms(server, port, count, terminal);
  } catch (error) {
    if (!(error instanceof UnreadableFile)) throw error;
    terminal.err(`${error.message}\n`);
    return exit.couldNotAsk;
  }
};

/** The folder that is served: the one that is named, or that of the protocol, ladder, policy or cases that are. */
async function folderOf(asked: string): Promise<string> {
  const found = await stat(asked).catch(() => null);
  if (!found || found.isDirectory()) return asked;
  if (found.isFile() && Object.values(fileNames).some((name) => name === basename(asked)))
    return dirname(asked);
  throw new UnreadableFile(asked, 'ENOTDIR_ASKED');
}

function portOf(given: string | boolean | undefined): number | null {
  if (given === undefined) return usualPort;
  return typeof given === 'string' && /^\d{1,5}$/.test(given) && Number(given) <= 65_535
    ? Number(given)
    : null;
}

/** Listens until the process is told to end, or the port cannot be had. */
async function openRooms(server: Server, asked: number, count: number, terminal: Terminal): Promise<Exit> {
  const fault = await listening(server, asked);
  if (fault !== null) {
    terminal.err(
      fault === 'EADDRINUSE'
        ? `Port ${asked} is taken, perhaps by these rooms already. Another one: vitalwright serve --port ${asked + 1}\n`
        : `Port ${asked} cannot be listened on (${fault}).\n`,
    );
    return exit.couldNotAsk;
  }
  const address = server.address();
  const port = typeof address === 'object' && address !== null ? address.port : asked;
  terminal.out(
    `The rooms are open at http://${thisMachine}:${port}/ with ${count} protocols, on this machine only.\n`,
  );
  terminal.out('Ctrl-C closes them.\n');
  await told(server);
  return exit.well;
}

/** Null once the server listens, else the code of the reason why it does not. */
async function listening(server: Server, port: number): Promise<string | null> {
  return new Promise((resolve) => {
    server.once('error', (error: NodeJS.ErrnoException) => resolve(error.code ?? error.message));
    server.listen(port, thisMachine, () => resolve(null));
  });
}

/** Waits until the process is told to end, then closes the server. */
async function told(server: Server): Promise<void> {
  await new Promise<void>((resolve) => {
    process.once('SIGINT', () => resolve());
    process.once('SIGTERM', () => resolve());
  });
  server.closeAllConnections();
  await new Promise((resolve) => server.close(resolve));
}
