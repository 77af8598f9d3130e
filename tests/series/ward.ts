import type { Contradiction, LookBack, Observation, Protocol } from '../../src/protocol/protocol.ts';
import { age, choice, limit, number, protocolOf, several, yesNo } from './protocol-builder.ts';

/** What the rows observe. All figures are the tests' own. */
const observations: readonly Observation[] = [
  number('systolic', 'mmHg', [20, 350], { plausible: [50, 260], goodFor: '4 h', takenWith: 'pressure' }),
  number('diastolic', 'mmHg', [10, 250], { goodFor: '4 h', takenWith: 'pressure' }),
  number('heart_rate', '/min', [0, 300], { goodFor: '4 h' }),
  number('temperature', '°C', [250, 450], { stepsPerUnit: 10 }),
  choice('consciousness', ['alert', 'voice', 'pain'], { goodFor: '4 h' }),
  yesNo('infection_suspected', { goodFor: '24 h' }),
  number('oxygen_saturation', '%', [0, 100], { role: 'helps', goodFor: '1 h' }),
  yesNo('vasodilator', { role: 'helps', goodFor: '6 h' }),
  choice('limb', ['left_arm', 'right_arm', 'leg'], { role: 'helps' }),
  several('technique_faults', ['cuff_too_small', 'arm_hanging', 'talking'], { role: 'helps' }),
  choice('oxygen_scale', ['scale_1', 'scale_2'], { role: 'helps', standing: true, ifNotStated: 'scale_1' }),
  number('usual_systolic', 'mmHg', [50, 250], { role: 'helps', standing: true, plausible: [80, 200] }),
];

const contradictions: readonly Contradiction[] = [
  {
    lower: 'diastolic',
    higher: 'systolic',
    mayBeEqual: false,
    says: 'The diastolic is never as high as the systolic.',
  },
];

const limits = [limit('mean_floor', 'mmHg', 65, [55, 85]), limit('fixed_floor', 'mmHg', 60, null)];

/** Known to the dictionary of the tests, and read by none of its protocols unless they say so. */
const elsewhere: readonly Observation[] = [
  number('mean_pressure', 'mmHg', [15, 300], { goodFor: '4 h', takenWith: 'pressure' }),
  number('weight', 'kg', [0, 3000], { stepsPerUnit: 10 }),
  age({ standing: true }),
];

/** The ward's protocol with the look backs of a row; a row may read some observations otherwise, or others too. */
export function wardProtocol(
  measures: Readonly<Record<string, LookBack>> = {},
  changed: readonly Observation[] = [],
): Protocol {
  const own = new Map([...observations, ...changed].map((each) => [each.name, each]));
  return protocolOf({ observations: [...own.values()], elsewhere, contradictions, limits, measures });
}

/** A time on the day of the tests: `at('08:00')`, `at('12:00:00.001')`. */
export const at = (clock: string): string => `2026-03-02T${clock.length === 5 ? `${clock}:00` : clock}Z`;
