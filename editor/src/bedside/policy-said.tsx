import type { ReactNode } from 'react';
import { keyed } from '../common/keyed.ts';
import type { SiteProtocol } from '../common/site-protocol.ts';

/** What must be said of a policy that is in force: since when, and what failed or is overdue, before anybody acts on it. */
export function PolicySaid({ protocol }: { readonly protocol: SiteProtocol }): ReactNode {
  const { in_force: inForce } = protocol;
  if (inForce?.kind !== 'policy') return null;
  const warnings = keyed(inForce.warnings);
  return (
    <aside className="policy-said" aria-label="About this policy">
      {warnings.map(({ key, line }) => (
        <p key={key} className="policy-warning">
          <strong>About this policy: </strong>
          {line}
        </p>
      ))}
      <p>{inForce.says}</p>
    </aside>
  );
}
