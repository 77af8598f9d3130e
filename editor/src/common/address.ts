/** The rooms, in the order in which they are named. */
export const rooms = ['bedside', 'write', 'teach'] as const;

export type RoomName = (typeof rooms)[number];

/** What an address says. Nothing that was observed is ever in it: a case is named by its story, an axis by its observation. */
export interface Address {
  readonly room: RoomName;
  /** A protocol or ward policy by its id; null: the first one. */
  readonly protocol: string | null;
  /** A case by its name. */
  readonly case: string | null;
  /** The observations on the axes of the map: across, then up. */
  readonly axes: readonly [string, string] | null;
}

const start: Address = { room: 'bedside', protocol: null, case: null, axes: null };

/**
 * `#/write/lessons/a_curve?axes=systolic,diastolic` is the protocol `lessons/a_curve` in the Write room, with its map. What cannot be
 * read leads to the start.
 */
export function readAddress(hash: string): Address {
  const found = /^#\/([a-z]+)(?:\/([a-z0-9_]+(?:\/[a-z0-9_]+)*))?(?:\?(.*))?$/.exec(hash);
  const room = rooms.find((each) => each === found?.[1]);
  if (!found || !room) return start;
  const more = new URLSearchParams(found[3] ?? '');
  const [, across, up] = /^([a-z0-9_]+),([a-z0-9_]+)$/.exec(more.get('axes') ?? '') ?? [];
  return {
    room,
    protocol: found[2] ?? null,
    case: more.get('case'),
    axes: across !== undefined && up !== undefined ? [across, up] : null,
  };
}

export function writeAddress({ room, protocol, case: name, axes }: Address): string {
  const more = new URLSearchParams();
  if (name !== null) more.set('case', name);
  if (axes) more.set('axes', axes.join(','));
  const query = more.size > 0 ? `?${more.toString().replaceAll('%2C', ',')}` : '';
  return `#/${room}${protocol === null ? '' : `/${protocol}`}${query}`;
}

/** The start of another room, with the same protocol. */
export const addressOf = (room: RoomName, protocol: string | null): string =>
  writeAddress({ ...start, room, protocol });
