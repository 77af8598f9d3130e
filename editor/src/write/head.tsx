import type { ReactNode } from 'react';
import { ProtocolChoice } from '../common/protocol-choice.tsx';
import { RoomHeading } from '../common/room-name.tsx';
import type { RoomProps } from '../common/room.ts';
import { draftIds, readDraft } from './desk/drafts.ts';
import type { OpenDesk } from './desk/use-desk.ts';
import { titleIn } from './desk/written-protocol.ts';
import { fileOf, type Part } from './parts.ts';
import type { Saving } from './saving/use-saving.ts';

interface Props extends RoomProps {
  readonly open: OpenDesk;
  readonly saving: Saving;
  readonly part: Part;
  /** What else is to be told. */
  readonly said: string;
  readonly onSave: () => void;
  readonly onNew: () => void;
}

/** The head of the room: what it is for, what is written, and saving. */
export function Head(props: Props): ReactNode {
  const { protocol, protocols, site, onGo, open, saving, part, said, onSave, onNew } = props;
  const { unsaved } = open.state;
  const notYetThere = draftIds()
    .filter((each) => protocols.every((other) => other.id !== each))
    .map((id) => ({
      id,
      title: `${titleIn(readDraft(id)?.texts.protocol ?? '') ?? id} (a draft in this browser)`,
    }));
  return (
    <header className="head">
      <RoomHeading
        room="write"
        protocol={protocol.id}
        purpose="Write a protocol, and see at once what its cases make of it."
      />
      <div className="head-fields">
        <ProtocolChoice
          label="Write"
          chosen={protocol.id}
          protocols={[...protocols, ...notYetThere]}
          onChoose={(id) => onGo({ protocol: id, case: null, axes: null })}
        />
        <button type="button" className="button" onClick={onNew}>
          New protocol
        </button>
        <button
          type="button"
          className="button button-strong"
          disabled={site.saves && (unsaved.length === 0 || saving.isSaving)}
          onClick={onSave}
        >
          {site.saves ? 'Save' : `Download ${fileOf(part, protocol.kind)}`}
        </button>
      </div>
      <p className="save-state" role="status">
        {`${stateInWords(props)} ${saving.said} ${said}`.trim()}
      </p>
    </header>
  );
}

/** How things stand between the texts here and those on disk. */
function stateInWords({ open, site, protocol }: Props): string {
  const { state, verdict, desk } = open;
  const files = state.unsaved.map((part) => fileOf(part, protocol.kind)).join(' and ');
  if (files === '') return '';
  const isNew = desk.onDisk.protocol === null;
  const where = site.saves
    ? isNew
      ? 'Saving makes its folder.'
      : ''
    : 'Nothing can be saved where these rooms came from: download the file, and put it in its folder.';
  const draft = state.keepsDraft
    ? 'This browser keeps it as a draft.'
    : 'This browser keeps no draft: what is not saved is lost when the page is closed.';
  const usable =
    verdict.checked?.usable === false
      ? 'It has problems: it can be saved as a draft, and nobody can read with it until they are mended.'
      : '';
  return [`Not saved: ${files}.`, draft, where, usable].filter((each) => each !== '').join(' ');
}
