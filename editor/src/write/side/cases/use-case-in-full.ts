import { useEffect, useState } from 'react';
import { ask } from '../../ask.ts';
import { markDeciding } from '../../desk/marks.ts';
import type { OpenDesk } from '../../desk/use-desk.ts';
import type { CaseInFull } from '../../messages.ts';

/** The chosen case in full, asked anew after each check; the lines that decided it are marked in the text while it is shown. */
export function useCaseInFull({ desk, verdict }: OpenDesk, name: string): CaseInFull | null {
  const [full, setFull] = useState<CaseInFull | null>(null);
  const { version } = verdict;
  useEffect(() => {
    let isWanted = true;
    ask<'case'>({ kind: 'case', name }).then(
      (found) => {
        if (!isWanted) return;
        setFull(found.case);
        markDeciding(desk, found.case?.rules ?? []);
      },
      () => isWanted && setFull(null),
    );
    return () => {
      isWanted = false;
    };
  }, [desk, name, version]);
  useEffect(() => () => markDeciding(desk, []), [desk, name]);
  return full?.name === name ? full : null;
}
