import { useEffect, useMemo, useState, useSyncExternalStore } from 'react';
import { ask } from '../ask.ts';
import { withSealedMembers } from '../../common/sealed-members.ts';
import type { Site, SiteProtocol } from '../../common/site-protocol.ts';
import type { Opening } from '../messages.ts';
import { checkAfterChanges, type Verdict } from './check-loop.ts';
import { Desk, type DeskState } from './desk.ts';
import { readDraft } from './drafts.ts';
import { markProblems } from './marks.ts';

/** The desks of this page by the ids of their protocols, each with all that can be taken back. */
const desks = new Map<string, Desk>();

function deskOf(protocol: SiteProtocol): Desk {
  const known = desks.get(protocol.id);
  if (known) return known;
  const isThere = protocol.text !== '';
  const onDisk = { protocol: isThere ? protocol.text : null, cases: protocol.cases?.text ?? null };
  const made = new Desk(protocol.id, onDisk, readDraft(protocol.id));
  desks.set(protocol.id, made);
  return made;
}

const nothingYet: Verdict = { checked: null, version: -1, failed: false };

export interface OpenDesk {
  readonly desk: Desk;
  readonly state: DeskState;
  /** The last answer of the check. Not about the texts as they stand when its version is another one. */
  readonly verdict: Verdict;
  readonly isFresh: boolean;
  /** What is around the texts, as every worker of the room is told it. */
  readonly opening: Opening;
}

/** The desk of a protocol, checked after each change. */
export function useDesk(protocol: SiteProtocol, { protocols, ladders }: Site): OpenDesk {
  const desk = useMemo(() => deskOf(protocol), [protocol]);
  const state = useSyncExternalStore(desk.subscribe, () => desk.state);
  const [verdict, setVerdict] = useState({ of: desk, ...nothingYet });
  const all = useMembers(protocol, protocols);
  const opening = useMemo(
    (): Opening => ({ kind: 'open', protocol, all, ladders }),
    [protocol, all, ladders],
  );
  useEffect(() => {
    void ask<'open'>(opening);
    return checkAfterChanges(desk, (next) => {
      markProblems(desk, next.checked?.problems ?? []);
      setVerdict({ of: desk, ...next });
    });
  }, [desk, opening]);
  useEffect(() => {
    const keep = (): void => {
      desk.keep();
    };
    addEventListener('pagehide', keep);
    return () => removeEventListener('pagehide', keep);
  }, [desk]);
  const own = verdict.of === desk ? verdict : nothingYet;
  const isFresh = own.version === state.version && own.checked !== null;
  return { desk, state, verdict: own, isFresh, opening };
}

/** All protocols; of those that an open ward policy names, the sealed editions as well, as soon as they are there. */
function useMembers(protocol: SiteProtocol, protocols: readonly SiteProtocol[]): readonly SiteProtocol[] {
  const [found, setFound] = useState({ of: protocols, all: protocols });
  useEffect(() => {
    let isWanted = true;
    const tell = (all: readonly SiteProtocol[]): void => {
      if (isWanted) setFound({ of: protocols, all });
    };
    // Should a text not be there, the check of the policy says which edition is lacking.
    withSealedMembers(protocol, protocols).then(tell, () => undefined);
    return () => {
      isWanted = false;
    };
  }, [protocol, protocols]);
  return found.of === protocols ? found.all : protocols;
}
