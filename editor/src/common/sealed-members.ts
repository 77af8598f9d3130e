import { fetchEdition } from './fetch-edition.ts';
import { nameOf } from './protocol-name.ts';
import type { SealedText, SiteProtocol } from './site-protocol.ts';

/**
 * All protocols, with the texts of those sealed editions that a ward policy may name: where a draft has moved on, the ward stays with the
 * edition that it states. Which it is, the worker reads; here is only seen to it that the text is there.
 */
export async function withSealedMembers(
  { kind, text }: SiteProtocol,
  all: readonly SiteProtocol[],
): Promise<readonly SiteProtocol[]> {
  if (kind !== 'ward') return all;
  return Promise.all(all.map(async (each) => (text.includes(nameOf(each)) ? withSealed(each, text) : each)));
}

async function withSealed(protocol: SiteProtocol, policy: string): Promise<SiteProtocol> {
  const isNamed = (edition: number): boolean =>
    new RegExp(`edition:\\s*${edition}\\b`).test(policy) &&
    !new RegExp(`^edition:\\s*${edition}\\b`, 'm').test(protocol.text);
  const wanted = (protocol.editions ?? []).filter(({ edition }) => isNamed(edition));
  const sealed = wanted.map(async ({ edition, file, address }): Promise<SealedText> => {
    return { edition, file, text: await fetchEdition(address) };
  });
  return sealed.length === 0 ? protocol : { ...protocol, sealed: await Promise.all(sealed) };
}
