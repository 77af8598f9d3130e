import { useEffect, useRef, useState } from 'react';
import { ask } from './ask.ts';
import type { PageReading } from './messages.ts';

/** What the protocol says of what was entered; `failed` when the kit itself is at fault. */
export type Reading =
  | { readonly state: 'waiting' }
  | { readonly state: 'failed' }
  | { readonly state: 'problems'; readonly problems: readonly string[] }
  | { readonly state: 'read'; readonly reading: PageReading; readonly text: string };

/** So many milliseconds an older outcome stands without a word. */
const patience = 300;

/** Whether what is shown is still the outcome of what was entered before, for longer than a blink. */
export function useIsBehind(reading: Reading, text: string): boolean {
  const isOlder = reading.state === 'read' && reading.text !== text;
  const [isBehind, setBehind] = useState(false);
  useEffect(() => {
    const timer = setTimeout(() => setBehind(isOlder), isOlder ? patience : 0);
    return () => clearTimeout(timer);
  }, [isOlder]);
  return isOlder && isBehind;
}

/** Reads a series whenever it changes. An answer to an older question is never shown. */
export function useReading(text: string | null): Reading {
  const [reading, setReading] = useState<Reading>({ state: 'waiting' });
  const asked = useRef('');
  useEffect(() => {
    if (text === null || text === asked.current) return;
    asked.current = text;
    ask<'read'>({ kind: 'read', text }).then(
      ({ readings, problems }) => {
        if (asked.current !== text) return;
        const [first] = readings;
        setReading(first ? { state: 'read', reading: first, text } : { state: 'problems', problems });
      },
      () => setReading({ state: 'failed' }),
    );
  }, [text]);
  return reading;
}
