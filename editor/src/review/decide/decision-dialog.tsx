import { useEffect, useRef, type ReactNode, type SyntheticEvent } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { keyed } from '../../common/keyed.ts';
import type { FieldProblem } from './send.ts';

interface Props {
  readonly title: string;
  /** What will happen, a sentence each: read before the button is pressed. */
  readonly happens: readonly string[];
  /** What the button does. */
  readonly does: string;
  readonly isBusy: boolean;
  readonly busy: string;
  readonly problems: readonly FieldProblem[];
  /** The fields that tell what is wrong with them by themselves. */
  readonly fields: readonly string[];
  readonly onSend: () => void;
  readonly onClose: () => void;
  readonly children: ReactNode;
}

/** The frame of a dialog in which something is decided. Closing it decides nothing, and forgets nothing that was typed. */
export function DecisionDialog(props: Props): ReactNode {
  const { title, happens, does, isBusy, busy, problems, fields, onSend, onClose, children } = props;
  const form = useRef<HTMLFormElement>(null);
  const others = problems.filter(({ field }) => field === null || !fields.includes(field));
  useEffect(() => {
    if (problems.length > 0) form.current?.querySelector<HTMLElement>('[aria-invalid=true]')?.focus();
  }, [problems]);
  const send = (event: SyntheticEvent): void => {
    event.preventDefault();
    if (!isBusy) onSend();
  };
  return (
    <ModalOverlay className="overlay" isOpen onOpenChange={(isOpen) => !isOpen && !isBusy && onClose()}>
      <Modal className="modal decide-modal">
        <Dialog className="dialog">
          <Heading slot="title">{title}</Heading>
          <form ref={form} className="decide-form" onSubmit={send} noValidate>
            {children}
            <section className="decide-happens" aria-label="What will happen">
              <h3>What will happen</h3>
              <ul className="plain">
                {keyed(happens).map(({ key, line }) => (
                  <li key={key}>{line}</li>
                ))}
              </ul>
            </section>
            <div role="alert" className="decide-alert">
              {problems.length > 0 && (
                <p className="decide-wrong">
                  {[
                    ...others.map(({ says }) => says),
                    ...(others.length < problems.length
                      ? ['Nothing was entered: what is wrong stands below the fields above.']
                      : []),
                  ].join(' ')}
                </p>
              )}
            </div>
            <div className="dialog-end">
              {isBusy && <p role="status">{busy}</p>}
              <Button className="button" onPress={onClose} isDisabled={isBusy}>
                Not now
              </Button>
              <Button className="button button-strong" type="submit" isDisabled={isBusy}>
                {does}
              </Button>
            </div>
          </form>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
