import { useEffect, useId, useState, type ReactNode } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import type { Form } from '../../../../../src/index.ts';
import { keyed } from '../../../common/keyed.ts';
import { ask } from '../../ask.ts';
import type { CaseDraft, GivenSet, GivenValue } from '../../messages.ts';
import { GivenRow } from './given-row.tsx';
import { usable } from './usable.ts';
import { observedToGiven } from './observed-to-given.ts';

/** What a case is begun with. */
export type CaseStart =
  | { readonly from: 'hand' }
  | { readonly from: 'map'; readonly given: GivenSet }
  /** A series from the bedside, as JSON. */
  | { readonly from: 'bedside'; readonly observed: string };

interface Props {
  readonly start: CaseStart;
  readonly onAdd: (yaml: string) => void;
  readonly onClose: () => void;
}

/** A case by hand: what is observed, then what the protocol says of it, for the author to confirm. */
export function NewCaseDialog({ start, onAdd, onClose }: Props): ReactNode {
  const [form, setForm] = useState<Form | null>(null);
  const [given, setGiven] = useState<GivenSet>(start.from === 'map' ? start.given : {});
  useEffect(() => {
    ask<'form'>({ kind: 'form' }).then(
      ({ form: found }) => {
        setForm(found);
        if (found && start.from === 'bedside') setGiven(observedToGiven(start.observed, fieldsOf(found)));
      },
      () => undefined,
    );
  }, [start]);
  return (
    <ModalOverlay className="overlay" isOpen isDismissable onOpenChange={(isOpen) => !isOpen && onClose()}>
      <Modal className="modal">
        <Dialog className="dialog new-case">
          <Heading slot="title">New case</Heading>
          {start.from === 'bedside' && (
            <p className="note">
              These values come from the Bedside room. A case is written into a file that others read: if they
              are those of a real patient, close this now.
            </p>
          )}
          {form === null ? (
            <p>Mend the problems of the protocol first: a case is written against what it says.</p>
          ) : (
            <NewCase form={form} given={given} onGiven={setGiven} onAdd={onAdd} onClose={onClose} />
          )}
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

const fieldsOf = ({ needs, helps, patient }: Form): Form['patient'] => [
  ...patient,
  ...[...needs, ...helps].flatMap(({ fields }) => fields),
];

interface NewCaseProps {
  readonly form: Form;
  readonly given: GivenSet;
  readonly onGiven: (given: GivenSet) => void;
  readonly onAdd: (yaml: string) => void;
  readonly onClose: () => void;
}

function NewCase({ form, given, onGiven, onAdd, onClose }: NewCaseProps): ReactNode {
  const id = useId();
  const [name, setName] = useState('');
  const [says, setSays] = useState<string | null>(null);
  const draft = useDraft(name.trim(), given);
  const give = (observation: string, value: GivenValue | null): void => {
    const others = Object.entries(given).filter(([each]) => each !== observation);
    onGiven(Object.fromEntries(value ? [...others, [observation, value]] : others));
  };
  const add = (): void => {
    if (name.trim() === '') setSays('A case needs its story in a few words: they are its name.');
    else if (draft?.yaml !== null && draft) onAdd(draft.yaml);
  };
  return (
    <>
      <div className="form-row">
        <label htmlFor={`${id}-name`}>The story of a made-up patient, in a few words</label>
        <input
          id={`${id}-name`}
          className="text-input"
          autoComplete="off"
          placeholder="Second day after bowel surgery, quiet and flushed"
          value={name}
          onChange={(event) => setName(event.target.value)}
        />
      </div>
      <div className="new-case-sides">
        <div className="given-rows" role="group" aria-label="What is observed">
          {fieldsOf(form).map((field) => (
            <GivenRow
              key={field.name}
              field={field}
              value={given[field.name]}
              onGive={(value) => give(field.name, value)}
            />
          ))}
        </div>
        <DraftSays draft={draft} />
      </div>
      {says !== null && (
        <p role="alert" className="form-says">
          {says}
        </p>
      )}
      <div className="dialog-end">
        <Button className="button" onPress={onClose}>
          Not now
        </Button>
        <Button
          className="button button-strong"
          isDisabled={draft === null || draft.yaml === null}
          onPress={add}
        >
          This is right: add the case
        </Button>
      </div>
    </>
  );
}

const nothingYet: CaseDraft = {
  problems: [],
  heading: null,
  couldBe: null,
  why: [],
  refused: [],
  yaml: null,
};

/** What the protocol says now, which the case will expect. */
function DraftSays({ draft }: { readonly draft: CaseDraft | null }): ReactNode {
  const { heading, couldBe, yaml, problems, refused, why } = draft ?? nothingYet;
  return (
    <section className="draft-says" aria-label="What the protocol says" aria-live="polite">
      <h3>What the protocol says now</h3>
      {heading !== null && (
        <p className="case-outcome">
          <strong>{heading}</strong>
        </p>
      )}
      {couldBe !== null && <p>{couldBe}</p>}
      <ul className="plain">
        {keyed([...problems, ...refused, ...why]).map(({ key, line }) => (
          <li key={key}>{line}</li>
        ))}
      </ul>
      <p className="hint">
        The case will expect exactly this. Add it only if this is what your council wants; what it ought to
        say instead can be changed in the text afterwards.
      </p>
      {yaml !== null && (
        <pre className="draft-yaml" tabIndex={0} aria-label="The case as it will be written">
          {yaml}
        </pre>
      )}
    </section>
  );
}

function useDraft(name: string, given: GivenSet): CaseDraft | null {
  const [draft, setDraft] = useState<CaseDraft | null>(null);
  useEffect(() => {
    let isWanted = true;
    ask<'draft'>({ kind: 'draft', name, given: usable(given) }).then(
      (found) => isWanted && setDraft(found),
      () => isWanted && setDraft(null),
    );
    return () => {
      isWanted = false;
    };
  }, [name, given]);
  return draft;
}
