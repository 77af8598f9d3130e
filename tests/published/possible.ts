import { readFileSync } from 'node:fs';
import { parse } from 'yaml';

interface Entry {
  readonly step?: number;
  readonly possible?: readonly (number | { readonly from: number; readonly to: number })[];
}

const dictionary = parse(readFileSync(new URL('../../schema/vital_signs.yaml', import.meta.url), 'utf8')) as {
  readonly observations: Readonly<Record<string, Entry | undefined>>;
};

/**
 * Every value of an observation on its step, from the lowest to the highest that an adult can have.
 *
 * Read straight from the dictionary's text. `possibleValues('oxygen_saturation')` is 0, 1, … 100.
 */
export function possibleValues(observation: string): number[] {
  const { step, possible } = dictionary.observations[observation] ?? {};
  const last = possible?.at(-1);
  const [low, high] = typeof last === 'object' ? [last.from, last.to] : [possible?.[0], last];
  if (step === undefined || typeof low !== 'number' || typeof high !== 'number') {
    throw new Error(`The dictionary has no range and step for ${observation}.`);
  }
  // Whole steps are counted and divided once, so that each value is the number that its decimal text stands for.
  const stepsPerUnit = Math.round(1 / step);
  const [first, end] = [Math.round(low * stepsPerUnit), Math.round(high * stepsPerUnit)];
  return Array.from({ length: end - first + 1 }, (_, index) => (first + index) / stepsPerUnit);
}
