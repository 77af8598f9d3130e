import type { HandSet } from './by-hand.ts';

/** Chances that are the same in every run. */
export function chances(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** An invented adult on a ward: mostly quiet, now and then ill. */
export function patient(chance: () => number): HandSet {
  const ill = chance() < 0.2;
  const near = (middle: number, spread: number): number =>
    Math.round(middle + (chance() + chance() - 1) * spread * (ill ? 2 : 1));
  const systolic = near(ill ? 108 : 124, 30);
  const diastolic = Math.min(systolic - 10, near(ill ? 58 : 72, 18));
  const mean = Math.round((systolic + 2 * diastolic) / 3) + Math.floor(chance() * 5) - 2;
  return {
    systolic,
    diastolic,
    heartRate: near(ill ? 102 : 78, 24),
    respiratoryRate: near(ill ? 22 : 16, 5),
    temperature: near(ill ? 378 : 368, 9),
    consciousness: chance() < 0.93 ? 0 : Math.floor(chance() * 5),
    meanPressure: mean,
    saturation: Math.min(100, near(95, 4)),
    vasodilator: chance() < 0.1 ? 0 : 1,
    headInjury: chance() < 0.05 ? 0 : 1,
    techniqueFaults: chance() < 0.9 ? 0 : 1 << Math.floor(chance() * 16),
    usualSystolic: near(128, 15),
    oxygenScale: chance() < 0.9 ? 0 : 1,
    age: Math.floor(18 + chance() * 75) * 5844,
    pregnancy: chance() < 0.99 ? 0 : 1,
    systolicChange: near(0, 12),
    diastolicChange: near(0, 8),
  };
}
