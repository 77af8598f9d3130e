import { useEffect, useState } from 'react';
import type { OpenDesk } from '../../desk/use-desk.ts';
import type { RequirementsHere } from '../../messages.ts';
import { useHelper } from '../../use-helper.ts';

/** So long, in milliseconds, the texts must have rested before requirements are asked again. */
const rest = 150;

const nothingYet = { version: -1, answers: [] as RequirementsHere['answers'] };

/** What became of each requirement, asked in a worker of its own after a change. Of texts that cannot be read nothing is told. */
export function useRequirements({ desk, state, verdict, isFresh, opening }: OpenDesk): {
  readonly answers: RequirementsHere['answers'];
  /** Whether the answers are about the texts as they stand. */
  readonly isCurrent: boolean;
} {
  const [last, setLast] = useState({ of: opening, ...nothingYet });
  const helper = useHelper('requirements', opening);
  const { version } = state;
  const isAskable = isFresh && verdict.checked?.usable === true && opening.protocol.kind === 'protocol';
  useEffect(() => {
    if (!helper || !isAskable) return undefined;
    let stopped = false;
    const go = async (): Promise<void> => {
      const { answers } = await helper.ask<'requirements'>({ kind: 'requirements', texts: desk.texts() });
      if (!stopped) setLast({ of: opening, version, answers });
    };
    const timer = setTimeout(() => void go().catch(() => undefined), rest);
    return () => {
      stopped = true;
      clearTimeout(timer);
    };
  }, [helper, desk, opening, isAskable, version]);
  const own = last.of === opening ? last : nothingYet;
  return { answers: own.answers, isCurrent: isAskable && own.version === version };
}
