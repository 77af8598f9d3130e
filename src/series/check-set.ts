import { checkSlot } from './check-slot.ts';
import { withUnit } from './given-words.ts';
import type { Span } from './ranges.ts';
import { inWords } from './sentences.ts';
import type { Pair, Reader } from './reader.ts';
import type { SetAt, Slot } from './slot.ts';

/**
 * Checks the values of one instant: what is impossible at this age is refused, then what contradicts; what is
 * implausible is questioned. The age itself is checked before, as the others depend on it.
 */
export function checkSet(set: SetAt, reader: Reader, age: Span | null): void {
  for (const read of reader.observations) {
    const slot = set.slots[read.index];
    if (slot && read !== reader.age) checkSlot(slot, read, age);
  }
  refuseContradictions(set, reader);
  set.remarked = set.slots.some((slot) => slot && (slot.taken ?? slot.refused ?? slot.questioned) !== null);
  set.checked = true;
}

/** Whether no pair of values inside the two ranges could be right. */
export function contradicts({ scale, factor, shift, mayBeEqual }: Pair, lower: Span, higher: Span): boolean {
  const [left, right] = [scale * lower.low, factor * higher.high + shift];
  return mayBeEqual ? left > right : left >= right;
}

/** All pairs are looked at before any is refused, so that their order means nothing. */
function refuseContradictions(set: SetAt, reader: Reader): void {
  let found: { slot: Slot; name: string; because: string }[] | null = null;
  for (const pair of reader.contradictions) {
    const lower = set.slots[pair.lower.index];
    const higher = set.slots[pair.higher.index];
    if (lower?.state !== 'value' || higher?.state !== 'value' || !contradicts(pair, lower, higher)) continue;
    const because = contradictionInWords(pair, lower, higher);
    (found ??= []).push({ slot: lower, name: pair.lower.name, because });
    found.push({ slot: higher, name: pair.higher.name, because });
  }
  for (const { slot, name, because } of found ?? []) {
    slot.state = 'refused';
    slot.taken = slot.questioned = null;
    (slot.refused ??= []).push({ observation: name, given: slot.said[0]?.given.text ?? '', because });
  }
}

/**
 * `The diastolic is never as high as the systolic: diastolic 110 mmHg, systolic 104 mmHg; both are refused
 * and count as missing`.
 */
function contradictionInWords({ says, lower, higher }: Pair, low: Span, high: Span): string {
  const shown = ({ entry }: Pair['lower'], value: Span): string => {
    const words =
      value.low === value.high
        ? inWords(value.low, entry)
        : rangeInWords(inWords(value.low, entry), inWords(value.high, entry));
    return withUnit(`${entry.title} ${words}`, null);
  };
  const numbers = `${shown(lower, low)}, ${shown(higher, high)}`;
  return `${says.replace(/\.\s*$/, '')}: ${numbers}; both are refused and count as missing`;
}

const rangeInWords = (low: string, high: string): string => `${low} to ${high}`;
