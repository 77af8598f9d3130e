import type { ReactNode } from 'react';
import type { SaidOfSource } from '../../../src/index.ts';
import { keyed } from '../common/keyed.ts';

/** What must be said of what is read with, before anybody acts on it: since when it is in force, or that it is a draft; what failed or is overdue. */
export function PolicySaid({ said }: { readonly said: SaidOfSource }): ReactNode {
  return (
    <aside className="policy-said" aria-label="About this policy">
      {keyed(said.warnings).map(({ key, line }) => (
        <p key={key} className="policy-warning">
          <strong>About this policy: </strong>
          {line}
        </p>
      ))}
      {said.says !== null && <p>{said.says}</p>}
    </aside>
  );
}
