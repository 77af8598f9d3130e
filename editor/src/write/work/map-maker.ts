import {
  axesOf,
  ordinaryValues,
  protocolReader,
  valueAt,
  type Axis,
  type Compiled,
  type Series,
  type Written,
} from '../../../../src/index.ts';
import { planeHere, type PlaneHere } from '../../common/map/plane-here.ts';
import type { GivenSet, GivenValue, MapHere, Question } from '../messages.ts';
import { givenInJson } from './given-in-yaml.ts';

/** A plane, and what it was worked out for. */
interface KeptPlane {
  readonly of: string;
  readonly here: PlaneHere;
}

/** Draws the map again and again while a text is written: while only words of it change, the plane is the same. */
export class MapMaker {
  private kept: KeptPlane | null = null;

  /** The plane of two observations with others held at some values; null where a protocol has no two numbers, or nothing can be read. */
  map(compiled: Compiled, written: Written, asked: Extract<Question, { kind: 'map' }>): MapHere | null {
    return mapOf(compiled, written, asked, (axes, given, held) => {
      const of = JSON.stringify([axes, given, written.decidesLike]);
      const here = this.kept?.of === of ? this.kept.here : planeHere(compiled, { axes, held });
      this.kept = { of, here };
      const { name, title, edition, digest } = compiled.protocol;
      return { ...here, plane: { ...here.plane, protocol: { name, title, edition, digest } } };
    });
  }
}

type PlaneWith = (axes: readonly [string, string], given: GivenSet, held: Series) => PlaneHere;

function mapOf(
  compiled: Compiled,
  written: Written,
  { axes, held: asked }: Extract<Question, { kind: 'map' }>,
  planeWith: PlaneWith,
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
    ...planeWith([x.name, y.name], held, series),
    points: pointsOf(written, x, y),
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
function pointsOf({ cases }: Written, x: Axis, y: Axis): MapHere['points'] {
  return cases.flatMap(({ name, passes, given }) => {
    const [left, up] = [x, y].map((axis) => {
      const value = given[axis.name];
      return value && value.low === value.high ? Math.round(value.low / valueAt(axis, 1)) : null;
    });
    if (left === null || up === null || left === undefined || up === undefined) return [];
    return [{ name, passes, x: left, y: up }];
  });
}
