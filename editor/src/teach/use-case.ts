import { useEffect, useState } from 'react';
import type { Drill, DrillAnswer } from '../../../src/index.ts';
import { ask } from './ask.ts';

/** A case of the deck as it is drilled: what unfolds, and what is told once it is answered. */
export interface OpenCase {
  readonly name: string;
  /** Null while the worker unfolds it. */
  readonly drill: Drill | null;
  readonly answer: DrillAnswer | null;
  /** The kit itself is at fault. */
  readonly failed: boolean;
}

/** Unfolds a case. Its answer comes only once it is wanted, so that nothing on the page gives it away. */
export function useCase(name: string, showing: number, wantsAnswer: boolean): OpenCase {
  const key = `${showing} ${name}`;
  const [drill, setDrill] = useState<{ readonly key: string; readonly drill: Drill | null } | null>(null);
  const [answer, setAnswer] = useState<{ readonly key: string; readonly answer: DrillAnswer | null } | null>(
    null,
  );
  const [failed, setFailed] = useState(false);
  useEffect(() => {
    let isWanted = true;
    ask<'drill'>({ kind: 'drill', name }).then(
      (found) => isWanted && setDrill({ key, drill: found.drill }),
      () => isWanted && setFailed(true),
    );
    return () => {
      isWanted = false;
    };
  }, [key, name]);
  useEffect(() => {
    if (!wantsAnswer) return undefined;
    let isWanted = true;
    ask<'answer'>({ kind: 'answer', name }).then(
      (found) => isWanted && setAnswer({ key, answer: found.answer }),
      () => isWanted && setFailed(true),
    );
    return () => {
      isWanted = false;
    };
  }, [key, name, wantsAnswer]);
  return {
    name,
    drill: drill?.key === key ? drill.drill : null,
    answer: answer?.key === key ? answer.answer : null,
    failed,
  };
}
