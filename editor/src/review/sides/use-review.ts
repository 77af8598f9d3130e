import { useEffect, useMemo, useState } from 'react';
import type { SiteProtocol } from '../../common/site-protocol.ts';
import { newHelper, type Helper } from '../ask.ts';
import type { ChangesHere } from '../changes/changes-here.ts';
import type { Opening, SideHere } from '../messages.ts';
import { openingOf } from './opening-of.ts';
import type { ChosenSides } from './side-choices.ts';

/** Both sides, as far as they are open. */
export type Review =
  | { readonly kind: 'opening' }
  | { readonly kind: 'failed' }
  | {
      readonly kind: 'open';
      readonly helper: Helper;
      /** What another worker is opened with, for what takes long. */
      readonly opening: Opening;
      readonly before: SideHere | null;
      readonly after: SideHere;
      /** Null: there are no two sides to compare. */
      readonly changes: ChangesHere | 'comparing' | null;
    };

interface Asked extends ChosenSides {
  readonly protocol: SiteProtocol;
  readonly all: readonly SiteProtocol[];
}

/**
 * Opens both sides and compares them, in a worker of its own that ends as soon as something else is asked. A site that was read anew
 * and says the same is the same.
 */
export function useReview({ protocol, all, before, after }: Asked): Review {
  const [found, setFound] = useState<{ readonly of: string; readonly review: Review } | null>(null);
  const texts = useMemo(() => JSON.stringify([protocol, all.map(({ text }) => text)]), [protocol, all]);
  const of = `${before ?? ''} ${after} ${texts}`;
  useEffect(() => {
    const helper = newHelper();
    let isWanted = true;
    const tell = (review: Review): void => {
      if (isWanted) setFound({ of, review });
    };
    const open = async (): Promise<void> => {
      const opening = await openingOf(protocol, all, { before, after });
      const sides = await helper.ask<'open'>(opening);
      const here = { kind: 'open', helper, opening, ...sides } as const;
      const canCompare = sides.before?.kind === 'open' && sides.after.kind === 'open';
      tell({ ...here, changes: canCompare ? 'comparing' : null });
      if (!canCompare) return;
      const { changes } = await helper.ask<'compare'>({ kind: 'compare' });
      tell({ ...here, changes });
    };
    open().catch(() => tell({ kind: 'failed' }));
    return () => {
      isWanted = false;
      helper.end();
    };
    // `of` stands for the protocol and all others: they are the same as long as their texts are.
  }, [of]);
  return found?.of === of ? found.review : { kind: 'opening' };
}
