import { expect, test } from 'vitest';
import { textToTime } from '../../src/series/text-to-time.ts';

test.each([
  ['1970-01-01T00:00:00Z', 0],
  ['2026-03-02T12:05:00Z', Date.UTC(2026, 2, 2, 12, 5)],
  ['2026-03-02T12:05:00+00:00', Date.UTC(2026, 2, 2, 12, 5)],
  ['2026-03-02T12:05:00-00:00', Date.UTC(2026, 2, 2, 12, 5)],
  ['2026-03-02T17:50:00+05:45', Date.UTC(2026, 2, 2, 12, 5)],
  ['2026-03-02T02:35:00-09:30', Date.UTC(2026, 2, 2, 12, 5)],
  ['2026-03-01T00:15:00+01:00', Date.UTC(2026, 1, 28, 23, 15)],
  ['2026-12-31T23:59:59.999-01:00', Date.UTC(2027, 0, 1, 0, 59, 59, 999)],
  ['2024-02-29T08:00:00.5Z', Date.UTC(2024, 1, 29, 8, 0, 0, 500)],
  ['2000-02-29T08:00:00.050Z', Date.UTC(2000, 1, 29, 8, 0, 0, 50)],
  ['1969-12-31T23:59:59.001z', -999],
  ['1600-03-01t00:00:00z', Date.UTC(1600, 2, 1)],
])('%s is a time', (text, expected) => {
  expect(textToTime(text)).toBe(expected);
});

test.each([
  ['2026-03-02', 'unreadable'],
  ['2026-03-02T12:05Z', 'unreadable'],
  ['2026-03-02 12:05:00Z', 'unreadable'],
  ['2026-3-2T12:05:00Z', 'unreadable'],
  ['2026-03-02T12:05:00+0545', 'unreadable'],
  ['2026-03-02T12:05:00.Z', 'unreadable'],
  ['2026-03-02T12:05:00Z\n', 'unreadable'],
  ['yesterday', 'unreadable'],
  ['2026-03-02T12:05:00', 'without_offset'],
  ['2026-03-02T12:05:00.1234Z', 'too_fine'],
  ['2026-02-30T08:00:00Z', 'impossible'],
  ['2026-02-29T08:00:00Z', 'impossible'],
  ['1900-02-29T08:00:00Z', 'impossible'],
  ['2026-04-31T08:00:00Z', 'impossible'],
  ['2026-00-10T08:00:00Z', 'impossible'],
  ['2026-13-10T08:00:00Z', 'impossible'],
  ['2026-03-00T08:00:00Z', 'impossible'],
  ['2026-03-02T24:00:00Z', 'impossible'],
  ['2026-03-02T12:60:00Z', 'impossible'],
  ['2026-03-02T12:05:61Z', 'impossible'],
  ['2026-03-02T12:05:00+24:00', 'impossible'],
  ['2026-03-02T12:05:00+05:60', 'impossible'],
  ['2016-12-31T23:59:60Z', 'leap_second'],
])('%s is none: %s', (text, fault) => {
  expect(textToTime(text)).toBe(fault);
});

test('every day of four hundred years is a day later than the one before', () => {
  const two = (part: number): string => String(part).padStart(2, '0');
  const times: number[] = [];
  for (let year = 1900; year < 2300; year += 1) {
    for (let month = 1; month <= 12; month += 1) {
      for (let day = 1; day <= 31; day += 1) {
        const time = textToTime(`${year}-${two(month)}-${two(day)}T00:00:00Z`);
        if (typeof time === 'number') times.push(time);
      }
    }
  }
  expect(times).toHaveLength(146_097);
  expect(times.filter((time, index) => time !== Date.UTC(1900, 0, 1 + index))).toEqual([]);
});
