import type { Figure } from './figure.ts';

const report =
  'Royal College of Physicians. National Early Warning Score (NEWS) 2: Standardising the assessment of acute-illness severity in the NHS. Updated report of a working party. London: RCP, 2017';
const chart1 = `${report}. Chart 1`;
const charts2And4 = `${report}. Charts 2 and 4`;
const recommendations = `${report}. Recommendations on whom the score is for`;

/** The points of one parameter, at every edge of its bands. */
export const pointFigures: readonly Figure[] = [
  { id: 'news2-rr-8', inputs: { respiratory_rate: 8 }, measure: 'breathing_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-rr-9', inputs: { respiratory_rate: 9 }, measure: 'breathing_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-rr-11', inputs: { respiratory_rate: 11 }, measure: 'breathing_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-rr-12', inputs: { respiratory_rate: 12 }, measure: 'breathing_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-rr-20', inputs: { respiratory_rate: 20 }, measure: 'breathing_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-rr-24', inputs: { respiratory_rate: 24 }, measure: 'breathing_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-rr-21', inputs: { respiratory_rate: 21 }, measure: 'breathing_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-rr-25', inputs: { respiratory_rate: 25 }, measure: 'breathing_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-spo2Scale1-91', inputs: { oxygen_saturation: 91 }, measure: 'saturation_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-spo2Scale1-92', inputs: { oxygen_saturation: 92 }, measure: 'saturation_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-spo2Scale1-93', inputs: { oxygen_saturation: 93 }, measure: 'saturation_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-spo2Scale1-94', inputs: { oxygen_saturation: 94 }, measure: 'saturation_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-spo2Scale1-95', inputs: { oxygen_saturation: 95 }, measure: 'saturation_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-spo2Scale1-96', inputs: { oxygen_saturation: 96 }, measure: 'saturation_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-spo2Scale1-100', inputs: { oxygen_saturation: 100 }, measure: 'saturation_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-sbp-90', inputs: { systolic: 90 }, measure: 'pressure_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-sbp-91', inputs: { systolic: 91 }, measure: 'pressure_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-sbp-100', inputs: { systolic: 100 }, measure: 'pressure_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-sbp-101', inputs: { systolic: 101 }, measure: 'pressure_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-sbp-110', inputs: { systolic: 110 }, measure: 'pressure_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-sbp-219', inputs: { systolic: 219 }, measure: 'pressure_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-sbp-111', inputs: { systolic: 111 }, measure: 'pressure_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-sbp-220', inputs: { systolic: 220 }, measure: 'pressure_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-pulse-40', inputs: { heart_rate: 40 }, measure: 'rate_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-pulse-41', inputs: { heart_rate: 41 }, measure: 'rate_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-pulse-90', inputs: { heart_rate: 90 }, measure: 'rate_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-pulse-51', inputs: { heart_rate: 51 }, measure: 'rate_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-pulse-91', inputs: { heart_rate: 91 }, measure: 'rate_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-pulse-110', inputs: { heart_rate: 110 }, measure: 'rate_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-pulse-130', inputs: { heart_rate: 130 }, measure: 'rate_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-pulse-111', inputs: { heart_rate: 111 }, measure: 'rate_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-pulse-131', inputs: { heart_rate: 131 }, measure: 'rate_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-temp-35.0', inputs: { temperature: 35 }, measure: 'temperature_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-temp-35.1', inputs: { temperature: 35.1 }, measure: 'temperature_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-temp-36.0', inputs: { temperature: 36 }, measure: 'temperature_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-temp-36.1', inputs: { temperature: 36.1 }, measure: 'temperature_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-temp-38.0', inputs: { temperature: 38 }, measure: 'temperature_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-temp-38.1', inputs: { temperature: 38.1 }, measure: 'temperature_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-temp-39.0', inputs: { temperature: 39 }, measure: 'temperature_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-temp-39.1', inputs: { temperature: 39.1 }, measure: 'temperature_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-83-air', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 83, on_oxygen: false }, measure: 'saturation_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-84-air', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 84, on_oxygen: false }, measure: 'saturation_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-85-air', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 85, on_oxygen: false }, measure: 'saturation_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-86-air', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 86, on_oxygen: false }, measure: 'saturation_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-87-air', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 87, on_oxygen: false }, measure: 'saturation_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-88-air', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 88, on_oxygen: false }, measure: 'saturation_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-92-air', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 92, on_oxygen: false }, measure: 'saturation_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-93-air', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 93, on_oxygen: false }, measure: 'saturation_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-97-air', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 97, on_oxygen: false }, measure: 'saturation_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-100-air', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 100, on_oxygen: false }, measure: 'saturation_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-83-o2', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 83, on_oxygen: true }, measure: 'saturation_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-85-o2', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 85, on_oxygen: true }, measure: 'saturation_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-87-o2', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 87, on_oxygen: true }, measure: 'saturation_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-88-o2', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 88, on_oxygen: true }, measure: 'saturation_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-92-o2', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 92, on_oxygen: true }, measure: 'saturation_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-93-o2', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 93, on_oxygen: true }, measure: 'saturation_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-94-o2', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 94, on_oxygen: true }, measure: 'saturation_points', expected: 1, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-95-o2', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 95, on_oxygen: true }, measure: 'saturation_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-96-o2', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 96, on_oxygen: true }, measure: 'saturation_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-97-o2', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 97, on_oxygen: true }, measure: 'saturation_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-spo2s2-100-o2', inputs: { oxygen_scale: 'scale_2', oxygen_saturation: 100, on_oxygen: true }, measure: 'saturation_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-oxygen', inputs: { on_oxygen: true }, measure: 'oxygen_points', expected: 2, tolerance: 0, source: chart1 },
  { id: 'news2-air', inputs: { on_oxygen: false }, measure: 'oxygen_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-acvpu-A', inputs: { consciousness: 'alert' }, measure: 'consciousness_points', expected: 0, tolerance: 0, source: chart1 },
  { id: 'news2-acvpu-C', inputs: { consciousness: 'new_confusion' }, measure: 'consciousness_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-acvpu-V', inputs: { consciousness: 'voice' }, measure: 'consciousness_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-acvpu-P', inputs: { consciousness: 'pain' }, measure: 'consciousness_points', expected: 3, tolerance: 0, source: chart1 },
  { id: 'news2-acvpu-U', inputs: { consciousness: 'unresponsive' }, measure: 'consciousness_points', expected: 3, tolerance: 0, source: chart1 },
];

