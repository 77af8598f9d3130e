import type { GivenSet, GivenValue } from '../../messages.ts';

const number = /^-?\d{1,9}(?:\.\d{1,6})?$/;

/** Whether a value is half-typed, or no number at all. */
export const isNoNumber = (value: GivenValue | undefined): boolean =>
  value?.kind === 'number' && !number.test(value.text);

/** What can be read of a set; what is no number is left out, and its field says so. */
export const usable = (given: GivenSet): GivenSet =>
  Object.fromEntries(Object.entries(given).filter(([, value]) => !isNoNumber(value)));
