import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { answerDecide } from './deciding/answer-decide.ts';
import { answerSeal, type SealSite } from './deciding/answer-seal.ts';
import { answerSave } from './saving/answer-save.ts';
import { siteAnswer, type Site } from './site-answer.ts';
import { siteFiles } from './site-files.ts';
import { commonHeaders, type SiteAnswer } from './site-headers.ts';

/** Only this machine: nobody else on the network reaches the rooms. */
export const thisMachine = '127.0.0.1';

/** All that a server of the rooms depends on, but for its port, which is known once it listens. */
export type ServedSite = Omit<WholeSite, 'port'>;

type WholeSite = Site & SealSite;

/** How long a request that was answered before it was whole may go on, in milliseconds: for its sender to hear the answer. */
const farewell = 1000;

/** A server of the rooms, which does not listen yet. */
export function siteServer(site: ServedSite): Server {
  // A head that does not come, or not to its end, is not waited for longer than a body.
  const slow = { headersTimeout: 10_000, requestTimeout: 20_000, connectionsCheckingInterval: 1000 };
  const server = createServer(slow, (request, response) => {
    const address = server.address();
    const port = typeof address === 'object' && address !== null ? address.port : 0;
    void answer(request, { ...site, port }).then((found) => send(request, response, found));
  });
  return server;
}

async function answer(request: IncomingMessage, site: WholeSite): Promise<SiteAnswer | null> {
  const { method = '', url = '', headers } = request;
  const call = { method, headers, body: request };
  try {
    if (url === `/${siteFiles.save}`) return await answerSave(call, site);
    if (url === `/${siteFiles.decide}`) return await answerDecide(call, site);
    if (url === `/${siteFiles.seal}`) return await answerSeal(call, site);
    return await siteAnswer({ method, url, host: headers.host }, site);
  } catch {
    return {
      status: 500,
      headers: { ...commonHeaders, 'Content-Type': 'text/plain; charset=utf-8' },
      body: 'The protocols could not be read.\n',
    };
  }
}

function send(request: IncomingMessage, response: ServerResponse, found: SiteAnswer | null): void {
  if (found === null || response.destroyed) {
    request.destroy();
    return;
  }
  const { status, headers, body } = found;
  response.writeHead(status, { ...headers, 'Content-Length': Buffer.byteLength(body) });
  response.end(request.method === 'HEAD' ? undefined : body);
  if (request.complete) return;
  const clock = setTimeout(() => request.complete || request.destroy(), farewell);
  request.once('close', () => clearTimeout(clock));
  request.resume();
}
