import { verdicts, type Answered } from '../../../src/index.ts';

const key = 'vitalwright.drill';

/** So many answers are kept; the oldest go first. */
const most = 2000;

const texts = ['at', 'protocol', 'case', 'said', 'ruleSays', 'outputAndVessels', 'caseSays'] as const;
const numbers = ['edition', 'rank', 'showing', 'seen', 'given'] as const;

/** The answers of the drill that this browser keeps. They are about invented patients, and hold no words that a learner wrote. */
export function readResults(): readonly Answered[] {
  try {
    const kept: unknown = JSON.parse(localStorage.getItem(key) ?? '[]');
    return Array.isArray(kept) ? kept.filter(isAnswered) : [];
  } catch {
    return [];
  }
}

function isAnswered(kept: unknown): kept is Answered {
  if (typeof kept !== 'object' || kept === null) return false;
  const each = kept as Readonly<Record<string, unknown>>;
  return (
    texts.every((name) => typeof each[name] === 'string') &&
    numbers.every((name) => typeof each[name] === 'number') &&
    verdicts.some((verdict) => verdict === each['verdict'])
  );
}

/** Keeps one answer more, where the browser lets the page keep anything. What is kept after it. */
export function keepResult(answer: Answered): readonly Answered[] {
  // Another page of this browser may have kept some in the meantime.
  const all = [...readResults(), answer].slice(-most);
  try {
    localStorage.setItem(key, JSON.stringify(all));
  } catch {
    return all;
  }
  return all;
}

export function wipeResults(): readonly Answered[] {
  try {
    localStorage.removeItem(key);
  } catch {
    return [];
  }
  return [];
}
