/**
 * The text of a sealed edition, from where the site says that it stands, byte for byte. What it is worth is for a worker to check: its
 * seal, and that it answers its cases as when it was sealed.
 */
export async function fetchEdition(address: string): Promise<string> {
  const response = await fetch(address);
  if (!response.ok) throw new Error('A sealed edition could not be fetched.');
  return response.text();
}
