import { useMemo, type ReactNode } from 'react';
import { Button, Dialog, Heading, Modal, ModalOverlay } from 'react-aria-components';
import { aroundDifferences, differingLines, type ShownLines } from './differing-lines.ts';

interface Props {
  readonly file: string;
  readonly mine: string;
  /** Null: the file is gone. */
  readonly theirs: string | null;
  readonly onKeepMine: () => void;
  readonly onTakeTheirs: () => void;
  readonly onGoOn: () => void;
}

/** Both versions of a file beside each other. Nothing is lost, whatever is chosen here. */
export function ConflictDialog({ file, mine, theirs, onKeepMine, onTakeTheirs, onGoOn }: Props): ReactNode {
  const lines = useMemo(() => aroundDifferences(differingLines(mine, theirs ?? '')), [mine, theirs]);
  return (
    <ModalOverlay className="overlay" isOpen isDismissable onOpenChange={(isOpen) => !isOpen && onGoOn()}>
      <Modal className="modal">
        <Dialog className="dialog">
          <Heading slot="title">{`${file} was changed on disk`}</Heading>
          <p>
            {theirs === null
              ? 'The file that you opened is no longer there. Your text is still in this page and in its draft.'
              : 'Somebody else has saved this file since you opened it. Nothing is saved or lost yet: here are both.'}
          </p>
          {theirs !== null && <BothVersions lines={lines} />}
          <div className="dialog-end">
            <Button className="button" onPress={onGoOn}>
              Go on writing, save nothing
            </Button>
            {theirs !== null && (
              <Button className="button" onPress={onTakeTheirs}>
                Take the one on disk into the field
              </Button>
            )}
            <Button className="button button-strong" onPress={onKeepMine}>
              {theirs === null ? 'Save mine as a new file' : 'Save mine over it'}
            </Button>
          </div>
        </Dialog>
      </Modal>
    </ModalOverlay>
  );
}

function BothVersions({ lines }: { readonly lines: readonly ShownLines[] }): ReactNode {
  return (
    <div className="versions" role="region" aria-label="Both versions" tabIndex={0}>
      <table className="versions-table">
        <thead>
          <tr>
            <th scope="col">Yours</th>
            <th scope="col">On disk</th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line) =>
            'alike' in line ? (
              <tr key={line.key}>
                <td colSpan={2} className="versions-alike">
                  {`${line.alike} ${line.alike === 1 ? 'line' : 'lines'} alike`}
                </td>
              </tr>
            ) : (
              <tr key={line.key} className={line.differs ? 'versions-differ' : undefined}>
                <Version line={line.mine} mark={line.differs ? 'only in yours' : null} />
                <Version line={line.theirs} mark={line.differs ? 'only on disk' : null} />
              </tr>
            ),
          )}
        </tbody>
      </table>
    </div>
  );
}

interface VersionProps {
  readonly line: { readonly number: number; readonly text: string } | null;
  readonly mark: string | null;
}

function Version({ line, mark }: VersionProps): ReactNode {
  if (!line) return <td className="versions-none">no such line</td>;
  return (
    <td>
      <span className="versions-number">{line.number}</span>
      <code>{line.text === '' ? ' ' : line.text}</code>
      {mark !== null && <span className="versions-mark">{mark}</span>}
    </td>
  );
}
