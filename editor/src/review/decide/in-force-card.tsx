import type { ReactNode } from 'react';
import type { SiteRecord } from '../../../../src/index.ts';
import { keyed } from '../../common/keyed.ts';
import type { SiteProtocol } from '../../common/site-protocol.ts';
import { shortDigest } from './words.ts';

interface Props {
  readonly protocol: SiteProtocol;
  readonly record: SiteRecord;
  /** The button that withdraws; null where nothing can be decided. */
  readonly children: ReactNode;
}

/** What patients are read with now, since when and by whom; what begins and ends later. */
export function InForceCard({ protocol, record, children }: Props): ReactNode {
  const { in_force: put, withdrawn, planned, ends } = record;
  const warnings = protocol.in_force?.kind === 'policy' ? protocol.in_force.warnings : [];
  return (
    <section className="panel decide-now" aria-labelledby="decide-now" data-state={put ? 'in_force' : 'none'}>
      <h2 id="decide-now">In force now</h2>
      {put && (
        <>
          <p className="decide-now-edition">{`Edition ${put.edition}`}</p>
          <dl className="decide-facts">
            <Fact name="Since" says={put.since} />
            <Fact name="Put in force by" says={put.by} />
            <Fact name="Why" says={put.because} />
            <Fact name="Digest" says={shortDigest(put.digest)} />
          </dl>
        </>
      )}
      {!put && <p className="decide-now-edition">Nothing. The paper policy applies.</p>}
      {withdrawn && (
        <dl className="decide-facts">
          <Fact name="Withdrawn since" says={withdrawn.since} />
          <Fact name="By" says={withdrawn.by} />
          <Fact name="Why" says={withdrawn.because} />
          <Fact name="Instead" says={withdrawn.instead} />
        </dl>
      )}
      {keyed(warnings).map(({ key, line }) => (
        <p key={key} className="decide-warn">
          {line}
        </p>
      ))}
      {planned.map((each) => (
        <p key={`${each.edition} ${each.from}`}>
          {`Edition ${each.edition} begins at ${each.since}, put in force by ${each.by}.`}
        </p>
      ))}
      {ends && <p>{`It ends at ${ends.since}: withdrawn by ${ends.by}. Instead: ${ends.instead}`}</p>}
      {children}
    </section>
  );
}

function Fact({ name, says }: { readonly name: string; readonly says: string }): ReactNode {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{says}</dd>
    </div>
  );
}
