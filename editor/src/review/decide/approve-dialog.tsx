import type { ReactNode } from 'react';
import { withOffset } from '../../common/clock.ts';
import { DecisionDialog } from './decision-dialog.tsx';
import { editionNamed, noEdition, peopleOf, type DialogProps } from './dialog-props.ts';
import { ChoiceField, KeyField, TextField } from './fields.tsx';
import { useDecision } from './use-decision.ts';
import { shortDigest } from './words.ts';

const fields = ['by', 'role', 'minute', 'on', 'edition', 'key', 'jws'];

/** One named person approves one sealed edition, in one role, by one minute. */
export function ApproveDialog(props: DialogProps): ReactNode {
  const { protocol, record, approvers, typed, onType, onClose } = props;
  const { problems, isSending, setKeyFile, send } = useDecision(props);
  const open = record.editions.filter(({ kind, is_approved: isApproved }) => kind !== null && !isApproved);
  const edition = typed['edition'] ?? String(open.at(-1)?.edition ?? '');
  const roles = approvers.people.find(({ name }) => name === typed['by'])?.roles ?? [];
  const role = typed['role'] ?? (roles.length === 1 ? (roles[0] ?? '') : '');
  const { by = '', minute = '' } = typed;
  const on = typed['on'] ?? withOffset(new Date()).slice(0, 10);
  const named = editionNamed(protocol, edition);
  const says = record.editions.find((each) => String(each.edition) === edition)?.says ?? '';
  return (
    <DecisionDialog
      title="Approve an edition"
      does="Approve it"
      busy="Entering the approval…"
      isBusy={isSending}
      problems={problems}
      fields={fields}
      onClose={onClose}
      onSend={() =>
        void send(named ? [] : [noEdition], {
          what: 'approve',
          id: protocol.id,
          head: record.head,
          edition: named,
          typed: { by, role, minute, on },
        })
      }
      happens={[
        `For good, the record says that ${by || 'the one named above'} approved edition ${edition || '…'}${named ? ` (${shortDigest(named.digest)})` : ''}.`,
        says,
        'Nothing comes into force by it: that is a step of its own.',
      ]}
    >
      <ChoiceField
        name="edition"
        label="Sealed edition"
        none="Choose the edition"
        value={edition}
        options={open.map((each) => ({
          value: String(each.edition),
          says: `Edition ${each.edition}`,
        }))}
        problems={problems}
        onChoose={(chosen) => onType({ edition: chosen })}
      />
      <ChoiceField
        name="by"
        label="Who approves"
        none="Choose a name"
        value={by}
        options={peopleOf(approvers)}
        problems={problems}
        onChoose={(chosen) => onType({ by: chosen })}
      />
      <ChoiceField
        name="role"
        label="In which role"
        none={by === '' ? 'Choose the name first' : 'Choose the role'}
        value={role}
        options={roles.map((each) => ({ value: each, says: each }))}
        problems={problems}
        onChoose={(chosen) => onType({ role: chosen })}
      />
      <TextField
        name="minute"
        label="Where the decision stands in the minutes"
        value={minute}
        problems={problems}
        onType={(text) => onType({ minute: text })}
      />
      <TextField
        name="on"
        label="Day of the decision"
        type="date"
        value={on}
        problems={problems}
        onType={(text) => onType({ on: text })}
      />
      {approvers.signing && <KeyField problems={problems} onFile={setKeyFile} />}
    </DecisionDialog>
  );
}
