import { useEffect, useState } from 'react';
import type { Helper } from '../ask.ts';
import type { WitnessHere } from './witness-here.ts';

type Found = WitnessHere | 'reading' | 'failed';

/** One of the sets of the comparison, with what both sides say of it. */
export function useWitness(helper: Helper, at: number): Found {
  const [found, setFound] = useState<{ readonly at: number; readonly of: Helper; readonly is: Found } | null>(
    null,
  );
  useEffect(() => {
    let isWanted = true;
    const tell = (is: Found): void => {
      if (isWanted) setFound({ at, of: helper, is });
    };
    helper.ask<'witness'>({ kind: 'witness', at }).then(
      ({ witness }) => tell(witness ?? 'failed'),
      () => tell('failed'),
    );
    return () => {
      isWanted = false;
    };
  }, [helper, at]);
  return found?.at === at && found.of === helper ? found.is : 'reading';
}
