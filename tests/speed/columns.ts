import { byHand, type HandSet } from './by-hand.ts';
import { chances, patient } from './patients.ts';

export const count = 20_000;
const chance = chances(1);
export const patients: readonly HandSet[] = Array.from({ length: count }, () => patient(chance));

type Column = Int16Array | Int32Array | Float64Array;

/** The columns of the module of pressure_reading, and which number of a patient each holds. */
const short: Readonly<Record<string, (set: HandSet) => number>> = {
  systolic: (set) => set.systolic,
  diastolic: (set) => set.diastolic,
  heart_rate: (set) => set.heartRate,
  respiratory_rate: (set) => set.respiratoryRate,
  temperature: (set) => set.temperature,
  consciousness: (set) => set.consciousness,
  mean_pressure: (set) => set.meanPressure,
  oxygen_saturation: (set) => set.saturation,
  vasodilator_last_6_h: (set) => set.vasodilator,
  head_injury: (set) => set.headInjury,
  rate_slowing_medicine: () => 1,
  paced: () => 1,
  cord_injury: () => 1,
  usual_systolic: (set) => set.usualSystolic,
  oxygen_scale: (set) => set.oxygenScale,
  pregnancy: (set) => set.pregnancy,
};
const long: typeof short = { technique_faults: (set) => set.techniqueFaults, age: (set) => set.age };
const backs: typeof short = {
  systolic_change: (set) => set.systolicChange,
  diastolic_change: (set) => set.diastolicChange,
};

/** All patients as columns; of a hundred values so many are missing. */
export function columnsOf(missing: number): Readonly<Record<string, Column>> {
  const lacks = chances(2);
  const filled = (
    all: typeof short,
    make: (values: number[]) => Column,
    nothing: number,
  ): [string, Column][] =>
    Object.entries(all).map(([name, of]) => [
      name,
      make(patients.map((set) => (lacks() * 100 < missing ? nothing : of(set)))),
    ]);
  return Object.fromEntries([
    ...filled(short, (values) => Int16Array.from(values), -32_768),
    ...filled(long, (values) => Int32Array.from(values), -2_147_483_648),
    ...filled(backs, (values) => Float64Array.from(values), NaN),
  ]);
}

/** Every patient by hand, from the objects. */
export function allByHand(out: Int32Array): number {
  for (let row = 0; row < count; row += 1) byHand(patients[row] as HandSet, out, row * 3);
  return count;
}
