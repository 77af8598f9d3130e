import type { ReactNode } from 'react';
import type { ChangesHere } from './changes-here.ts';

/** The stories of the council that come out otherwise. */
export function CaseChanges({ cases, casesRead }: Pick<ChangesHere, 'cases' | 'casesRead'>): ReactNode {
  return (
    <section className="panel">
      <h3>{`Cases: ${cases.length} of ${casesRead} come out otherwise`}</h3>
      <ul className="plain case-changes">
        {cases.map(({ name, before, after, rules }) => (
          <li key={name}>
            <strong>{name}</strong>
            {before === after ? `: ${after}, as before` : `: ${before} before, ${after} now`}
            {rules.length > 0 && <span className="hint">{` (${rules.join('; ')})`}</span>}
          </li>
        ))}
      </ul>
    </section>
  );
}
