import { editionAt } from './site-editions.ts';
import { siteFiles } from './site-files.ts';
import { siteBelow } from './site-protocols.ts';
import type { Terminal } from './terminal.ts';

/** A file of a static site beside the rooms, by its path below them. */
export interface SiteAsset {
  readonly fileName: string;
  readonly source: string;
}

/** What a site of files alone holds of a folder: what a server would answer at this moment, but that nothing can be saved. */
export async function siteAssets(folder: string, terminal: Terminal): Promise<readonly SiteAsset[]> {
  const site = await siteBelow(folder, false, terminal);
  const addresses = site.protocols.flatMap(({ editions = [] }) => editions.map(({ address }) => address));
  const editions = await Promise.all(
    addresses.map(async (fileName) => ({ fileName, source: (await editionAt(folder, fileName)) ?? '' })),
  );
  return [{ fileName: siteFiles.protocols, source: JSON.stringify(site) }, ...editions];
}
