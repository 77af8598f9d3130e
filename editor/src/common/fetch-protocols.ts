import type { SiteProtocol } from './site-protocol.ts';

/** The protocols that stand beside this page, asked for as soon as the page is there. */
export const protocolsHere = fetchProtocols();
// Whoever shows them tells of a failure; until then nobody does.
protocolsHere.catch(() => undefined);

async function fetchProtocols(): Promise<readonly SiteProtocol[]> {
  const response = await fetch('protocols.json');
  if (!response.ok) throw new Error('The protocols could not be fetched.');
  return (await response.json()) as readonly SiteProtocol[];
}
