import { editionAt } from './site-editions.ts';
import { siteFiles } from './site-files.ts';
import { siteBelow, type SiteProtocol } from './site-protocols.ts';
import type { Terminal } from './terminal.ts';

/** A file of a static site beside the rooms, by its path below them. */
export interface SiteAsset {
  readonly fileName: string;
  readonly source: string;
}

/**
 * What a site of files alone holds of a folder: what a server would answer at this moment, but that nothing can be saved. With `told`,
 * which hears of each draft, what can be worked out about the drafts is stored beside them; that takes minutes.
 */
export async function siteAssets(
  folder: string,
  terminal: Terminal,
  told: ((id: string) => void) | null = null,
): Promise<readonly SiteAsset[]> {
  const site = await siteBelow(folder, false, terminal);
  const addresses = site.protocols.flatMap(({ editions = [] }) => editions.map(({ address }) => address));
  const editions = await Promise.all(
    addresses.map(async (fileName) => ({ fileName, source: (await editionAt(folder, fileName)) ?? '' })),
  );
  const body = told ? { ...site, stored: true } : site;
  const stored = told ? [await storedAsset(folder, site.protocols, terminal, told)] : [];
  return [{ fileName: siteFiles.protocols, source: JSON.stringify(body) }, ...editions, ...stored];
}

async function storedAsset(
  folder: string,
  protocols: readonly SiteProtocol[],
  terminal: Terminal,
  told: (id: string) => void,
): Promise<SiteAsset> {
  const { storedResults } = await import('./site-stored.ts');
  const results = await storedResults(folder, protocols, terminal, told);
  return { fileName: siteFiles.stored, source: JSON.stringify(results) };
}
