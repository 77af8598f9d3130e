import type { Figure } from './figure.ts';

const physiology =
  'OpenStax. Anatomy and Physiology. Chapter 20.2, Blood flow, blood pressure and resistance';
const physicalDiagnosis = 'McGee S. Evidence-Based Physical Diagnosis. Elsevier. Chapter 17, Blood pressure';
const pulsePressure =
  'Homan TD, Bordes S, Cichowski E. Physiology, Pulse Pressure. StatPearls, NBK482408';
const narrowGap =
  'Stevenson LW, Perloff JK. The limited reliability of physical signs for estimating hemodynamics in chronic heart failure. JAMA 1989;261:884-8';

/** Estimated mean pressures as printed. The formula is (S + 2D)/3 as McGee's chapter 17 has it. */
export const meanFigures: readonly Figure[] = [
  { id: 'map-openstax-120-80', inputs: { systolic: 120, diastolic: 80 }, measure: 'mean_estimate', expected: 93.33, tolerance: 0.005, source: physiology },
  { id: 'map-wikilectures-120-80', inputs: { systolic: 120, diastolic: 80 }, measure: 'mean_estimate', expected: 93.3, tolerance: 0.05, source: 'WikiLectures. Mean arterial pressure' },
  { id: 'map-americannurse-83-50', inputs: { systolic: 83, diastolic: 50 }, measure: 'mean_estimate', expected: 61, tolerance: 0.5, source: 'American Nurse. Calculating the MAP, a worked example' },
  { id: 'map-teach-130-85', inputs: { systolic: 130, diastolic: 85 }, measure: 'mean_estimate', expected: 100, tolerance: 0.5, source: 'A worked question on estimating the mean pressure, on a page of questions and answers' },
  { id: 'map-teach-90-45', inputs: { systolic: 90, diastolic: 45 }, measure: 'mean_estimate', expected: 60, tolerance: 0.5, source: 'A nursing student\'s case essay on sepsis: "BP 90/45 mmHg (MAP 60)"' },
];

/** A pair with the mean that a device reported beside it. */
interface DeviceFigure {
  readonly id: string;
  readonly inputs: { readonly systolic: number; readonly diastolic: number; readonly mean_pressure: number };
  /** What the formula gives, exact to the digits here. */
  readonly estimate: number;
  readonly tolerance: number;
  readonly source: string;
}

export const deviceFigures: readonly DeviceFigure[] = [
  { id: 'map-dev-ihe-120-80', inputs: { systolic: 120, diastolic: 80, mean_pressure: 100 }, estimate: 93.3333, tolerance: 0.5, source: 'IHE PCD-01, sample message ORU^R01 (ISO/IEEE 11073 MDC 150021, 150022 and 150023)' },
  { id: 'map-fhir-117-78', inputs: { systolic: 117, diastolic: 78, mean_pressure: 91 }, estimate: 91, tolerance: 0.5, source: 'HL7 FHIR Observation example with the components 8480-6, 8462-4 and 8478-0' },
  { id: 'map-fhir-123-78', inputs: { systolic: 123, diastolic: 78, mean_pressure: 93 }, estimate: 93, tolerance: 0.5, source: 'HL7 FHIR Observation example with a mean of 93 and a pulse pressure of 45' },
];

/** Gaps between systolic and diastolic as printed. */
export const gapFigures: readonly Figure[] = [
  { id: 'pp-openstax-120-80', inputs: { systolic: 120, diastolic: 80 }, measure: 'pulse_pressure', expected: 40, tolerance: 0, source: physiology },
  { id: 'pp-normal-statpearls: about 40 is usual', inputs: { systolic: 120, diastolic: 80 }, measure: 'pulse_pressure', expected: 40, tolerance: 0, source: pulsePressure },
  { id: 'pp-110-80', inputs: { systolic: 110, diastolic: 80 }, measure: 'pulse_pressure', expected: 30, tolerance: 0, source: 'A teaching page on the pulse pressure' },
  { id: 'map-teach-130-85: gap', inputs: { systolic: 130, diastolic: 85 }, measure: 'pulse_pressure', expected: 45, tolerance: 0, source: 'A worked question on estimating the mean pressure, on a page of questions and answers' },
  { id: 'map-fhir-123-78: gap', inputs: { systolic: 123, diastolic: 78 }, measure: 'pulse_pressure', expected: 45, tolerance: 0, source: 'HL7 FHIR Observation example with a mean of 93 and a pulse pressure of 45' },
];

/** Pairs on both sides of a quarter of the systolic. The sources agree that a gap of exactly a quarter is not yet narrow. */
export const quarterFigures: readonly {
  readonly id: string;
  readonly inputs: { readonly systolic: number; readonly diastolic: number };
  readonly narrow: boolean;
  readonly source: string;
}[] = [
  { id: 'pp-normal-statpearls: 100/76, a gap of 24', inputs: { systolic: 100, diastolic: 76 }, narrow: true, source: pulsePressure },
  { id: 'pp-normal-statpearls: 100/75, a gap of 25', inputs: { systolic: 100, diastolic: 75 }, narrow: false, source: pulsePressure },
  { id: 'pp-openstax-rule: 120/91, a gap of 29', inputs: { systolic: 120, diastolic: 91 }, narrow: true, source: physiology },
  { id: 'pp-openstax-rule: 120/90, a gap of 30', inputs: { systolic: 120, diastolic: 90 }, narrow: false, source: physiology },
  { id: 'pp-mcgee: 80/61, a gap of 19', inputs: { systolic: 80, diastolic: 61 }, narrow: true, source: physicalDiagnosis },
  { id: 'pp-mcgee: 80/60, a gap of 20', inputs: { systolic: 80, diastolic: 60 }, narrow: false, source: physicalDiagnosis },
  { id: 'pp-stevenson-perloff: 96/73, a gap of 23', inputs: { systolic: 96, diastolic: 73 }, narrow: true, source: narrowGap },
  { id: 'pp-stevenson-perloff: 96/72, a gap of 24', inputs: { systolic: 96, diastolic: 72 }, narrow: false, source: narrowGap },
];
