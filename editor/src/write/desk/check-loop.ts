import { ask } from '../ask.ts';
import type { Checked } from '../messages.ts';
import type { Desk } from './desk.ts';

/** What the check said, and whether that is about the texts as they stand now. */
export interface Verdict {
  readonly checked: Checked | null;
  /** The version of the texts that it is about. */
  readonly version: number;
  readonly failed: boolean;
}

/** So long a pause in typing, in milliseconds, is awaited before the texts are checked. */
const pause = 25;

/**
 * Has the texts checked after each change: one question at a time, and the next only about the texts as they then are. An answer about
 * texts that have changed since is dropped. Returns how to stop.
 */
export function checkAfterChanges(desk: Desk, tell: (verdict: Verdict) => void): () => void {
  let stopped = false;
  let asking = false;
  let asked = -1;
  let timer: ReturnType<typeof setTimeout> | null = null;
  const next = async (): Promise<void> => {
    timer = null;
    if (stopped || asking || asked === desk.state.version) return;
    asking = true;
    const { version } = desk.state;
    asked = version;
    try {
      const checked = await ask<'check'>({ kind: 'check', texts: desk.texts() });
      if (!stopped && version === desk.state.version) tell({ checked, version, failed: false });
    } catch {
      if (!stopped) tell({ checked: null, version, failed: true });
    }
    asking = false;
    void next();
  };
  const soon = (): void => {
    if (timer !== null) clearTimeout(timer);
    timer = setTimeout(() => void next(), pause);
  };
  void next();
  const stop = desk.subscribe(soon);
  return () => {
    stopped = true;
    stop();
    if (timer !== null) clearTimeout(timer);
  };
}
