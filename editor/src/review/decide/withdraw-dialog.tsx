import type { ReactNode } from 'react';
import { DecisionDialog } from './decision-dialog.tsx';
import { peopleOf, type DialogProps } from './dialog-props.ts';
import { ChoiceField, KeyField, TextField } from './fields.tsx';
import { useDecision } from './use-decision.ts';
import { chosenFrom, fromInWords, noTime, WhenFields } from './when-fields.tsx';

const fields = ['by', 'because', 'instead', 'from', 'key', 'jws'];

/** One named person withdraws what is in force, at once, with a reason and what applies instead. */
export function WithdrawDialog(props: DialogProps): ReactNode {
  const { protocol, record, approvers, typed, onType, onClose } = props;
  const { problems, isSending, setKeyFile, send } = useDecision(props);
  const { by = '', because = '', instead = '' } = typed;
  const from = chosenFrom(typed);
  // A time that is not there is refused, and never taken for "at once".
  const lacking = from === null ? [noTime] : [];
  const what = [
    ...(record.in_force ? [`edition ${record.in_force.edition}`] : []),
    ...record.planned.map(({ edition, since }) => `edition ${edition}, which was to begin at ${since}`),
  ];
  return (
    <DecisionDialog
      title="Withdraw the policy"
      does="Withdraw it"
      busy="Withdrawing it…"
      isBusy={isSending}
      problems={problems}
      fields={fields}
      onClose={onClose}
      onSend={() =>
        void send(lacking, {
          what: 'withdraw',
          id: protocol.id,
          head: record.head,
          edition: null,
          typed: { by, because, instead, from: from ?? '' },
        })
      }
      happens={[
        `${fromInWords(typed)}, patients are no longer read with ${what.join(', nor with ') || 'this policy'}.`,
        `The Bedside room then says: No policy in force: use the paper policy. It was withdrawn: ${because || '…'} Instead: ${instead || '…'}`,
        'One person is enough for it. To come back, an edition is put in force again.',
      ]}
    >
      <ChoiceField
        name="by"
        label="Who withdraws it"
        none="Choose a name"
        value={by}
        options={peopleOf(approvers)}
        problems={problems}
        onChoose={(chosen) => onType({ by: chosen })}
      />
      <TextField
        name="because"
        label="Why"
        rows={2}
        value={because}
        problems={problems}
        onType={(text) => onType({ because: text })}
      />
      <TextField
        name="instead"
        label="What applies instead"
        rows={2}
        value={instead}
        problems={problems}
        onType={(text) => onType({ instead: text })}
      />
      <WhenFields typed={typed} onType={onType} problems={problems} />
      {approvers.signing && <KeyField problems={problems} onFile={setKeyFile} />}
    </DecisionDialog>
  );
}
