import type { StoredResults } from '../../../../src/index.ts';

/** What was worked out when a site of files was made. */
export async function fetchStored(): Promise<StoredResults> {
  const response = await fetch('stored.json');
  if (!response.ok) throw new Error('The stored results could not be fetched.');
  return (await response.json()) as StoredResults;
}
