import type { ReactNode } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';

/** Asks before the room is cleared because nobody touches it. Any touch keeps it. */
export function IdleDialog({
  seconds,
  onClear,
}: {
  readonly seconds: number;
  readonly onClear: () => void;
}): ReactNode {
  return (
    <ModalOverlay className="overlay" isOpen>
      <Modal className="modal modal-small">
        <Dialog className="dialog" role="alertdialog">
          <Heading slot="title">Is anybody here?</Heading>
          <p>{`This page is cleared in ${seconds} seconds, as nobody has touched it. Any key or touch keeps it.`}</p>
          <div className="dialog-end">
            <Button className="button" onPress={onClear}>
              Clear it now
            </Button>
            <Button className="button button-strong" autoFocus>
              Keep it
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
