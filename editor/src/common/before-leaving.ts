import type { Address } from './address.ts';

/** Asked before another address is opened; true when it will see to it that `leave` is called, or not. */
type Guard = (next: Address, leave: () => void) => boolean;

let guard: Guard | null = null;

/** Has a room asked before it is left. Returns how to stop that. */
export function askBeforeLeaving(ask: Guard): () => void {
  guard = ask;
  return () => {
    if (guard === ask) guard = null;
  };
}

/** Leaves at once, unless the room that is open has something to ask first. */
export function leaveFor(next: Address, leave: () => void): void {
  if (!guard?.(next, leave)) leave();
}
