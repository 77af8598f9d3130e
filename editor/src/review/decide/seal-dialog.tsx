import { useState, type ReactNode } from 'react';
import { keyed } from '../../common/keyed.ts';
import { digestOf } from '../../common/save.ts';
import type { SiteProtocol } from '../../common/site-protocol.ts';
import { DecisionDialog } from './decision-dialog.tsx';
import { TextField } from './fields.tsx';
import { seal, type FieldProblem, type SealSent } from './send.ts';
import type { Typing } from './use-decision.ts';
import { draftEdition, namesOn } from './words.ts';

interface Props extends Typing {
  readonly protocol: SiteProtocol;
  readonly onSealed: (says: string) => void;
  readonly onClose: () => void;
}

const fields = ['authors'];

/** The draft that stands on the disk is sealed as its edition, when everything holds that must. */
export function SealDialog({ protocol, typed, onType, onSealed, onClose }: Props): ReactNode {
  const [isSending, setSending] = useState(false);
  const [problems, setProblems] = useState<readonly FieldProblem[]>([]);
  const [came, setCame] = useState<SealSent | null>(null);
  const { authors = '' } = typed;
  const number = draftEdition(protocol);
  const send = async (): Promise<void> => {
    const names = namesOn(authors);
    setCame(null);
    if (protocol.record?.approvers && names.length === 0) {
      setProblems([{ field: 'authors', says: 'Still to be given: who wrote it.' }]);
      return;
    }
    setProblems([]);
    setSending(true);
    const sent = await seal(protocol.id, digestOf(protocol.text), names);
    setSending(false);
    if (sent.isSealed) onSealed(sent.says);
    else setCame(sent);
  };
  return (
    <DecisionDialog
      title={number === null ? 'Seal the draft' : `Seal the draft as edition ${number}`}
      does="Seal it"
      busy="Asking everything that must hold. It can take minutes; the other rooms go on."
      isBusy={isSending}
      problems={problems}
      fields={fields}
      onClose={onClose}
      onSend={() => void send()}
      happens={[
        'What stands on the disk is asked everything: its shape and meaning, every case, its review date, what must always hold, its small changes.',
        `Only if all of it holds, it becomes edition ${number ?? '…'}, which is never changed again.`,
        'Nothing comes into force by it, and nobody has approved it yet.',
      ]}
    >
      <TextField
        name="authors"
        label="Who wrote it"
        hint="A name on each line. Whoever wrote it cannot approve it."
        rows={2}
        value={authors}
        problems={problems}
        onType={(text) => onType({ authors: text })}
      />
      {came && <Came {...came} />}
    </DecisionDialog>
  );
}

/** Why it was not sealed, after what does hold. */
function Came({ holds, says }: SealSent): ReactNode {
  return (
    <section className="decide-came" role="alert" aria-label="Why it was not sealed">
      <h3>It was not sealed</h3>
      {holds.length > 0 && (
        <ul className="plain">
          {keyed(holds).map(({ key, line }) => (
            <li key={key}>{line}</li>
          ))}
        </ul>
      )}
      <pre>{says}</pre>
    </section>
  );
}
