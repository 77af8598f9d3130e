import { expect, test } from 'vitest';
import { readAddress, writeAddress, type Address } from '../../editor/src/common/address.ts';

const start: Address = {
  room: 'bedside',
  protocol: null,
  case: null,
  axes: null,
  sides: null,
  part: null,
};

test('an address is a room, a protocol, a case and the axes of a map', () => {
  const addresses: Address[] = [
    { ...start, protocol: 'lessons/a_curve' },
    { ...start, room: 'write', protocol: 'pressure_reading', axes: ['systolic', 'diastolic'] },
    { ...start, room: 'teach', protocol: 'a_ward', case: 'Second day, 50 % & “quiet”?' },
    { ...start, room: 'teach', case: 'Alone', axes: ['heart_rate', 'systolic'] },
    { ...start, room: 'review', protocol: 'a_ward', sides: ['2', 'draft'], part: 'must_hold' },
  ];
  for (const address of addresses) expect(readAddress(writeAddress(address))).toEqual(address);
});

test('what cannot be read leads to the start', () => {
  for (const hash of ['', '#/bedside/', '#/bedside/../x', '#/elsewhere', '#/write/A?x', '#/constructor']) {
    expect(readAddress(hash)).toEqual(start);
  }
});

test('of axes that are none, and of anything else, nothing is read', () => {
  expect(readAddress('#/review/x?sides=1,now&part=A')).toEqual({ ...start, room: 'review', protocol: 'x' });
  expect(readAddress('#/write/x?axes=one&systolic=104')).toEqual({ ...start, room: 'write', protocol: 'x' });
});
