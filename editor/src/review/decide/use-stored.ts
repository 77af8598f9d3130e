import { useEffect, useState } from 'react';
import type { StoredDraft, StoredResults } from '../../../../src/index.ts';
import { fetchEdition } from '../../common/fetch-edition.ts';
import type { RoomProps } from '../../common/room.ts';
import { fetchStored } from './fetch-stored.ts';
import { filesThatDiffer, isOfItsTexts, textsBeside } from './stored-check.ts';

/** Results that were stored, and whether they are of what stands beside them. */
export type StoredHere =
  | { readonly kind: 'none' }
  | { readonly kind: 'loading' }
  | { readonly kind: 'failed' }
  | { readonly kind: 'otherwise'; readonly files: readonly string[]; readonly draft: StoredDraft }
  | { readonly kind: 'true'; readonly draft: StoredDraft; readonly kit: string; readonly made: string };

/** What is stored of the draft that is open. Nothing of it is given out as true before every text was compared. */
export function useStored({ protocol, site }: Pick<RoomProps, 'protocol' | 'site'>): StoredHere {
  const [here, setHere] = useState<StoredHere>({ kind: 'loading' });
  useEffect(() => {
    let isOpen = true;
    const tell = (found: StoredHere): void => {
      if (isOpen) setHere(found);
    };
    tell({ kind: 'loading' });
    if (site.stored === true) storedOf(protocol, site).then(tell, () => tell({ kind: 'failed' }));
    return () => {
      isOpen = false;
    };
  }, [protocol, site]);
  return site.stored === true ? here : { kind: 'none' };
}

async function storedOf(
  { id, editions = [] }: RoomProps['protocol'],
  site: RoomProps['site'],
): Promise<StoredHere> {
  const results: StoredResults = await fetchStored();
  const draft = Object.hasOwn(results.drafts, id) ? results.drafts[id] : undefined;
  if (!draft || !isOfItsTexts(draft)) return { kind: 'failed' };
  const named = new Set(draft.of.map(({ file }) => file));
  const sealed = await Promise.all(
    editions
      .filter(({ file }) => named.has(file))
      .map(async ({ file, address }) => ({ file, text: await fetchEdition(address) })),
  );
  const files = filesThatDiffer(draft, [...textsBeside(site), ...sealed]);
  return files.length > 0
    ? { kind: 'otherwise', files, draft }
    : { kind: 'true', draft, kit: results.kit, made: results.made };
}
