import type { ReactNode } from 'react';
import type { SiteEntry } from '../../../../src/index.ts';
import { keyed } from '../../common/keyed.ts';

/** Every entry of the record, the latest first. Entries are never changed and never taken away. */
export function RecordList({ entries }: { readonly entries: readonly SiteEntry[] }): ReactNode {
  return (
    <section className="panel" aria-labelledby="decide-record">
      <h2 id="decide-record">
        Record
        <span className="count">{`${entries.length} ${entries.length === 1 ? 'entry' : 'entries'}, the latest first`}</span>
      </h2>
      <ol className="decide-record">
        {entries.toReversed().map(({ entry, at, says, reasons, signed_by: signedBy }) => (
          <li key={entry}>
            <p className="decide-record-head">
              <span className="decide-number">{entry}</span>
              <span className="hint">{at}</span>
            </p>
            <p>{says}</p>
            {keyed(reasons).map(({ key, line }) => (
              <p key={key} className="decide-reason">
                {line}
              </p>
            ))}
            {signedBy.length > 0 && <p className="hint">{`Signed by ${signedBy.join(', ')}.`}</p>}
          </li>
        ))}
      </ol>
    </section>
  );
}
