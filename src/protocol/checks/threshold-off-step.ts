import Fraction from 'fraction.js';
import { plainWords } from '../words.ts';
import { quantityWords } from './in-words.ts';
import { thresholdsOf } from './thresholds.ts';
import type { Check } from './check.ts';

/** An observation is compared with values that are written down, not with what lies between two of them. */
export const thresholdOffStep: Check = ({ protocol }, report) => {
  for (const { observation, value, written, path } of thresholdsOf(protocol)) {
    if (value.mul(observation.stepsPerUnit).d === 1n) continue;
    report('threshold_off_step', path, {
      name: plainWords(observation.name),
      written: quantityWords(written.value, written.unit ?? observation.unit),
      step: quantityWords(new Fraction(1).div(observation.stepsPerUnit), observation.unit),
    });
  }
};
