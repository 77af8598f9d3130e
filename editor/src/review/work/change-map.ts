import {
  axesOf,
  changedPlane,
  ordinaryValues,
  planeOf,
  protocolReader,
  valueAt,
  type Axis,
  type Compared,
  type Compiled,
  type Plane,
} from '../../../../src/index.ts';
import type { MapAsked, MapHere } from '../map/map-here.ts';
import type { ShownSet } from './comparison-to-page.ts';

/** One protocol on both sides. */
interface Pair {
  readonly before: Compiled;
  readonly after: Compiled;
}

/** What is held, by observation, as a set in JSON gives it. */
type Held = Readonly<Record<string, unknown>>;

/** Both sides drawn over the same two observations, everything else held alike. */
export function changeMap(
  asked: MapAsked,
  [before, after]: readonly [Compared, Compared],
  sets: readonly ShownSet[],
): MapHere {
  const pairs = pairsOf(before, after);
  const pair =
    pairs.find((each) => each.after.protocol.name === asked.protocol) ?? pairs.find(differs) ?? pairs[0];
  if (!pair) return none('No protocol is read with on both sides, so there is no map of what changes.');
  const axes = axesOfBoth(pair);
  const [x, y] = chosen(axes, asked.axes);
  if (!x || !y) return none('A map needs two observations that both sides read as numbers.');
  const held = heldIn(asked.heldAs === null ? undefined : sets[asked.heldAs], pair);
  const planes = [pair.before, pair.after].map((side) => planeWith(side, [x.name, y.name], held));
  const [was, is] = planes;
  if (!was || !is) return none('What is held cannot be read by one of the sides.');
  return {
    kind: 'map',
    plane: changedPlane(was, is),
    example: asked.heldAs === null ? null : pointIn(held, x, y),
    axes: axes.map(({ name, title }) => ({ name, title })),
    protocols: pairs.map(({ after: { protocol } }) => ({ name: protocol.name, title: protocol.title })),
    protocol: pair.after.protocol.name,
  };
}

const none = (why: string): MapHere => ({ kind: 'none', why });

const membersOf = (side: Compared): readonly Compiled[] => ('members' in side ? side.members : [side]);

function pairsOf(before: Compared, after: Compared): Pair[] {
  return membersOf(after).flatMap((is) => {
    const was = membersOf(before).find(({ protocol }) => protocol.name === is.protocol.name);
    return was ? [{ before: was, after: is }] : [];
  });
}

const differs = ({ before, after }: Pair): boolean =>
  before.protocol.logicDigest !== after.protocol.logicDigest;

/** What both sides read as a number in the same steps. */
const axesOfBoth = ({ before, after }: Pair): readonly Axis[] => {
  const steps = ({ unitsPerStep, unit }: Axis): string => `${unitsPerStep.join(' ')} ${unit ?? ''}`;
  const old = axesOf(before);
  return axesOf(after).filter((axis) =>
    old.some((each) => each.name === axis.name && steps(each) === steps(axis)),
  );
};

/** The two that are asked for, as far as they are there; else those that are looked at first. */
function chosen(
  all: readonly Axis[],
  axes: readonly [string, string] | null,
): readonly [Axis | undefined, Axis | undefined] {
  const [x, y] = axes?.map((name) => all.find((axis) => axis.name === name)) ?? [];
  return x && y && x !== y ? [x, y] : [all[0], all[1]];
}

/** Where a set stands on two axes; null where it does not give both. */
function pointIn(held: Held, x: Axis, y: Axis): Extract<MapHere, { kind: 'map' }>['example'] {
  const [across, up] = [held[x.name], held[y.name]];
  if (typeof across !== 'number' || typeof up !== 'number') return null;
  return { x: Math.round(across / valueAt(x, 1)), y: Math.round(up / valueAt(y, 1)) };
}

function heldIn(shown: ShownSet | undefined, { after }: Pair): Held {
  if (shown) return shown.witness.set;
  return Object.fromEntries(ordinaryValues(after.protocol).map(({ name, value }) => [name, value]));
}

/** The plane of one side; null when it cannot be asked what is held. */
function planeWith(side: Compiled, axes: readonly [string, string], held: Held): Plane | null {
  const own = Object.entries(held).filter(
    ([name]) => !axes.includes(name) && side.protocol.observations.has(name),
  );
  const { series } = protocolReader(side).series('what is held', JSON.stringify(Object.fromEntries(own)));
  return series && planeOf(side, { axes, held: series });
}
