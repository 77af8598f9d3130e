import { useEffect, useState } from 'react';
import type { UnguardedChange } from '../../../../../src/index.ts';
import type { OpenDesk } from '../../desk/use-desk.ts';
import type { UnguardedSoFar } from '../../messages.ts';
import { useHelper } from '../../use-helper.ts';

/** So long, in milliseconds, the texts must have rested before unguarded changes are looked for. */
const rest = 700;

export interface Unguarded {
  readonly found: readonly UnguardedChange[];
  readonly inWords: string;
}

const none: UnguardedSoFar = { looked: 0, of: 0, found: [] };

/**
 * Looks for unguarded changes while nothing else happens, in a worker of its own and a little at a time: a change of the texts ends it, and
 * it begins anew once they rest.
 */
export function useUnguarded({ desk, state, isFresh, opening }: OpenDesk, isWanted: boolean): Unguarded {
  const [soFar, setSoFar] = useState({ version: -1, ...none });
  const helper = useHelper('unguarded', opening);
  const { version } = state;
  useEffect(() => {
    if (!helper || !isWanted || !isFresh) return undefined;
    let stopped = false;
    const go = async (): Promise<void> => {
      const texts = desk.texts();
      let last = none;
      do {
        last = await helper.ask<'unguarded'>({ kind: 'unguarded', texts, version });
        if (stopped) return;
        setSoFar({ version, ...last });
      } while (last.looked < last.of);
    };
    const timer = setTimeout(() => void go().catch(() => undefined), rest);
    return () => {
      stopped = true;
      clearTimeout(timer);
    };
  }, [helper, desk, isWanted, isFresh, version]);
  const isCurrent = isWanted && soFar.version === version;
  return { found: isCurrent ? soFar.found : [], inWords: isCurrent ? inWords(soFar) : waiting(isWanted) };
}

const waiting = (isWanted: boolean): string =>
  isWanted ? 'Unguarded changes are looked for once the text rests.' : 'There is no case yet.';

function inWords({ looked, of, found }: UnguardedSoFar): string {
  const open = found.filter(({ accepted }) => accepted === null).length;
  const far =
    looked < of ? `Looked at ${looked} of ${of} small changes. ` : `All ${of} small changes looked at. `;
  return far + (open === 0 ? 'Some case notices each of them.' : `${open} would go unnoticed.`);
}
