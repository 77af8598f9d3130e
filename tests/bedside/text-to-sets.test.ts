import { expect, test } from 'vitest';
import { textToSets } from '../../src/bedside/text-to-sets.ts';
import { bundled } from '../bundled.ts';

const protocol = bundled('pressure_reading');
const at = (day: string | null, clock: string): string | null =>
  /^\d\d:\d\d$/.test(clock) ? `${day ?? '2026-03-04'}T${clock}:00Z` : null;
const read = (text: string): ReturnType<typeof textToSets> => textToSets('table', text, protocol, at);
const codes = (text: string): string[] => read(text).problems.map(({ code }) => code);
const mmHg = (value: number): object => ({ value, unit: 'mm[Hg]' });

test('columns may be called as people call them, with the unit beside the name or the value', () => {
  const { sets, problems } = read('Time,BP,HR,Temp (°F),AVPU\n08:00,128/74,78 /min,98.1,alert\n');
  expect(problems).toEqual([]);
  expect(sets).toEqual([
    {
      at: '2026-03-04T08:00:00Z',
      systolic: mmHg(128),
      diastolic: mmHg(74),
      heart_rate: { value: 78, unit: '/min' },
      temperature: { value: 98.1, unit: '[degF]' },
      consciousness: 'alert',
    },
  ]);
});

test('tabs and semicolons separate too, then with decimal commas; quotation marks hold a separator', () => {
  expect(read('date\ttime\tsys\n2026-03-03\t22:00\t118').sets).toEqual([
    { at: '2026-03-03T22:00:00Z', systolic: mmHg(118) },
  ]);
  expect(read('time;temp\n08:00;36,7').sets[0]?.['temperature']).toEqual({ value: 36.7, unit: 'Cel' });
  expect(read('time,sats\n08:00,"not obtained: cold, blue fingers"').sets[0]?.['oxygen_saturation']).toEqual({
    unobtainable: 'cold, blue fingers',
  });
});

test('an empty cell is not taken; unobtainable and declined are kept apart', () => {
  const { sets } = read('time,sys,hr,rr,temp\n08:00,,-,declined,not obtained');
  expect(sets).toEqual([
    { at: '2026-03-04T08:00:00Z', respiratory_rate: { declined: true }, temperature: { unobtainable: true } },
  ]);
});

test('a time with its offset is kept as it is', () => {
  expect(read('time,sys\n2026-03-04T08:00:00+05:45,118').sets[0]?.at).toBe('2026-03-04T08:00:00+05:45');
});

test.each([
  ['', ['table_empty']],
  ['time,sys', ['table_empty']],
  ['sys\n118', ['table_without_time']],
  ['time,hart rate\n08:00,78', ['table_unknown_column']],
  ['time,sys,systolic\n08:00,118,118', ['table_column_twice']],
  ['time,sys (kg)\n08:00,118', ['table_unknown_unit']],
  ['time,sys\n08:00,118,9', ['table_more_cells']],
  ['time,sys\n08:00,"118', ['table_quote_open']],
  ['time,sys\nnoon,118', ['table_time']],
  ['time,sys\n08:00,high', ['table_number']],
  ['time,sys\n08:00,118 kg', ['table_number']],
  ['time,avpu\n08:00,sleepy', ['table_choice']],
  ['time,sys,hart rate\nnoon,high,78', ['table_unknown_column', 'table_time', 'table_number']],
])('%j has %j, and gives no sets', (text, expected) => {
  expect(codes(text)).toEqual(expected);
  expect(read(text).sets).toEqual([]);
});

test('a problem names its line, and the near miss of a column', () => {
  const [problem] = read('time,sys\n08:00,118\n12:00,high').problems;
  expect(problem?.line).toBe(3);
  expect(read('time,hart rate\n08:00,78').problems[0]?.near_miss).toBe('heart_rate');
});
