import type { ReactNode } from 'react';
import { DecisionDialog } from './decision-dialog.tsx';
import { editionNamed, noEdition, peopleOf, type DialogProps } from './dialog-props.ts';
import { ChoiceField, KeyField, TextField } from './fields.tsx';
import { useDecision } from './use-decision.ts';
import { chosenFrom, fromInWords, noTime, WhenFields } from './when-fields.tsx';
import { shortDigest } from './words.ts';

const fields = ['by', 'because', 'from', 'edition', 'key', 'jws'];

/** An approved edition of a ward policy is put in force, at once or from a time on. */
export function PutDialog(props: DialogProps): ReactNode {
  const { protocol, record, approvers, typed, onType, onClose } = props;
  const { problems, isSending, setKeyFile, send } = useDecision(props);
  const approved = record.editions.filter((each) => each.kind === 'ward' && each.is_approved);
  const edition = typed['edition'] ?? String(approved.at(-1)?.edition ?? '');
  const { by = '', because = '' } = typed;
  const from = chosenFrom(typed);
  const named = editionNamed(protocol, edition);
  // A time that is not there is refused, and never taken for "at once".
  const lacking = [...(named ? [] : [noEdition]), ...(from === null ? [noTime] : [])];
  return (
    <DecisionDialog
      title="Put an edition in force"
      does="Put it in force"
      busy="Entering it…"
      isBusy={isSending}
      problems={problems}
      fields={fields}
      onClose={onClose}
      onSend={() =>
        void send(lacking, {
          what: 'put_in_force',
          id: protocol.id,
          head: record.head,
          edition: named,
          typed: { by, because, from: from ?? '' },
        })
      }
      happens={[
        `${fromInWords(typed)}, patients are read with edition ${edition || '…'}${named ? ` (${shortDigest(named.digest)})` : ''}.`,
        record.in_force
          ? `Edition ${record.in_force.edition}, in force since ${record.in_force.since}, then no longer is.`
          : 'Nothing is in force now.',
        'Rooms that are open elsewhere read with it once they are loaded anew.',
      ]}
    >
      <ChoiceField
        name="edition"
        label="Approved edition"
        none="Choose the edition"
        value={edition}
        options={approved.map((each) => ({ value: String(each.edition), says: `Edition ${each.edition}` }))}
        problems={problems}
        onChoose={(chosen) => onType({ edition: chosen })}
      />
      <WhenFields typed={typed} onType={onType} problems={problems} />
      <ChoiceField
        name="by"
        label="Who puts it in force"
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
      {approvers.signing && <KeyField problems={problems} onFile={setKeyFile} />}
    </DecisionDialog>
  );
}
