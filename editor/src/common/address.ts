/** The rooms, in the order in which they are named. */
export const rooms = ['bedside', 'write', 'teach', 'review'] as const;

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
  /** What is compared with what, the older first: the number of a sealed edition, or `draft`. Null: what the room takes by itself. */
  readonly sides: readonly [string, string] | null;
  /** A part of a room that has several; null: its first. */
  readonly part: string | null;
}

const start: Address = {
  room: 'bedside',
  protocol: null,
  case: null,
  axes: null,
  sides: null,
  part: null,
};

/**
 * `#/write/lessons/a_curve?axes=systolic,diastolic` is the protocol `lessons/a_curve` in the Write room, with its map. What cannot be
 * read leads to the start.
 */
export function readAddress(hash: string): Address {
  const found = /^#\/([a-z]+)(?:\/([a-z0-9_]+(?:\/[a-z0-9_]+)*))?(?:\?(.*))?$/.exec(hash);
  const room = rooms.find((each) => each === found?.[1]);
  if (!found || !room) return start;
  const more = new URLSearchParams(found[3] ?? '');
  return {
    room,
    protocol: found[2] ?? null,
    case: more.get('case'),
    axes: two(/^([a-z0-9_]+),([a-z0-9_]+)$/.exec(more.get('axes') ?? '')),
    sides: two(/^(draft|[1-9][0-9]{0,3}),(draft|[1-9][0-9]{0,3})$/.exec(more.get('sides') ?? '')),
    part: /^[a-z_]+$/.exec(more.get('part') ?? '')?.[0] ?? null,
  };
}

const two = (found: RegExpExecArray | null): readonly [string, string] | null => {
  const [, first, second] = found ?? [];
  return first !== undefined && second !== undefined ? [first, second] : null;
};

export function writeAddress({ room, protocol, case: name, axes, sides, part }: Address): string {
  const more = new URLSearchParams();
  if (name !== null) more.set('case', name);
  if (axes) more.set('axes', axes.join(','));
  if (sides) more.set('sides', sides.join(','));
  if (part !== null) more.set('part', part);
  const query = more.size > 0 ? `?${more.toString().replaceAll('%2C', ',')}` : '';
  return `#/${room}${protocol === null ? '' : `/${protocol}`}${query}`;
}

/** The start of another room, with the same protocol. */
export const addressOf = (room: RoomName, protocol: string | null): string =>
  writeAddress({ ...start, room, protocol });
