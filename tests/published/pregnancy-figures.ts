interface SeverityFigure {
  readonly id: string;
  readonly systolic: number;
  readonly diastolic: number;
  readonly severe: boolean;
  readonly source: string;
}

const emergentTherapy =
  'American College of Obstetricians and Gynecologists. Committee Opinion 767. Obstet Gynecol 2019;133:e174-80';

/** Pairs on both sides of the published line: systolic 160 or more, or diastolic 110 or more. */
export const severityFigures: readonly SeverityFigure[] = [
  { id: 'acog-159-109', systolic: 159, diastolic: 109, severe: false, source: emergentTherapy },
  { id: 'acog-160-100', systolic: 160, diastolic: 100, severe: true, source: emergentTherapy },
  { id: 'acog-150-110', systolic: 150, diastolic: 110, severe: true, source: emergentTherapy },
];

/** Minutes: a severe pressure that persists so long is confirmed; treatment comes within the two others. */
export const severeMinutes = { persisting: 15, treatFrom: 30, treatBy: 60, source: emergentTherapy } as const;
