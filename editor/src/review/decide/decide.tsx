import { useState, type ReactNode } from 'react';
import { rolesInWords, type SiteRecord } from '../../../../src/index.ts';
import { keyed } from '../../common/keyed.ts';
import type { RoomProps } from '../../common/room.ts';
import type { SiteProtocol } from '../../common/site-protocol.ts';
import { EditionsTable } from './editions-table.tsx';
import { InForceCard } from './in-force-card.tsx';
import { OpenDialog, type DialogName } from './open-dialog.tsx';
import { RecordList } from './record-list.tsx';
import { Step } from './step.tsx';
import './decide.css';

type Props = Pick<RoomProps, 'protocol' | 'site' | 'onSaved'>;

/**
 * What is in force, how far each edition has come, the record, and the dialogs in which is decided. All of it is told by the server, which
 * is asked again after each decision.
 */
export function Decide({ protocol, site, onSaved }: Props): ReactNode {
  const [opened, setOpened] = useState<DialogName | null>(null);
  const [said, setSaid] = useState('');
  const record = protocol.record ?? null;
  const done = (says: string): void => {
    setOpened(null);
    setSaid(says);
    onSaved();
  };
  const open = (name: DialogName): void => {
    setSaid('');
    setOpened(name);
  };
  const canDecide = site.saves && (record === null || record.holds);
  return (
    <div className="decide">
      <p role="status" className="decide-said">
        {said}
      </p>
      {record && !record.holds && <DoesNotHold problems={record.problems} />}
      {!site.saves && <p className="decide-warn">{onFiles}</p>}
      {record?.holds && protocol.kind === 'ward' && (
        <InForceCard protocol={protocol} record={record}>
          {canDecide && <Withdrawal record={record} onOpen={() => open('withdraw')} />}
        </InForceCard>
      )}
      <section className="panel" aria-labelledby="decide-editions">
        <h2 id="decide-editions">Editions</h2>
        <EditionsTable protocol={protocol} record={record} />
        {canDecide && <Steps protocol={protocol} record={record} onOpen={open} />}
        {record?.approvers ? (
          <p className="hint">
            {`Asked for each edition: ${rolesInWords(record.approvers.needs)}, none of whom wrote it.${record.approvers.signing ? ' Every entry is signed.' : ''}`}
          </p>
        ) : (
          <p className="decide-open">{nobody}</p>
        )}
      </section>
      {record?.holds && <RecordList entries={record.entries} />}
      <OpenDialog
        opened={opened}
        protocol={protocol}
        onDone={done}
        onRefused={onSaved}
        onClose={() => setOpened(null)}
      />
    </div>
  );
}

const onFiles =
  'These rooms are files: what is shown here is the record as it was when they were made, and nothing can be decided. Decide where the rooms are served from the folder of the policy.';

const nobody =
  'Nobody is entered who may approve. Write the people and roles into approvers.yaml beside it, and have the council enter them with “vitalwright approvers”; an edition that is sealed after that can be approved.';

function DoesNotHold({ problems }: { readonly problems: readonly string[] }): ReactNode {
  return (
    <section className="decide-warn" role="alert">
      <h2>The record does not hold</h2>
      <p>
        Nothing can be decided, and nothing that this record says can be relied on. Tell whoever keeps the
        policy.
      </p>
      <ul className="plain">
        {keyed(problems).map(({ key, line }) => (
          <li key={key}>{line}</li>
        ))}
      </ul>
    </section>
  );
}

interface StepsProps {
  readonly protocol: SiteProtocol;
  readonly record: SiteRecord | null;
  readonly onOpen: (name: DialogName) => void;
}

/** The steps of an edition, in their order; of one that cannot be taken now it is said why. */
function Steps({ protocol, record, onOpen }: StepsProps): ReactNode {
  const sound = record?.editions.filter(({ kind }) => kind !== null) ?? [];
  const isAnyOpen = sound.some((each) => !each.is_approved);
  const isAnyApproved = sound.some((each) => each.is_approved);
  const whyNoApproval = !record?.approvers
    ? 'nobody is entered who may approve'
    : 'no sealed edition waits for an approval';
  return (
    <ol className="decide-steps">
      <Step does="Seal the draft…" why={null} onOpen={() => onOpen('seal')} />
      <Step
        does="Approve…"
        why={record?.approvers && isAnyOpen ? null : whyNoApproval}
        onOpen={() => onOpen('approve')}
      />
      {protocol.kind === 'ward' && (
        <Step
          does="Put in force…"
          why={isAnyApproved ? null : 'no edition has all approvals that it needs'}
          onOpen={() => onOpen('put_in_force')}
        />
      )}
    </ol>
  );
}

interface WithdrawalProps {
  readonly record: SiteRecord;
  readonly onOpen: () => void;
}

function Withdrawal({ record, onOpen }: WithdrawalProps): ReactNode {
  if (!record.in_force && record.planned.length === 0) return null;
  return <Step does="Withdraw…" why={null} onOpen={onOpen} as="p" />;
}
