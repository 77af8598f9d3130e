import type * as File from '../../shape/generated/types.ts';
import { nearestOf } from '../names.ts';
import type { Path } from '../../problems/place.ts';
import { possibleRange } from '../../vocabulary/possible-range.ts';
import { convert } from '../../vocabulary/units.ts';
import type { Observation } from '../protocol.ts';
import { readQuantity } from '../read-quantity.ts';
import type { Reading } from '../reading.ts';
import { isObservation } from './is-observation.ts';
import type { Way } from './requirement.ts';

/** Which way is worse; null, and reported, when that is not said or cannot be. */
export function readWay(file: File.GettingWorse, path: Path, reading: Reading): Way | null {
  const { observation: name, going, between, through } = file;
  if (!isObservation(name, [...path, 'observation'], reading)) return null;
  const observation = reading.names.observations.get(name) as Observation;
  const { kind } = observation;
  const fits =
    kind === 'number'
      ? going !== undefined && through === undefined
      : kind !== 'several' && through !== undefined && going === undefined && between === undefined;
  if (!fits) {
    reading.report('way_does_not_fit', [...path, 'observation'], { name, kind });
    return null;
  }
  return going
    ? numbers(going, between, observation, path, reading)
    : choices(through ?? [], observation, path, reading);
}

function numbers(
  going: 'up' | 'down',
  between: File.GettingWorse['between'],
  observation: Observation,
  path: Path,
  { report }: Reading,
): Way | null {
  const possible = possibleRange(observation);
  if (!between) return { going, ...possible };
  const [low, high] = between.map((written, index) => {
    const read = readQuantity(written, [...path, 'between', index], report);
    if (!read) return null;
    const value =
      read.unit && observation.unit ? convert(read.value, read.unit, observation.unit) : read.value;
    const steps = value.mul(observation.stepsPerUnit);
    if (steps.d === 1n && steps.valueOf() >= possible.low && steps.valueOf() <= possible.high)
      return steps.valueOf();
    report('worse_outside_possible', [...path, 'between', index], {
      name: observation.name,
      value: String(written),
    });
    return null;
  }) as [number | null, number | null];
  if (low === null || high === null) return null;
  if (low < high) return { going, low, high };
  const [from, to] = between.map(String) as [string, string];
  report('between_wrong_way', [...path, 'between'], { from, to });
  return null;
}

function choices(
  through: readonly (string | boolean)[],
  { name, choices: known }: Observation,
  path: Path,
  { report }: Reading,
): Way | null {
  const words = through.map((each) => (each === true ? 'yes' : each === false ? 'no' : each));
  const names = known.map(({ choice }) => choice);
  let fine = true;
  words.forEach((choice, index) => {
    if (names.includes(choice) && words.indexOf(choice) === index) return;
    fine = false;
    const nearMiss = names.includes(choice) ? null : nearestOf(choice, names);
    if (names.includes(choice)) report('worse_choice_twice', [...path, 'through', index], { name, choice });
    else
      report('unknown_choice', [...path, 'through', index], { name, choice, choices: names }, { nearMiss });
  });
  return fine ? { through: words } : null;
}
