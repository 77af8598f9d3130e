import { useEffect, useState } from 'react';
import type { Helper } from '../ask.ts';
import type { MapAsked, MapHere } from './map-here.ts';

type Found = MapHere | 'drawing' | 'failed';

/** The map of what changes; the last one stays while the next is worked out. */
export function useChangeMap(helper: Helper, { axes, protocol, heldAs }: Omit<MapAsked, 'kind'>): Found {
  const [found, setFound] = useState<{ readonly of: Helper; readonly is: Found } | null>(null);
  const across = axes?.join();
  useEffect(() => {
    let isWanted = true;
    const tell = (is: Found): void => {
      if (isWanted) setFound({ of: helper, is });
    };
    helper.ask<'map'>({ kind: 'map', axes, protocol, heldAs }).then(tell, () => tell('failed'));
    return () => {
      isWanted = false;
    };
  }, [helper, across, protocol, heldAs]);
  return found?.of === helper ? found.is : 'drawing';
}
