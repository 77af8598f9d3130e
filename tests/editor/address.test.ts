import { expect, test } from 'vitest';
import { readAddress, writeAddress, type Address } from '../../editor/src/common/address.ts';

const start = { room: 'bedside', protocol: null, case: null, axes: null };

test('an address is a room, a protocol, a case and the axes of a map', () => {
  const addresses: Address[] = [
    { room: 'bedside', protocol: 'lessons/a_curve', case: null, axes: null },
    { room: 'write', protocol: 'pressure_reading', case: null, axes: ['systolic', 'diastolic'] },
    { room: 'teach', protocol: 'a_ward', case: 'Second day, 50 % & “quiet”?', axes: null },
    { room: 'teach', protocol: null, case: 'Alone', axes: ['heart_rate', 'systolic'] },
  ];
  for (const address of addresses) expect(readAddress(writeAddress(address))).toEqual(address);
});

test('what cannot be read leads to the start', () => {
  for (const hash of ['', '#/bedside/', '#/bedside/../x', '#/elsewhere', '#/write/A?x', '#/constructor']) {
    expect(readAddress(hash)).toEqual(start);
  }
});

test('of axes that are none, and of anything else, nothing is read', () => {
  expect(readAddress('#/write/x?axes=one&systolic=104')).toEqual({ ...start, room: 'write', protocol: 'x' });
});