/** The lowest and the highest total that the published table allows. */
export const totalRange = { id: 'news2-range', low: 0, high: 20, tolerance: 0, source: chart1 };

/** One row of the published response: which totals it is for, and the level that this ladder answers with. */
interface ResponseFigure {
  readonly id: string;
  /** The totals, both included. */
  readonly total: readonly [number, number];
  /** Whether one parameter has three points: yes, no, or null where the published row does not ask. */
  readonly threeInOne: boolean | null;
  /** As published, shortened. */
  readonly frequency: string;
  /** As published, shortened. */
  readonly response: string;
  /** The level of the ladder; the ladder is this project's own, not published. */
  readonly level: string;
  readonly source: string;
}

export const responseFigures: readonly ResponseFigure[] = [
  { id: 'news2-response-0', total: [0, 0], threeInOne: false, frequency: 'at least 12-hourly', response: 'continue routine monitoring', level: 'usual_round', source: charts2And4 },
  { id: 'news2-response-1-4', total: [1, 4], threeInOne: false, frequency: 'at least 4 to 6-hourly', response: 'a registered nurse assesses and decides', level: 'look_again', source: charts2And4 },
  { id: 'news2-response-3-in-a-single-parameter', total: [3, 4], threeInOne: true, frequency: 'at least hourly', response: 'the medical team is told, reviews and decides', level: 'call_doctor', source: charts2And4 },
  { id: 'news2-response-5-6', total: [5, 6], threeInOne: null, frequency: 'at least hourly', response: 'urgent: the medical team at once, assessment by people skilled in acute illness', level: 'call_doctor', source: charts2And4 },
  { id: 'news2-response->=7', total: [7, 20], threeInOne: null, frequency: 'continuous', response: 'emergency: at least specialist registrar, team with critical care skills', level: 'emergency_call', source: charts2And4 },
];

/** For whom the score is not. These pages of the work were not at hand when this was typed; other published texts say the same. */
export const scopeFigures: readonly { readonly id: string; readonly inputs: object; readonly applies: 'yes' | 'no'; readonly source: string }[] = [
  { id: 'news2-scope: under 16 years', inputs: { age: { value: 15, unit: 'a' } }, applies: 'no', source: recommendations },
  { id: 'news2-scope: 16 years', inputs: { age: { value: 16, unit: 'a' } }, applies: 'yes', source: recommendations },
  { id: 'news2-scope: pregnancy', inputs: { pregnancy: 'pregnant' }, applies: 'no', source: recommendations },
];
