import type Fraction from 'fraction.js';
import type * as File from '../shape/generated/types.ts';
import { nearMiss } from '../vocabulary/near-miss.ts';
import type { Path } from '../problems/place.ts';
import type { MeasureHow, Operand, ScorePart } from './protocol.ts';
import { readQuantity } from './read-quantity.ts';
import { nearestOf, numberNamed, numbers } from './names.ts';
import { readOperand } from './read-operand.ts';
import type { Reading } from './reading.ts';

/** Reads a curve. Whether its points rise, and reach far enough, is checked later. */
export function readCurve(file: File.Curve, path: Path, context: Reading): MeasureHow | null {
  const of = namedNumber(file.of, [...path, 'of'], context);
  const points = file.points.map((pair, index) => {
    const [at, value] = pair.map((each, side) =>
      plainNumber(each, [...path, 'points', index, side], context),
    );
    return at && value ? { at, value } : null;
  });
  const read = points.filter((point) => point !== null);
  if (!of || read.length < points.length) return null;
  if (file.beyond === undefined) return { kind: 'curve', of, points: read, beyond: 'missing' };
  return { kind: 'curve', of, points: read, beyond: file.beyond };
}

/** Reads a score: bands over numbers, points for choices. */
export function readScore(
  file: Record<string, File.ScorePart>,
  path: Path,
  context: Reading,
): MeasureHow | null {
  const parts = Object.entries(file).map(([name, part]) =>
    Array.isArray(part)
      ? bands(name, part as File.Band[], [...path, name], context)
      : choices(name, part as Record<string, number>, [...path, name], context),
  );
  const read = parts.filter((part) => part !== null);
  return read.length < parts.length ? null : { kind: 'score', parts: read };
}

function bands(name: string, files: readonly File.Band[], path: Path, context: Reading): ScorePart | null {
  const of = namedNumber(name, path, context, 'key');
  const read = files.map((file, index) => band(file, index === files.length - 1, [...path, index], context));
  const whole = read.filter((each) => each !== null);
  return !of || whole.length < read.length ? null : { kind: 'bands', of, bands: whole, path };
}

type Band = Extract<ScorePart, { kind: 'bands' }>['bands'][number];

function band(file: File.Band, last: boolean, path: Path, context: Reading): Band | null {
  const { report } = context;
  if (file.at_most !== undefined && file.below !== undefined) {
    report('band_with_two_ends', path, {});
    return null;
  }
  const key = file.below === undefined ? 'at_most' : 'below';
  const written = file[key];
  if (last && written !== undefined) {
    report('last_band_not_open', [...path, key], {}, { part: 'key' });
    return null;
  }
  if (!last && written === undefined) {
    report('band_without_end', path, {});
    return null;
  }
  if (written === undefined) return { to: null, included: false, points: file.points };
  const to = readOperand(written, [...path, key], context);
  if (to && to.kind !== 'number') {
    report('band_not_a_number', [...path, key], { name: to.name });
    return null;
  }
  return to && { to, included: key === 'at_most', points: file.points };
}

function choices(
  name: string,
  file: Record<string, number>,
  path: Path,
  { names, report }: Reading,
): ScorePart | null {
  const observation = names.observations.get(name);
  if (!observation || observation.kind === 'number') {
    if (observation || names.measures.has(name)) report('points_of_number', path, { name }, { part: 'key' });
    else if (names.declared.has(name)) report('observation_not_listed', path, { name }, { part: 'key' });
    else {
      const fitting = [...names.declared.values()].filter((each) => each.kind !== 'number');
      report('unknown_observation', path, { name }, { part: 'key', nearMiss: () => nearMiss(name, fitting) });
    }
    return null;
  }
  const known = observation.choices.map((each) => each.choice);
  const unknown = Object.keys(file).filter((choice) => !known.includes(choice));
  for (const choice of unknown) {
    const facts = { name, choice, choices: known };
    report('unknown_choice', [...path, choice], facts, {
      part: 'key',
      nearMiss: () => nearestOf(choice, known),
    });
  }
  if (unknown.length > 0) return null;
  return { kind: 'choices', observation: name, points: new Map(Object.entries(file)), path };
}

function namedNumber(
  name: string,
  path: Path,
  { names, report }: Reading,
  part: 'key' | 'value' = 'value',
): Operand | null {
  const named = numberNamed(names, name);
  if (named && named.kind !== 'limit') return named;
  const declared = names.declared.get(name);
  if (declared?.kind === 'number') report('observation_not_listed', path, { name }, { part });
  else if (declared)
    report('bands_of_choice', path, { name, choices: declared.choices.map((each) => each.choice) }, { part });
  else report('unknown_name', path, { name }, { part, nearMiss: () => nearMiss(name, withoutLimits(names)) });
  return null;
}

function plainNumber(written: number | string, path: Path, { report }: Reading): Fraction | null {
  const read = readQuantity(written, path, report);
  if (!read?.unit) return read && read.value;
  report('plain_number_wanted', path, { written: String(written) });
  return null;
}

/** A curve and a band are read at what can change from set to set. */
const withoutLimits = (names: Reading['names']): ReturnType<typeof numbers> =>
  numbers(names).filter(({ name }) => !names.limits.has(name));
