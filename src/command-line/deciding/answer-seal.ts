import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileNames } from '../files.ts';
import type { SaveCall } from '../saving/answer-save.ts';
import { digestOf } from '../saving/compare-and-swap.ts';
import { oneAtATime } from '../saving/one-at-a-time.ts';
import { kindOf } from '../saving/place.ts';
import { isRefused, refusalOf } from '../saving/refusals.ts';
import type { SiteAnswer } from '../site-headers.ts';
import { exit } from '../terminal.ts';
import { bodyOf, folderOf, type DecideSite } from './answer-decide.ts';
import { sealRequestOf, type SealRequest } from './decide-request.ts';
import { jsonAnswer, refusalAnswer } from './refusals.ts';
import type { SealApart } from './seal-apart.ts';

/** What sealing depends on. */
export interface SealSite extends DecideSite {
  /** Runs the call of the command line, apart from the server: what it asks can take minutes, and nobody at a bed waits for it. */
  readonly seal: SealApart;
}

/** One after the other: what is asked of one edition keeps a machine busy. A withdrawal does not wait here. */
const inTurn = oneAtATime();

/** Answers one request to seal the draft that stands on the disk. Null: whoever asked is gone. */
export async function answerSeal(call: SaveCall, site: SealSite): Promise<SiteAnswer | null> {
  const body = await bodyOf(call, site);
  if (body === null || 'status' in body) return body;
  const request = sealRequestOf(body.bytes);
  if (isRefused(request)) return refusalAnswer(request.refused);
  try {
    const folder = await folderOf(body.served, request.id);
    if (isRefused(folder)) return refusalAnswer(folder.refused);
    return await inTurn(async () => seal(request, folder.folder, site.seal));
  } catch (error) {
    return refusalAnswer(refusalOf(error));
  }
}

async function seal({ onDisk, authors }: SealRequest, folder: string, apart: SealApart): Promise<SiteAnswer> {
  const isWard = (await kindOf(join(folder, fileNames.ward))) === 'file';
  const path = join(folder, isWard ? fileNames.ward : fileNames.protocol);
  if ((await kindOf(path)) !== 'file') return refusalAnswer('a_link');
  if (digestOf(await readFile(path)) !== onDisk) return refusalAnswer('other_draft');
  const { code, out, err } = await apart(path, authors);
  const lines = (text: string): string[] => text.split('\n').filter((line) => line.trim() !== '');
  return code === exit.well
    ? jsonAnswer(200, { sealed: lines(out) })
    : jsonAnswer(422, { holds: lines(out), says: err.trimEnd() });
}
