import { useEffect, useRef, useState } from 'react';

/** The room is cleared after so many minutes in which nobody touches it. */
export const idleMinutes = 10;

/** So many seconds before that, the page asks. */
const askSeconds = 60;

const minute = 60_000;

/**
 * Clears the room when nobody touches it. Counted by the clock, so that a machine that slept clears when it wakes. Null while
 * nothing is about to be cleared, else the seconds that are left.
 */
export function useIdle(isBlank: boolean, clear: () => void): number | null {
  const touched = useRef(0);
  const [left, setLeft] = useState<number | null>(null);
  useEffect(() => {
    if (isBlank) {
      setLeft(null);
      return undefined;
    }
    touched.current = Date.now();
    const touch = (): void => {
      touched.current = Date.now();
      setLeft(null);
    };
    const look = (): void => {
      const seconds = Math.ceil((touched.current + idleMinutes * minute - Date.now()) / 1000);
      if (seconds <= 0) clear();
      else setLeft(seconds <= askSeconds ? seconds : null);
    };
    const timer = setInterval(look, 1000);
    for (const event of touches) addEventListener(event, touch, { capture: true, passive: true });
    return () => {
      clearInterval(timer);
      for (const event of touches) removeEventListener(event, touch, { capture: true });
    };
  }, [isBlank, clear]);
  return left;
}

const touches = ['pointerdown', 'keydown', 'input', 'wheel'] as const;
