import { useEffect, useState } from 'react';
import { withSealedMembers } from '../common/sealed-members.ts';
import type { SiteProtocol } from '../common/site-protocol.ts';
import { ask } from './ask.ts';
import type { Opened } from './messages.ts';

export type Opening = { readonly kind: 'opening' } | { readonly kind: 'failed' } | Opened;

/** Opens a protocol or a ward policy with its cases. `all` holds what it may build on. */
export function useLessons(protocol: SiteProtocol, all: readonly SiteProtocol[]): Opening {
  const [found, setFound] = useState<{ readonly of: SiteProtocol; readonly opening: Opening } | null>(null);
  useEffect(() => {
    let isWanted = true;
    const tell = (opening: Opening): void => {
      if (isWanted) setFound({ of: protocol, opening });
    };
    withSealedMembers(protocol, all)
      .then(async (members) => ask<'open'>({ kind: 'open', protocol, all: members }))
      .then(tell, () => tell({ kind: 'failed' }));
    return () => {
      isWanted = false;
    };
  }, [protocol, all]);
  return found?.of === protocol ? found.opening : { kind: 'opening' };
}
