import { error } from '../entry.ts';

type Name = { name: string };

/** Problems of faults of technique: what they make unsure, and how far. */
export const faultsWording = {
  fault_twice: error(
    (f: Name) => `There are two faults called "${f.name}".`,
    () => 'a name of its own for each fault',
  ),
  fault_without_direction: error(
    (f: Name) => `The fault "${f.name}" does not say what it makes read too high or too low.`,
    () => 'reads_high or reads_low, with the observation and how far',
  ),
  fault_of_choice: error(
    (f: Name) => `"${f.name}" is not a number, so it cannot read too high or too low.`,
    () => 'an observation with a number',
  ),
  fault_in_another_unit: error(
    (f: Name & { written: string; unit: string }) => `${f.written} is no amount of ${f.name}.`,
    (f) => `an amount in ${f.unit}`,
  ),
  fault_amount_not_above_zero: error(
    (f: Name & { written: string }) => `${f.name} cannot be off by ${f.written}.`,
    () => 'an amount above 0: reads_high and reads_low say in which direction',
  ),
  fault_asks_limit: error(
    (f: Name) => `Whether a fault is there does not depend on a limit ("${f.name}").`,
    () => 'observations compared with numbers or choices',
  ),
} as const;
