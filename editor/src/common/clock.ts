const two = (part: number): string => String(part).padStart(2, '0');

/** A moment as RFC 3339 writes it, with the offset of this machine: `2026-03-02T17:50:00+05:45`. */
export function withOffset(moment: Date): string {
  const minutes = -moment.getTimezoneOffset();
  const offset = `${minutes < 0 ? '-' : '+'}${two(Math.floor(Math.abs(minutes) / 60))}:${two(Math.abs(minutes) % 60)}`;
  return `${dayOf(moment)}T${two(moment.getHours())}:${two(moment.getMinutes())}:${two(moment.getSeconds())}${offset}`;
}

const dayOf = (moment: Date): string =>
  `${moment.getFullYear()}-${two(moment.getMonth() + 1)}-${two(moment.getDate())}`;

/** What a field for a day and a time holds (`2026-03-02T17:50`), with the offset of this machine; null when it is none. */
export function fromField(text: string): string | null {
  const moment = new Date(text);
  return text === '' || Number.isNaN(moment.getTime()) ? null : withOffset(moment);
}

/** The other way round, to the minute. */
export const toField = (at: string): string => at.slice(0, 16);

/** A clock time alone is the latest such time that is not after a moment: at 02:00, `23:30` was yesterday. */
export function localTime(day: string | null, clock: string, before: string): string | null {
  const time = clock.padStart(clock.split(':')[0]?.length === 1 ? clock.length + 1 : clock.length, '0');
  const latest = new Date(before);
  const at = new Date(`${day ?? dayOf(latest)}T${time}`);
  if (Number.isNaN(at.getTime())) return null;
  if (day === null && at > latest) at.setDate(at.getDate() - 1);
  return withOffset(at);
}
