import type { Path } from '../problems/place.ts';
import { nearMiss } from '../vocabulary/near-miss.ts';
import { numberNamed, numbers } from './names.ts';
import type { Operand } from './protocol.ts';
import { readQuantity } from './read-quantity.ts';
import type { Reading } from './reading.ts';

/** What is written where a number is expected: a number with or without its unit, or a name. Null, and reported, when neither. */
export function readOperand(
  written: number | string,
  path: Path,
  { names, report }: Reading,
): Operand | null {
  if (typeof written === 'number' || !/^[a-z]/.test(written)) {
    const read = readQuantity(written, path, report);
    return read && { kind: 'number', value: read.value, unit: read.unit };
  }
  const named = numberNamed(names, written);
  if (named) return named;
  if (names.unreadable.has(written)) return null;
  if (names.declared.get(written)?.kind === 'number') {
    report('observation_not_listed', path, { name: written });
  } else {
    const near = (): string | null => nearMiss(written, numbers(names));
    report('unknown_number', path, { name: written }, { nearMiss: near });
  }
  return null;
}
