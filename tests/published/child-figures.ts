/** The age and the systolic below which it is too low, as printed. */
interface FloorFigure {
  readonly id: string;
  /** As in a set: the unit is a UCUM code. */
  readonly age: { readonly value: number; readonly unit: 'd' | 'mo' | 'a' };
  readonly floor: number;
  readonly source: string;
}

const source =
  'American Heart Association. Pediatric Advanced Life Support Provider Manual. Hypotension by age; in children of 1 to 10 years below 70 + 2 x age in years, the fifth centile';

export const childFloors: readonly FloorFigure[] = [
  { id: 'pals-term: on the day of birth', age: { value: 0, unit: 'd' }, floor: 60, source },
  { id: 'pals-term: 28 days', age: { value: 28, unit: 'd' }, floor: 60, source },
  { id: 'pals-infant: 1 month', age: { value: 1, unit: 'mo' }, floor: 70, source },
  { id: 'pals-infant: 11 months', age: { value: 11, unit: 'mo' }, floor: 70, source },
  ...[72, 74, 76, 78, 80, 82, 84, 86, 88, 90].map((floor, index): FloorFigure => ({
    id: `pals-age-${index + 1}`,
    age: { value: index + 1, unit: 'a' },
    floor,
    source,
  })),
  { id: 'pals-over: 11 years', age: { value: 11, unit: 'a' }, floor: 90, source },
  { id: 'pals-over: 15 years', age: { value: 15, unit: 'a' }, floor: 90, source },
];
