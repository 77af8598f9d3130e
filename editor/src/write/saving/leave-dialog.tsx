import type { ReactNode } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';

interface Props {
  readonly files: string;
  /** Whether it can be saved where it came from. */
  readonly saves: boolean;
  readonly keepsDraft: boolean;
  readonly onSave: () => void;
  readonly onLeave: () => void;
  readonly onStay: () => void;
}

/** Asked before somebody leaves what is not saved. */
export function LeaveDialog({ files, saves, keepsDraft, onSave, onLeave, onStay }: Props): ReactNode {
  return (
    <ModalOverlay className="overlay" isOpen isDismissable onOpenChange={(isOpen) => !isOpen && onStay()}>
      <Modal className="modal modal-small">
        <Dialog className="dialog" role="alertdialog">
          <Heading slot="title">Leave without saving?</Heading>
          <p>{`Not saved yet: ${files}.`}</p>
          <p>
            {keepsDraft
              ? 'If you leave, it stays in this browser as a draft, and is here when you come back. The other rooms go on with the text on disk.'
              : 'This browser keeps no draft: if you close the page, what is not saved is lost.'}
          </p>
          <div className="dialog-end">
            <Button className="button" onPress={onLeave}>
              Leave it as a draft
            </Button>
            {saves && (
              <Button className="button" onPress={onSave}>
                Save and leave
              </Button>
            )}
            <Button className="button button-strong" onPress={onStay} autoFocus>
              Stay here
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
