import type { ObservationEntry } from '../protocol/protocol.ts';

/** A part of a set, by what is done at the bedside for it. */
interface Round {
  readonly heading: string;
  readonly takes: readonly string[];
}

/** The order in which a nurse takes a set: the patient first, the machine last. */
const rounds: readonly Round[] = [
  {
    heading: 'Look and listen',
    takes: ['consciousness', 'glasgow_coma_total', 'skin', 'pain', 'staff_concern', 'family_concern'],
  },
  { heading: 'Breathing', takes: ['respiratory_rate', 'oxygen_saturation', 'on_oxygen', 'oxygen_flow'] },
  { heading: 'Rate', takes: ['heart_rate', 'rhythm', 'paced', 'capillary_refill'] },
  {
    heading: 'Pressure',
    takes: [
      'systolic',
      'diastolic',
      'mean_pressure',
      'measurement_method',
      'limb',
      'body_position',
      'cuff',
      'arm_circumference',
      'technique_faults',
    ],
  },
  { heading: 'Temperature', takes: ['temperature'] },
];

/** For what no round takes: laboratory values, medicines, what a protocol declares itself. */
const rest = 'Also';

/** Entries by round, in the order in which they are taken; rounds without any are left out. */
export function inTakingOrder<T extends Pick<ObservationEntry, 'name'>>(
  entries: readonly T[],
): readonly { readonly heading: string; readonly entries: readonly T[] }[] {
  const taken = new Set(rounds.flatMap(({ takes }) => takes));
  const grouped = rounds.map(({ heading, takes }) => ({
    heading,
    entries: takes.flatMap((name) => entries.filter((each) => each.name === name)),
  }));
  const others = { heading: rest, entries: entries.filter(({ name }) => !taken.has(name)) };
  return [...grouped, others].filter((group) => group.entries.length > 0);
}
