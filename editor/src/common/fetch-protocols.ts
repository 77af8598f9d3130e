import type { Site, SiteProtocol } from './site-protocol.ts';

/** What stands beside this page, asked for as soon as the page is there. */
export const siteHere: Promise<Site> = fetchSite();

/** The protocols that stand beside this page. */
export const protocolsHere: Promise<readonly SiteProtocol[]> = siteHere.then(({ protocols }) => protocols);
// Whoever shows them tells of a failure; until then nobody does.
protocolsHere.catch(() => undefined);

export async function fetchSite(): Promise<Site> {
  const response = await fetch('protocols.json');
  if (!response.ok) throw new Error('The protocols could not be fetched.');
  return (await response.json()) as Site;
}
