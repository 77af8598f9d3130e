/** The parts of the room, in the order in which a reviewer goes through them. */
export const parts = [
  { name: 'changes', title: 'Changes' },
  { name: 'map', title: 'Map' },
  { name: 'must_hold', title: 'Must hold' },
  { name: 'loose_ends', title: 'Loose ends' },
  { name: 'papers', title: 'Papers' },
  { name: 'decide', title: 'Decide' },
] as const;

export type PartName = (typeof parts)[number]['name'];

/** The part that an address names; the first one where it names none. */
export const partNamed = (name: string | null): PartName =>
  parts.find((part) => part.name === name)?.name ?? 'changes';
