import type { Span } from '../../problems/place.ts';
import { limits } from '../limits.ts';
import type { TextFaults } from '../text-faults.ts';

const plain = /^-?(?:0|[1-9][0-9]*)(?:[.][0-9]+)?$/;

/**
 * Refuses a number that is not written in plain digits: `0x1F`, `1e3`, `.5` (easily read as 5), `007` (eight in some
 * readings), `.inf`; and one with more digits than are kept exactly.
 */
export function checkNumber(written: string, span: Span, faults: TextFaults): void {
  if (!plain.test(written)) {
    faults.add('number_not_plain', span, { written });
    return;
  }
  const digits = written.replace(/[-.]/g, '').replace(/^0+/, '').length;
  // Very small numbers come back from the computer in another form than they were written in.
  if (digits > limits.digits || String(Number(written)).includes('e')) {
    faults.add('number_too_long', span, { written, most: limits.digits });
  }
}
