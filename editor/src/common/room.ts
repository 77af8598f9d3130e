import type { Address } from './address.ts';
import type { SiteProtocol } from './site-protocol.ts';

/** What every room is given by the frame around it. */
export interface RoomProps {
  readonly address: Address;
  /** The one that is open: what the address says, else the first. */
  readonly protocol: SiteProtocol;
  readonly protocols: readonly SiteProtocol[];
  /** Goes elsewhere: what is not told stays as it is. */
  readonly onGo: (to: Partial<Address>) => void;
}
