import type { SiteProtocol } from './messages.ts';

/** The protocols that stand beside this page. */
export async function fetchProtocols(): Promise<readonly SiteProtocol[]> {
  const response = await fetch('protocols.json');
  if (!response.ok) throw new Error('The protocols could not be fetched.');
  return (await response.json()) as readonly SiteProtocol[];
}
