import { useId, type ReactNode } from 'react';
import { fromField, toField } from '../common/clock.ts';
import { ProtocolChoice } from '../common/protocol-choice.tsx';
import { RoomHeading } from '../common/room-name.tsx';
import type { SiteProtocol } from '../common/site-protocol.ts';
import { TypedLine } from '../common/typed-field.tsx';
import { idleMinutes } from './use-idle.ts';

interface Props {
  readonly protocol: SiteProtocol;
  readonly protocols: readonly SiteProtocol[];
  readonly bed: string;
  readonly takenAt: string | null;
  readonly onChoose: (id: string) => void;
  readonly onBed: (bed: string) => void;
  readonly onTakenAt: (at: string | null) => void;
  readonly onNewPatient: () => void;
}

/** The head of the room: what it is for, what is read with, for which bed, when, and a clean start. */
export function RoomHead(props: Props): ReactNode {
  const { protocol, protocols, bed, takenAt, onChoose, onBed, onTakenAt, onNewPatient } = props;
  const id = useId();
  return (
    <header className="head">
      <RoomHeading
        room="bedside"
        protocol={protocol.id}
        purpose="Enter a set of observations; read what your ward’s protocol makes of it."
      />
      <div className="head-fields">
        <ProtocolChoice label="Read with" chosen={protocol.id} protocols={protocols} onChoose={onChoose} />
        <div className="head-field head-bed">
          <label htmlFor={`${id}-bed`}>Bed label</label>
          <TypedLine
            id={`${id}-bed`}
            className="text-input"
            autoComplete="off"
            maxLength={40}
            placeholder="no names"
            value={bed}
            onType={onBed}
          />
        </div>
        <div className="head-field head-time">
          <label htmlFor={`${id}-at`}>Set taken at</label>
          <input
            id={`${id}-at`}
            className="text-input"
            type="datetime-local"
            value={takenAt === null ? '' : toField(takenAt)}
            onChange={(event) => onTakenAt(fromField(event.target.value))}
          />
        </div>
        <button type="button" className="button button-strong new-patient" onClick={onNewPatient}>
          New patient
        </button>
      </div>
      <p className="nothing-kept">
        {`Nothing is kept: what you enter stays in this page and is gone when you close it, press New patient, or leave it untouched for ${idleMinutes} minutes. Leave names out.`}
      </p>
    </header>
  );
}
