import { mergeObserved } from './merge-observed.ts';
import type { GivenSet, Observed } from './series.ts';
import type { Reader } from './reader.ts';
import type { SetAt, Slot } from './slot.ts';

const nothing: readonly number[] = [];

/** An instant at which nothing has been said yet. */
export function emptySet(given: GivenSet, reader: Reader): SetAt {
  const slots: (Slot | undefined)[] = [];
  for (let index = 0; index < reader.observations.length; index += 1) slots.push(undefined);
  const { at, atText: text } = given;
  return {
    time: at ?? 0,
    at,
    text,
    slots,
    foreign: null,
    age: null,
    sureAge: null,
    doubts: new Map(),
    checked: false,
    remarked: false,
  };
}

/**
 * Adds what a set says to what has been said at its instant, in whatever order. Names that are not read go to
 * `unused`.
 */
export function addTo(set: SetAt, given: GivenSet, reader: Reader, unused: Set<string>): void {
  set.checked = false;
  if (given.atText !== null && (set.text === null || given.atText < set.text)) set.text = given.atText;
  for (const [name, observed] of given.observed) {
    const read = reader.byName.get(name);
    if (!read) {
      unused.add(name);
      addForeign(set, name, observed, reader);
      continue;
    }
    const slot = set.slots[read.index];
    if (slot) slot.said = mergeObserved(slot.said, observed);
    else set.slots[read.index] = newSlot(observed);
  }
}

/** A slot that has not been checked. */
function newSlot(observed: Observed): Slot {
  return {
    said: [observed],
    state: 'refused',
    low: 0,
    high: 0,
    asRead: null,
    faults: null,
    picked: nothing,
    unobtainable: false,
    taken: null,
    refused: null,
    questioned: null,
  };
}

function addForeign(set: SetAt, name: string, observed: Observed, reader: Reader): void {
  const group = reader.foreignGroups.get(name);
  if (group === undefined) return;
  const byValue = observed.kind !== 'unobtainable' && observed.kind !== 'declined';
  (set.foreign ??= []).push({ group, byValue });
}

/** Whether the set says anything of a group: a value, that there is none, or something that was refused. */
export function saysAnything(set: SetAt, group: number, reader: Reader): boolean {
  const members = reader.groups[group] ?? [];
  return (
    members.some(({ index }) => set.slots[index] !== undefined) ||
    (set.foreign?.some((each) => each.group === group) ?? false)
  );
}

/** Whether the set gives a value, a range or a device's bound of a group. */
export function givesValue(set: SetAt, group: number, reader: Reader): boolean {
  const members = reader.groups[group] ?? [];
  return (
    members.some(({ index }) => set.slots[index]?.state === 'value') ||
    (set.foreign?.some((each) => each.group === group && each.byValue) ?? false)
  );
}
