import type { ReactNode } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';

interface Props {
  readonly answers: number;
  readonly onKeep: () => void;
  readonly onWipe: () => void;
}

/** Asks before the results are gone. Escape keeps them. */
export function WipeDialog({ answers, onKeep, onWipe }: Props): ReactNode {
  return (
    <ModalOverlay className="overlay" isOpen isDismissable onOpenChange={(isOpen) => !isOpen && onKeep()}>
      <Modal className="modal modal-small">
        <Dialog className="dialog" role="alertdialog">
          <Heading slot="title">Wipe the results?</Heading>
          <p>
            {answers === 1
              ? 'The one answer is then gone from this browser. It cannot be brought back.'
              : `All ${answers} answers, of every protocol, are then gone from this browser. They cannot be brought back.`}
          </p>
          <div className="dialog-end">
            <Button className="button" onPress={onWipe}>
              Wipe them
            </Button>
            <Button className="button button-strong" autoFocus onPress={onKeep}>
              Keep them
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
