import type { ReactNode } from 'react';
import { RoomHeading } from '../common/room-name.tsx';
import type { RoomProps } from '../common/room.ts';

export function Write({ protocol }: RoomProps): ReactNode {
  return (
    <header className="head">
      <RoomHeading
        room="write"
        protocol={protocol.id}
        purpose="Write a protocol, and see at once what its cases make of it."
      />
    </header>
  );
}
