import type { ReactNode } from 'react';
import { addressOf, rooms, type RoomName } from './address.ts';

const names: Readonly<Record<RoomName, string>> = {
  bedside: 'Bedside',
  write: 'Write',
  teach: 'Teach',
  review: 'Review',
};

interface Props {
  readonly room: RoomName;
  readonly protocol: string;
  /** What the room is for, in one line. */
  readonly purpose: string;
}

/** At the head of every room: which one it is, what it is for, and the way to the others. */
export function RoomHeading({ room, protocol, purpose }: Props): ReactNode {
  return (
    <div className="head-name">
      <span className="brand">Vitalwright</span>
      <nav className="rooms" aria-label="Rooms">
        {rooms.map((each) => (
          <a
            key={each}
            href={addressOf(each, protocol)}
            aria-current={each === room ? 'page' : undefined}
            className="room-link"
          >
            {names[each]}
          </a>
        ))}
      </nav>
      <h1 className="visually-hidden">{names[room]}</h1>
      <p className="purpose">{purpose}</p>
    </div>
  );
}
