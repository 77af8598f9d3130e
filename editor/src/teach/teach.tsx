import type { ReactNode } from 'react';
import { RoomHeading } from '../common/room-name.tsx';
import type { RoomProps } from '../common/room.ts';

export function Teach({ protocol }: RoomProps): ReactNode {
  return (
    <header className="head">
      <RoomHeading
        room="teach"
        protocol={protocol.id}
        purpose="Practise on a protocol’s cases, set by set, or print them to teach with."
      />
    </header>
  );
}
