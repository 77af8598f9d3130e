import { cp, mkdir, mkdtemp, readdir, rename, rm, rmdir, stat, writeFile } from 'node:fs/promises';
import { basename, dirname, join, resolve } from 'node:path';
import { builtSite } from './built-site.ts';
import { cannotAsk, orUnreadable } from './say.ts';
import { siteAssets } from './site-assets.ts';
import { siteFiles } from './site-files.ts';
import { exit, type Exit, type Terminal } from './terminal.ts';

/**
 * `vitalwright build [FOLDER] --to site --out NEW`: the rooms as files for any web server, with the protocols below a folder and what was
 * worked out about them. The folder is there whole, or not at all.
 */
export async function buildSite(folder: string, out: string | null, terminal: Terminal): Promise<Exit> {
  if (out === null || out === '')
    return cannotAsk('--to site is written into a new folder: --out FOLDER.', terminal);
  const rooms = await builtSite();
  if (rooms === null) return cannotAsk('The rooms are not built yet: npm run build', terminal);
  return orUnreadable(async () => {
    const found = await stat(folder).catch(() => null);
    if (!found?.isDirectory()) return cannotAsk(`There is no folder "${folder}".`, terminal);
    const why = await whyNotInto(out);
    if (why !== null) return cannotAsk(why, terminal);
    await write(rooms, folder, resolve(out), terminal);
    terminal.out(`The rooms are in ${out}, as files: nothing can be saved or decided there.\n`);
    return exit.well;
  }, terminal);
}

/** Why a site cannot be written there; null when it can. Nothing that stands there is ever replaced. */
async function whyNotInto(out: string): Promise<string | null> {
  const there = await stat(out).catch(() => null);
  if (!there) {
    const around = await stat(dirname(resolve(out))).catch(() => null);
    return around?.isDirectory() ? null : `There is no folder "${dirname(out)}" to write into.`;
  }
  if (!there.isDirectory()) return `"${out}" is a file: name a new folder.`;
  return (await readdir(out)).length === 0 ? null : `"${out}" is not empty: name a new folder.`;
}

async function write(rooms: string, folder: string, out: string, terminal: Terminal): Promise<void> {
  const draft = await mkdtemp(join(dirname(out), `.${basename(out)}-`));
  try {
    // What the rooms were built with is another folder's.
    const own: ReadonlySet<string> = new Set([siteFiles.protocols, siteFiles.editions, siteFiles.stored]);
    const entries = (await readdir(rooms)).filter((name) => !own.has(name));
    for (const name of entries) await cp(join(rooms, name), join(draft, name), { recursive: true });
    const told = (id: string): void => terminal.out(`Worked out: ${id}\n`);
    for (const { fileName, source } of await siteAssets(folder, terminal, told)) {
      await mkdir(dirname(join(draft, fileName)), { recursive: true });
      await writeFile(join(draft, fileName), source);
    }
    await rmdir(out).catch(() => undefined);
    await rename(draft, out);
  } catch (error) {
    await rm(draft, { recursive: true, force: true });
    throw error;
  }
}
