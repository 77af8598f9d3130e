import { useEffect, useRef, useState } from 'react';
import { newHelper, type Helper } from '../ask.ts';
import type { Opening } from '../messages.ts';
import type { ProofHere, ProvingSoFar } from './hold-here.ts';

export interface Proving {
  readonly state: 'not_asked' | 'running' | 'done' | 'cancelled' | 'failed';
  /** What is looked at now; null when nothing is. */
  readonly looking: Extract<ProvingSoFar, { kind: 'looking' }> | null;
  /** What was answered so far, by requirement. */
  readonly proofs: ReadonlyMap<string, ProofHere>;
  readonly prove: () => void;
  readonly cancel: () => void;
}

type Found = Pick<Proving, 'state' | 'looking' | 'proofs'>;

const notAsked: Found = { state: 'not_asked', looking: null, proofs: new Map() };

/** Proves in a worker of its own. To cancel ends that worker at once; what it had answered before stays. */
export function useProofs(opening: Opening): Proving {
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
  const prove = (): void => {
    end();
    const own = newHelper();
    helper.current = own;
    setFound({ ...notAsked, state: 'running' });
    const hear = (told: ProvingSoFar): void => {
      if (helper.current === own) setFound((before) => heard(before, told));
    };
    const over = (state: 'done' | 'failed'): void => {
      if (helper.current !== own) return;
      end();
      setFound((before) => ({ ...before, state, looking: null }));
    };
    proveWith(own, opening, hear).then(
      () => over('done'),
      () => over('failed'),
    );
  };
  const cancel = (): void => {
    end();
    setFound((before) => ({ ...before, state: 'cancelled', looking: null }));
  };
  return { ...found, prove, cancel };
}

async function proveWith(
  helper: Helper,
  opening: Opening,
  hear: (told: ProvingSoFar) => void,
): Promise<void> {
  await helper.ask<'open'>({ ...opening, before: null });
  await helper.ask<'prove'>({ kind: 'prove' }, (soFar) => hear(soFar as ProvingSoFar));
}

function heard(before: Found, told: ProvingSoFar): Found {
  if (told.kind === 'looking') return { ...before, looking: told };
  return { ...before, proofs: new Map([...before.proofs, [told.proof.requirement, told.proof]]) };
}
