import { useId, useState, type ReactNode } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';

interface Props {
  readonly hasEarlier: boolean;
  readonly onMake: () => void;
  readonly onClose: () => void;
}

/** Asked before a set leaves this room for the Write room: a case is kept in a file, and no real patient belongs into one. */
export function MakeCaseDialog({ hasEarlier, onMake, onClose }: Props): ReactNode {
  const id = useId();
  const [isInvented, setInvented] = useState(false);
  return (
    <ModalOverlay className="overlay" isOpen isDismissable onOpenChange={(isOpen) => !isOpen && onClose()}>
      <Modal className="modal modal-small">
        <Dialog className="dialog">
          <Heading slot="title">Make a case of this set</Heading>
          <p>
            A case is written into a file that others read, for a patient who is made up. What was observed of
            a real patient does not belong there, not even without a name.
          </p>
          <p className="hint">
            {`The values of this set and what is known of the patient go to the Write room, inside this page. Bed label, times, names and the handoff stay here${hasEarlier ? '; so do the earlier sets' : ''}.`}
          </p>
          <p className="tick">
            <input
              id={id}
              type="checkbox"
              checked={isInvented}
              onChange={(event) => setInvented(event.target.checked)}
            />
            <label htmlFor={id}>These values are made up, not those of a real patient.</label>
          </p>
          <div className="dialog-end">
            <Button className="button" onPress={onClose}>
              Not now
            </Button>
            <Button className="button button-strong" isDisabled={!isInvented} onPress={onMake}>
              Go on in the Write room
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}
