/** A published line for a wide or a narrow gap. The works disagree, so none of them is ever the one true number. */
interface GapLine {
  readonly id: string;
  readonly calls: 'wide' | 'narrow';
  /** Whether the work calls this pair so. */
  readonly holds: (systolic: number, gap: number) => boolean;
  readonly says: string;
  readonly source: string;
  /** Set while nobody has looked the line up in the work itself. */
  readonly from_memory?: true;
}

const pulsePressure =
  'Homan TD, Bordes S, Cichowski E. Physiology, Pulse Pressure. StatPearls, NBK482408';
const familyPractice = 'A family practice notebook page on the pulse pressure';
const dengue =
  'World Health Organization. Dengue: guidelines for diagnosis, treatment, prevention and control. New edition. Geneva: WHO, 2009';

/** What the works say, one line each, strict or not as they print it. */
export const gapLines: readonly GapLine[] = [
  { id: 'pp-normal-statpearls', calls: 'wide', holds: (_, gap) => gap > 100, says: 'above 100 mmHg', source: pulsePressure },
  { id: 'pp-openstax-rule', calls: 'wide', holds: (_, gap) => gap >= 100, says: 'persistently at or above 100 mmHg', source: 'OpenStax. Anatomy and Physiology. Chapter 20.2' },
  { id: 'pp-mcgee', calls: 'wide', holds: (_, gap) => gap >= 80, says: '80 mmHg or more, with the murmur of aortic regurgitation', source: 'McGee S. Evidence-Based Physical Diagnosis. Elsevier. Chapter 17' },
  { id: 'pp-alt-threshold-1', calls: 'wide', holds: (_, gap) => gap > 70, says: 'above 70 mmHg', source: 'An online lesson on aortic regurgitation' },
  { id: 'pp-alt-threshold-2', calls: 'wide', holds: (systolic, gap) => 2 * gap > systolic || gap > 40, says: 'above half of the systolic, or above 40 mmHg', source: 'A clinician\'s page on the pulse pressure' },
  { id: 'pp-alt-threshold-3: wide', calls: 'wide', holds: (_, gap) => gap > 40, says: 'above 40 mmHg', source: familyPractice },
  { id: 'pp-normal-statpearls: narrow', calls: 'narrow', holds: (systolic, gap) => 4 * gap < systolic, says: 'below a quarter of the systolic', source: pulsePressure },
  { id: 'pp-alt-threshold-3: narrow', calls: 'narrow', holds: (_, gap) => gap < 30, says: 'below 30 mmHg', source: familyPractice },
  { id: 'pp-alt-threshold-4', calls: 'narrow', holds: (_, gap) => gap < 20, says: 'below 20 mmHg', source: 'An emergency medicine text on shock of the heart' },
  { id: 'pp-dengue', calls: 'narrow', holds: (_, gap) => gap <= 20, says: '20 mmHg or less, in suspected dengue; other texts print below 20', source: dengue, from_memory: true },
];

/** Pairs on which works disagree, each with the lines that say yes and the lines that say no. */
export const disagreements: readonly {
  readonly systolic: number;
  readonly diastolic: number;
  readonly yes: readonly string[];
  readonly no: readonly string[];
}[] = [
  { systolic: 130, diastolic: 85, yes: ['pp-alt-threshold-2', 'pp-alt-threshold-3: wide'], no: ['pp-normal-statpearls', 'pp-openstax-rule', 'pp-mcgee', 'pp-alt-threshold-1'] },
  { systolic: 150, diastolic: 75, yes: ['pp-alt-threshold-1'], no: ['pp-mcgee'] },
  { systolic: 170, diastolic: 90, yes: ['pp-mcgee'], no: ['pp-openstax-rule'] },
  { systolic: 180, diastolic: 80, yes: ['pp-openstax-rule'], no: ['pp-normal-statpearls'] },
  { systolic: 76, diastolic: 36, yes: ['pp-alt-threshold-2'], no: ['pp-alt-threshold-3: wide'] },
  { systolic: 100, diastolic: 74, yes: ['pp-alt-threshold-3: narrow'], no: ['pp-normal-statpearls: narrow', 'pp-alt-threshold-4', 'pp-dengue'] },
  { systolic: 140, diastolic: 106, yes: ['pp-normal-statpearls: narrow'], no: ['pp-alt-threshold-3: narrow'] },
  { systolic: 76, diastolic: 56, yes: ['pp-dengue'], no: ['pp-alt-threshold-4', 'pp-normal-statpearls: narrow'] },
];
