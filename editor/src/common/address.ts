/** What an address says: the room, and the protocol by its id. Nothing that was observed is ever in it. */
export interface Address {
  readonly room: 'bedside';
  readonly protocol: string | null;
}

/** `#/bedside/lessons/a_curve` is the protocol `lessons/a_curve` in the Bedside room. */
export function readAddress(hash: string): Address {
  const [, protocol] = /^#\/bedside\/([a-z0-9_]+(?:\/[a-z0-9_]+)*)$/.exec(hash) ?? [];
  return { room: 'bedside', protocol: protocol ?? null };
}

export const writeAddress = ({ room, protocol }: Address): string =>
  `#/${room}${protocol === null ? '' : `/${protocol}`}`;
