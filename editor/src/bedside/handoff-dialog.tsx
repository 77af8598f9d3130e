import { useEffect, useId, useState, type ReactNode } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { blanks, blanksLeft, handoffText, type Background, type SaidOfSource } from '../../../src/index.ts';
import type { PageReading } from './messages.ts';
import { TypedLines } from '../common/typed-field.tsx';
import { sentence } from '../common/sentence.ts';

interface Props {
  readonly reading: PageReading;
  readonly background: Background;
  /** What is to be said of what was read with. */
  readonly said: SaidOfSource;
  readonly onFill: (change: Partial<Background>) => void;
  readonly onClose: () => void;
}

const keys = Object.keys(blanks) as (keyof Background)[];

/** The handoff: what only a person knows is filled in beside the text, which looks unfinished until it is. */
export function HandoffDialog({ reading, background, said, onFill, onClose }: Props): ReactNode {
  const id = useId();
  const [copied, setCopied] = useState('');
  const text = handoffText(reading.sheet, reading.facts, background, said);
  const left = blanksLeft(background);
  useEffect(() => {
    document.body.dataset['print'] = 'handoff';
    return () => {
      delete document.body.dataset['print'];
    };
  }, []);
  const copy = (): void => {
    navigator.clipboard.writeText(text).then(
      () => setCopied('Copied. It now also stands in the clipboard of this machine.'),
      () => setCopied('The browser does not let this page copy; mark the text and copy it.'),
    );
  };
  return (
    <ModalOverlay className="overlay" isOpen isDismissable onOpenChange={(isOpen) => !isOpen && onClose()}>
      <Modal className="modal">
        <Dialog className="dialog handoff">
          <Heading slot="title">Handoff</Heading>
          <div className="handoff-sides">
            <div className="handoff-blanks">
              {keys.map((key) => (
                <div key={key}>
                  <label htmlFor={`${id}-${key}`}>{sentence(blanks[key])}</label>
                  <TypedLines
                    id={`${id}-${key}`}
                    className="text-input"
                    rows={key === 'caller' || key === 'bed' ? 1 : 2}
                    autoComplete="off"
                    value={background[key]}
                    onType={(typed) => onFill({ [key]: typed })}
                  />
                </div>
              ))}
            </div>
            <div className="handoff-text" role="region" aria-label="The text of the handoff" tabIndex={0}>
              <HandoffText text={text} />
            </div>
          </div>
          <div className="dialog-end">
            <p role="status" className={left > 0 ? 'unfinished-note' : 'hint'}>
              {copied !== ''
                ? copied
                : left > 0
                  ? `Unfinished: ${left} to fill in`
                  : 'Nothing is left to fill in.'}
            </p>
            <Button className="button" onPress={copy}>
              Copy
            </Button>
            <Button className="button" onPress={() => print()}>
              Print
            </Button>
            <Button className="button button-strong" onPress={onClose}>
              Close
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

/** The text, with blanks and headings marked by more than their words. */
function HandoffText({ text }: { readonly text: string }): ReactNode {
  const lines = text
    .trimEnd()
    .split('\n')
    .map((line, index) => ({ line, key: `${index} ${line}` }));
  return (
    <>
      {lines.map(({ line, key }) => (
        <p key={key} className={classOf(line)}>
          {line.split(/(\[TO FILL IN: [^\]]*\])/).map((part) =>
            part.startsWith('[TO FILL IN:') ? (
              <span key={part} className="blank">
                {part}
              </span>
            ) : (
              part
            ),
          )}
        </p>
      ))}
    </>
  );
}

function classOf(line: string): string {
  if (line.startsWith('UNFINISHED') || line.startsWith('ABOUT THIS POLICY')) return 'unfinished';
  if (/^[A-Z]+$/.test(line)) return 'handoff-heading';
  return line.startsWith('- ') ? 'handoff-item' : 'handoff-line';
}
