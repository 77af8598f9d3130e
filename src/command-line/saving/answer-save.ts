import type { Readable } from 'node:stream';
import { commonHeaders, type SiteAnswer } from '../site-headers.ts';
import { compareAndSwap, type Swapped } from './compare-and-swap.ts';
import { largestBody, mayNotSave, type SaveHead } from './may-save.ts';
import { oneAtATime } from './one-at-a-time.ts';
import { placeOf } from './place.ts';
import { readBody } from './read-body.ts';
import { isRefused, refusalOf, refusals, type Refusal } from './refusals.ts';
import { saveRequestOf, type SaveRequest } from './save-request.ts';
import { realDisk, type Disk } from './write-whole.ts';

/** What saving depends on. */
export interface SaveSite {
  /** The port that is listened on. */
  readonly port: number;
  readonly token: string;
  /** The folder with the protocols. Null: nothing can be saved. */
  readonly saves: string | null;
  /** Milliseconds for a whole body to arrive; ten seconds unless told otherwise. */
  readonly patience?: number;
  /** The real one unless told otherwise. */
  readonly disk?: Disk;
}

export interface SaveCall extends SaveHead {
  readonly body: Readable;
}

/** All saves of this process, as one of them can make the folder of another. */
const inTurn = oneAtATime();

/**
 * Answers one request to save. The head of the request is judged before its body is read, the body before any file is looked at:
 *
 *     head ─► body, capped ─► what is asked ─► the file that is meant ─► the digest there ─► written whole
 *
 * Null: whoever asked is gone.
 */
export async function answerSave(call: SaveCall, site: SaveSite): Promise<SiteAnswer | null> {
  const { saves, patience = 10_000, disk = realDisk } = site;
  const bad = mayNotSave(call, site);
  if (bad) return refusal(bad);
  if (saves === null) return refusal('saves_nothing');
  const body = await readBody(call.body, largestBody, patience);
  if (body === null) return null;
  if (typeof body === 'string') return refusal(body);
  const request = saveRequestOf(body);
  if (isRefused(request)) return refusal(request.refused);
  const swapped = await inTurn(async () => save(request, saves, disk));
  if (isRefused(swapped)) return refusal(swapped.refused);
  if ('saved' in swapped) return json(200, { digest: swapped.saved });
  const { digest, text } = swapped.changed ?? { digest: null, text: null };
  return json(409, { digest, text });
}

async function save({ id, part, text, onDisk }: SaveRequest, folder: string, disk: Disk): Promise<Swapped> {
  try {
    const place = await placeOf(folder, { id, part });
    return isRefused(place) ? place : await compareAndSwap(place, text, onDisk, disk);
  } catch (error) {
    return { refused: refusalOf(error) };
  }
}

function refusal(why: Refusal): SiteAnswer {
  const [status, says] = refusals[why];
  const answer = json(status, { says });
  return status === 405 ? { ...answer, headers: { ...answer.headers, Allow: 'POST' } } : answer;
}

const json = (status: number, body: object): SiteAnswer => ({
  status,
  headers: { ...commonHeaders, 'Content-Type': 'application/json; charset=utf-8' },
  body: JSON.stringify(body),
});
