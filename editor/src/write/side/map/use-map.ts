import { useEffect, useState } from 'react';
import type { OpenDesk } from '../../desk/use-desk.ts';
import type { GivenSet, MapHere } from '../../messages.ts';
import { usable } from '../new-case/usable.ts';
import { useHelper } from '../../use-helper.ts';

/** The map of the texts as they stand, worked out anew after each check, in a worker of its own. */
export function useMap(
  { desk, verdict, opening }: OpenDesk,
  axes: readonly [string, string] | null,
  held: GivenSet | null,
): MapHere | null | 'drawing' {
  const [map, setMap] = useState<MapHere | null | 'drawing'>('drawing');
  const helper = useHelper('map', opening);
  const { version } = verdict;
  useEffect(() => {
    if (!helper) return undefined;
    let isWanted = true;
    helper.ask<'map'>({ kind: 'map', texts: desk.texts(), axes, held: held && usable(held) }).then(
      (found) => isWanted && setMap(found.map),
      () => isWanted && setMap(null),
    );
    return () => {
      isWanted = false;
    };
  }, [helper, desk, version, axes, held]);
  return map;
}
