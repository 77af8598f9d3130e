import { useCallback, useState } from 'react';
import type { Answered } from '../../../src/index.ts';
import { keepResult, readResults, wipeResults } from './kept-results.ts';

interface Kept {
  readonly results: readonly Answered[];
  readonly keep: (answer: Answered) => void;
  readonly wipe: () => void;
}

/** The kept answers, and how to keep one more or to wipe them. */
export function useResults(): Kept {
  const [results, setResults] = useState(readResults);
  const keep = useCallback((answer: Answered) => setResults(keepResult(answer)), []);
  const wipe = useCallback(() => setResults(wipeResults()), []);
  return { results, keep, wipe };
}
