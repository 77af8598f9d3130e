import type { Remark } from './bounds.ts';
import { rangeAsText, stepsAsText, withUnit } from './given-words.ts';
import { spanFor, type Span } from './ranges.ts';
import { whyOutside } from './outside.ts';
import { clashInWords, type End } from './sentences.ts';
import type { BeyondDevice, ObservedNumber } from './series.ts';
import type { ReadObservation } from './read-observation.ts';
import type { Slot } from './slot.ts';

/** Works out what a slot counts as: its range or choices, or that it is refused, and what is to be said of it. */
export function checkSlot(slot: Slot, read: ReadObservation, age: Span | null): void {
  slot.taken = slot.refused = slot.questioned = slot.asRead = slot.faults = null;
  slot.unobtainable = slot.said.some(({ kind }) => kind === 'unobtainable');
  const [first, second] = slot.said;
  if (!first || second) {
    clash(slot, read);
    return;
  }
  switch (first.kind) {
    case 'unobtainable':
    case 'declined':
      slot.state = first.kind;
      return;
    case 'choice':
      slot.state = 'value';
      slot.picked = [position(first.choice, read)];
      return;
    case 'several':
      slot.state = 'value';
      slot.picked = first.choices.map((choice) => position(choice, read));
      return;
    case 'number':
    case 'above_device':
    case 'below_device':
      checkNumber(slot, first, read, age);
  }
}

function position(choice: string, read: ReadObservation): number {
  const index = read.choices.get(choice);
  if (index === undefined) throw new RangeError(`${read.name} has no choice ${choice}`);
  return index;
}

function clash(slot: Slot, read: ReadObservation): void {
  slot.state = 'refused';
  const texts = slot.said.map(({ given }) => given.text);
  const because = clashInWords(read.entry.title, texts);
  slot.refused = texts.map((given) => ({ observation: read.name, given, because }));
}

function checkNumber(
  slot: Slot,
  said: ObservedNumber | BeyondDevice,
  read: ReadObservation,
  age: Span | null,
): void {
  if (!read.possible) throw new RangeError(`${read.name} is not a number`);
  const possible = spanFor(read.possible, age);
  const ends = endsOf(said);
  slot.low = (said.kind === 'number' ? said.low : endAbove(said)) ?? possible.low;
  slot.high = (said.kind === 'number' ? said.high : endBelow(said)) ?? possible.high;
  slot.refused = outside(ends, read, 'possible', age, said.given.text);
  slot.state = slot.refused ? 'refused' : 'value';
  if (slot.refused) return;
  slot.questioned = outside(ends, read, 'plausible', age, said.given.text);
  if (said.given.moved) {
    slot.taken = { observation: read.name, given: said.given.text, as: takenAs(said, read) };
  }
}

/** The lowest step above a device's bound; null for one below. */
const endAbove = ({ kind, bound }: BeyondDevice): number | null =>
  kind === 'above_device' ? bound + 1 : null;
/** The highest step below a device's bound; null for one above. */
const endBelow = ({ kind, bound }: BeyondDevice): number | null =>
  kind === 'below_device' ? bound - 1 : null;

/** The ends that were said: one that reaches to the end of the possible range was not. */
function endsOf(said: ObservedNumber | BeyondDevice): readonly End[] {
  if (said.kind !== 'number') {
    return said.kind === 'above_device'
      ? [{ which: 'above', steps: said.bound + 1 }]
      : [{ which: 'below', steps: said.bound - 1 }];
  }
  const { low, high, value } = said;
  if (low !== null && low === high) return [{ which: 'value', steps: low }];
  const ends: End[] = [];
  if (low !== null) ends.push({ which: low === value ? 'value' : 'low', steps: low });
  if (high !== null) ends.push({ which: high === value ? 'value' : 'high', steps: high });
  return ends;
}

function outside(
  ends: readonly End[],
  read: ReadObservation,
  which: 'possible' | 'plausible',
  age: Span | null,
  given: string,
): Remark[] | null {
  let remarks: Remark[] | null = null;
  for (const end of ends) {
    const because = whyOutside(end, read, which, age);
    if (because !== null) (remarks ??= []).push({ observation: read.name, given, because });
  }
  return remarks;
}

/** How a moved value is used, in the words of `taken`. */
function takenAs(said: ObservedNumber | BeyondDevice, { entry }: ReadObservation): string {
  const text = (steps: number): string => stepsAsText(steps, entry);
  const unit = entry.unit?.ucum ?? null;
  if (said.kind !== 'number') {
    return withUnit(`${said.kind === 'above_device' ? 'above' : 'below'} ${text(said.bound)}`, unit);
  }
  const { value } = said;
  const end = (steps: number | null): string | null =>
    steps === null || steps === value ? null : text(steps);
  return withUnit(rangeAsText(value === null ? null : text(value), end(said.low), end(said.high)), unit);
}
