import {
  axesOf,
  numbersOf,
  ordinaryValues,
  protocolReader,
  valueAt,
  type Axis,
  type Compiled,
  type Written,
} from '../../../../src/index.ts';
import { planeHere } from '../../common/map/plane-here.ts';
import type { GivenSet, GivenValue, MapHere, Question } from '../messages.ts';
import { givenInJson } from './given-in-yaml.ts';

/** The plane of two observations with others held at some values; null where a protocol has no two numbers, or nothing can be read. */
export function mapOf(
  compiled: Compiled,
  written: Written,
  { axes, held: asked }: Extract<Question, { kind: 'map' }>,
): MapHere | null {
  const all = axesOf(compiled);
  const [x, y] = chosen(all, axes);
  if (!x || !y) return null;
  const reader = protocolReader(compiled);
  const held = without(asked ?? ordinary(compiled), [x.name, y.name]);
  const { series } = reader.series('the values held', givenInJson(held));
  if (!series) return null;
  return {
    axes: all.map(({ name, title }) => ({ name, title })),
    ...planeHere(compiled, { axes: [x.name, y.name], held: series }),
    points: pointsOf(compiled, written, x, y),
    held,
    form: reader.form,
  };
}

const ordinary = ({ protocol }: Compiled): GivenSet =>
  Object.fromEntries(
    ordinaryValues(protocol).map(({ name, unit, value }): [string, GivenValue] => [
      name,
      typeof value === 'number'
        ? { kind: 'number', text: String(value), unit }
        : typeof value === 'string'
          ? { kind: 'choice', choice: value }
          : { kind: 'several', choices: value },
    ]),
  );

/** The two that are asked for, as far as they are there; else those that are looked at first. */
function chosen(
  all: readonly Axis[],
  axes: readonly [string, string] | null,
): [Axis | undefined, Axis | undefined] {
  const named = axes?.map((name) => all.find((axis) => axis.name === name)) ?? [];
  const [x, y] = named;
  return x && y && x !== y ? [x, y] : [all[0], all[1]];
}

const without = (given: GivenSet, names: readonly string[]): GivenSet =>
  Object.fromEntries(Object.entries(given).filter(([name]) => !names.includes(name)));

/** The cases that give one plain number on both axes. They may hold other values than the map. */
function pointsOf(compiled: Compiled, { cases, read }: Written, x: Axis, y: Axis): MapHere['points'] {
  const passing = new Map(cases.map(({ name, passes }) => [name, passes]));
  return read.flatMap((each) => {
    const given = numbersOf(compiled, each);
    const [left, up] = [x, y].map((axis) => {
      const value = given[axis.name];
      return value && value.low === value.high ? Math.round(value.low / valueAt(axis, 1)) : null;
    });
    if (left === null || up === null || left === undefined || up === undefined) return [];
    return [{ name: each.name, passes: passing.get(each.name) ?? false, x: left, y: up }];
  });
}
