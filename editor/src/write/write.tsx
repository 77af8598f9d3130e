import type { ReactNode } from 'react';
import type { RoomProps } from '../common/room.ts';
import { writtenProtocol } from './desk/written-protocol.ts';
import { Room } from './room.tsx';
import './write.css';

/** The room of the council and the educator: write a protocol, and see at once what its cases make of it. */
export function Write(props: RoomProps): ReactNode {
  const protocol = writtenProtocol(props);
  return <Room key={protocol.id} {...props} protocol={protocol} />;
}
