import type { Address } from './address.ts';
import type { Site, SiteProtocol } from './site-protocol.ts';

/** What every room is given by the frame around it. */
export interface RoomProps {
  readonly address: Address;
  /** The one that is open: what the address says, else the first. */
  readonly protocol: SiteProtocol;
  readonly protocols: readonly SiteProtocol[];
  readonly site: Site;
  /** Goes elsewhere: what is not told stays as it is. */
  readonly onGo: (to: Partial<Address>) => void;
  /** Told when a file was saved, so that every room reads with what now stands on disk. */
  readonly onSaved: () => void;
  /** A set from the bedside that a case is to be made of, as JSON. It is handed on in memory alone. */
  readonly observed: string | null;
  /** Told once the set was taken, or is not wanted. */
  readonly onTaken: () => void;
}
