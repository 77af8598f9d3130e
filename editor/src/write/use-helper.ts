import { useEffect, useState } from 'react';
import { newHelper, type Helper } from './ask.ts';
import type { Opening } from './messages.ts';

/** A worker of its own for what takes longer than a keystroke; it knows what is open, and ends with whoever shows its answers. */
export function useHelper(opening: Opening): Helper | null {
  const [helper, setHelper] = useState<Helper | null>(null);
  useEffect(() => {
    const made = newHelper();
    void made.ask<'open'>(opening);
    setHelper(made);
    return () => {
      made.end();
      setHelper(null);
    };
  }, [opening]);
  return helper;
}
