/**
 * A time as it is read out: `2026-03-02 08:00 UTC` for `2026-03-02T08:00:00Z`, `2026-03-02 08:00:30 +05:45` for one with seconds.
 * What is no such time stays as it is.
 */
export function timeInWords(text: string): string {
  const [, day, minutes, seconds, zone] =
    /^([0-9]{4}-[0-9]{2}-[0-9]{2})[Tt ]([0-9]{2}:[0-9]{2})(:[0-9]{2}(?:\.[0-9]+)?)?([Zz]|[+-][0-9]{2}:[0-9]{2})$/.exec(
      text,
    ) ?? [];
  if (day === undefined || minutes === undefined || zone === undefined) return text;
  const rest = /^:00(\.0+)?$/.test(seconds ?? ':00') ? '' : seconds;
  return `${day} ${minutes}${rest} ${zone.toUpperCase() === 'Z' ? 'UTC' : zone}`;
}

/** A length of time: `4 h`, `90 min`, `7 d`. */
export function durationInWords(milliseconds: number): string {
  const units: readonly (readonly [string, number])[] = [
    ['d', 86_400_000],
    ['h', 3_600_000],
    ['min', 60_000],
  ];
  for (const [word, length] of units) {
    const count = milliseconds / length;
    if (Number.isInteger(count) && (word !== 'd' || count >= 2)) return `${count} ${word}`;
  }
  return `${milliseconds / 1000} s`;
}
