import { useEffect, useRef, useState } from 'react';
import { newHelper, type Helper } from '../ask.ts';
import type { Opening } from '../messages.ts';
import type { LookedSoFar, LooseEnd, LooseEnds } from './loose-here.ts';

export interface Looking {
  readonly state: 'not_asked' | 'running' | 'done' | 'cancelled' | 'failed';
  readonly ends: readonly LooseEnd[];
  readonly problems: readonly string[];
  /** How far it is; null where that is not known. */
  readonly looked: Omit<LookedSoFar, 'ends'> | null;
  readonly start: () => void;
  readonly cancel: () => void;
}

type Found = Omit<Looking, 'start' | 'cancel'>;

const notAsked: Found = { state: 'not_asked', ends: [], problems: [], looked: null };

/** Looks for one kind of loose ends of the draft, in a worker of its own. To cancel ends that worker at once. */
export function useLoose(opening: Opening, kind: 'findings' | 'unguarded'): Looking {
  const [found, setFound] = useState<Found>(notAsked);
  const helper = useRef<Helper | null>(null);
  const end = (): void => {
    helper.current?.end();
    helper.current = null;
  };
  useEffect(() => {
    setFound(notAsked);
    return end;
  }, [opening]);
  const start = (): void => {
    end();
    const own = newHelper();
    helper.current = own;
    setFound({ ...notAsked, state: 'running' });
    const tell = (is: Found, isOver: boolean): void => {
      if (helper.current !== own) return;
      if (isOver) end();
      setFound((before) => ({ ...is, looked: is.looked ?? before.looked }));
    };
    const hear = ({ ends, ...looked }: LookedSoFar): void =>
      tell({ state: 'running', ends, problems: [], looked }, false);
    lookWith(own, opening, kind, hear).then(
      (all) => tell({ state: 'done', looked: null, ...all }, true),
      () => tell({ ...notAsked, state: 'failed' }, true),
    );
  };
  const cancel = (): void => {
    end();
    setFound((before) => ({ ...before, state: 'cancelled' }));
  };
  return { ...found, start, cancel };
}

async function lookWith(
  helper: Helper,
  opening: Opening,
  kind: 'findings' | 'unguarded',
  hear: (soFar: LookedSoFar) => void,
): Promise<LooseEnds> {
  await helper.ask<'open'>({ ...opening, before: null, after: { kind: 'draft' } });
  return kind === 'findings'
    ? helper.ask<'findings'>({ kind })
    : helper.ask<'unguarded'>({ kind }, (soFar) => hear(soFar as LookedSoFar));
}
