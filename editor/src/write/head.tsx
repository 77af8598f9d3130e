import { useId, type ReactNode } from 'react';
import { RoomHeading } from '../common/room-name.tsx';
import type { RoomProps } from '../common/room.ts';
import type { OpenDesk } from './desk/use-desk.ts';

interface Props extends RoomProps {
  readonly open: OpenDesk;
  readonly onSave: () => void;
}

/** The head of the room: what it is for, what is written, and saving. */
export function Head({ protocol, protocols, onGo, open, onSave }: Props): ReactNode {
  const id = useId();
  const { unsaved } = open.state;
  return (
    <header className="head">
      <RoomHeading
        room="write"
        protocol={protocol.id}
        purpose="Write a protocol, and see at once what its cases make of it."
      />
      <div className="head-fields">
        <div className="head-field head-protocol">
          <label htmlFor={`${id}-protocol`}>Write</label>
          <select
            id={`${id}-protocol`}
            value={protocol.id}
            onChange={(event) => onGo({ protocol: event.target.value, case: null, axes: null })}
          >
            {protocols.map((each) => (
              <option key={each.id} value={each.id}>
                {each.title}
              </option>
            ))}
          </select>
        </div>
        <button type="button" className="button">
          New protocol
        </button>
        <button
          type="button"
          className="button button-strong"
          disabled={unsaved.length === 0}
          onClick={onSave}
        >
          Save
        </button>
      </div>
    </header>
  );
}
