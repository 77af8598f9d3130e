import { join } from 'node:path';
import { recordFolder } from '../record-files.ts';
import type { SaveCall, SaveSite } from '../saving/answer-save.ts';
import { largestBody, mayNotSave } from '../saving/may-save.ts';
import { kindOf, placeOf } from '../saving/place.ts';
import { readBody } from '../saving/read-body.ts';
import { isRefused, refusalOf, type Refused } from '../saving/refusals.ts';
import type { SiteAnswer } from '../site-headers.ts';
import type { Terminal } from '../terminal.ts';
import { decide, type Decided } from './decide.ts';
import { decideRequestOf } from './decide-request.ts';
import { jsonAnswer, refusalAnswer } from './refusals.ts';

/** What deciding depends on, beside what saving does. */
export interface DecideSite extends SaveSite {
  /** Tells the time, and where what was seen of each record is kept. Null: nothing can be decided. */
  readonly decides: Terminal | null;
}

/**
 * Answers one request to approve, put in force or withdraw. It is let through as a save is; what is then entered, and whether, is for the
 * functions of the command line:
 *
 *     head ─► body, capped ─► what is asked ─► the folder that is meant ─► the record that the page saw ─► entered once
 *
 * Null: whoever asked is gone.
 */
export async function answerDecide(call: SaveCall, site: DecideSite): Promise<SiteAnswer | null> {
  const body = await bodyOf(call, site);
  if (body === null || 'status' in body) return body;
  const request = decideRequestOf(body.bytes);
  if (isRefused(request)) return refusalAnswer(request.refused);
  try {
    const folder = await folderOf(body.served, request.id);
    if (isRefused(folder)) return refusalAnswer(folder.refused);
    return answerOf(await decide(request, folder.folder, body.terminal));
  } catch (error) {
    return refusalAnswer(refusalOf(error));
  }
}

function answerOf(decided: Decided): SiteAnswer {
  switch (decided.kind) {
    case 'entered':
      return jsonAnswer(200, { entered: decided.says });
    case 'to_sign':
      return jsonAnswer(200, { sign: decided.draft });
    case 'not_entered':
      return jsonAnswer(422, { says: decided.says, problems: decided.problems });
    case 'refused':
      return refusalAnswer(decided.why);
  }
}

interface Body {
  readonly bytes: Uint8Array;
  readonly served: string;
  readonly terminal: Terminal;
}

/** The body of a request that may decide; or why it may not; null: whoever asked is gone. */
export async function bodyOf(call: SaveCall, site: DecideSite): Promise<Body | SiteAnswer | null> {
  const { saves, decides, patience = 10_000 } = site;
  const bad = mayNotSave(call, site);
  if (bad) return refusalAnswer(bad);
  if (saves === null || decides === null) return refusalAnswer('decides_nothing');
  const bytes = await readBody(call.body, largestBody, patience);
  if (bytes === null) return null;
  if (typeof bytes === 'string') return refusalAnswer(bytes);
  return { bytes, served: saves, terminal: decides };
}

/** The folder of a protocol or ward policy. No link is followed, neither to it nor to what stands in it. */
export async function folderOf(served: string, id: string): Promise<{ readonly folder: string } | Refused> {
  const place = await placeOf(served, { id, part: 'cases' });
  if (isRefused(place)) return place;
  const folder = join(place.file, '..');
  for (const name of [recordFolder, 'editions']) {
    const kind = await kindOf(join(folder, name));
    if (kind === 'link') return { refused: 'a_link' };
    if (kind !== 'folder' && kind !== 'nothing') return { refused: 'not_a_file' };
  }
  return { folder };
}
