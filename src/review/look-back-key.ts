import type { LookBack } from '../protocol/protocol.ts';

/** The same for look backs that ask the same under the same name, wherever they stand in their files. */
export function lookBackKey(
  name: string,
  { kind, observation, condition, where, over, presentSet, longestGap }: LookBack,
): string {
  const asked = [kind, observation, condition, where, over, presentSet, longestGap].map(withoutPlaces);
  return `look back ${name} ${JSON.stringify(asked)}`;
}

/** A part of a protocol without the places at which it stands, as plain JSON. */
export const withoutPlaces = (part: unknown): unknown =>
  JSON.parse(
    JSON.stringify(part, (key, value: unknown) =>
      key === 'path' ? undefined : typeof value === 'bigint' ? String(value) : value,
    ),
  ) as unknown;
