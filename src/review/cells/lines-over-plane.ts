import type { Compiled } from '../../outcome/compile.ts';
import { over, type Exact } from '../../outcome/exact.ts';
import { measureThresholds } from '../../outcome/measure-thresholds.ts';
import { alone, formatOf } from '../../outcome/shown-number.ts';
import type { Measure } from '../../protocol/protocol.ts';
import { quantityOf } from '../../protocol/quantities.ts';
import { sameDimension, type Unit } from '../../vocabulary/units.ts';
import { axisNamed } from './axes-of.ts';
import { Ground } from './ground.ts';
import { levelLine } from './level-line.ts';
import type { PlaneAsked } from './plane-of.ts';

/** A line over a plane: where a curve runs, or where a measure has a number that something compares it with. */
export interface PlaneLine {
  readonly kind: 'curve' | 'level';
  readonly measure: string;
  /** `estimated mean pressure = 65 mmHg`; of a curve its title. */
  readonly title: string;
  /** One piece or more of points x, y in the units of the axes. For drawing: the exact edges are those of the cells. */
  readonly pieces: readonly (readonly (readonly [number, number])[])[];
}

/** The lines of a plane, curves first. A line that never comes inside the plane is left out. */
export function linesOverPlane(compiled: Compiled, { axes, held }: PlaneAsked): PlaneLine[] {
  const { protocol } = compiled;
  const measures = [...protocol.measures.values()];
  const curves = measures.flatMap((measure) => curveLine(measure, compiled, axes));
  const ground = new Ground(compiled, held, axes);
  const turned = new Ground(compiled, held, [axes[1], axes[0]]);
  const limits = new Map(
    [...ground.heldBounds().facts.limits].flatMap(([name, { steps }]): [string, Exact][] => {
      const limit = protocol.limits.get(name);
      return limit ? [[name, over(steps * Number(limit.stepsPerUnit.d), limit.stepsPerUnit.n)]] : [];
    }),
  );
  const levels = measures.flatMap((measure) =>
    distinct(measureThresholds(measure.name, protocol, limits)).flatMap((at): PlaneLine[] => {
      const pieces = levelLine({ compiled, measure: measure.name, at, grounds: [ground, turned], axes });
      const format = formatOf(measure.unit);
      const title = `${measure.title} = ${format.withUnit(alone(at, format))}`;
      return pieces.length > 0 ? [{ kind: 'level', measure: measure.name, title, pieces }] : [];
    }),
  );
  return [...curves, ...levels];
}

/** A curve over one axis whose value is measured as the other is. */
function curveLine(
  { name, title, how, quantity }: Measure,
  { protocol }: Compiled,
  axes: PlaneAsked['axes'],
): PlaneLine[] {
  if (how.kind !== 'curve' || how.of.kind !== 'observation') return [];
  const along = axes.indexOf(how.of.name);
  const other = axes[1 - along];
  if (along === -1 || other === undefined) return [];
  const unit: Unit | null = protocol.observations.get(other)?.unit ?? null;
  if (!unit || !sameDimension(unit.dimension, quantity.dimension)) return [];
  const factor = quantity.factor.div(quantityOf(unit).factor);
  const at = how.points.map(
    (point) => [point.at.valueOf(), point.value.mul(factor).valueOf()] as [number, number],
  );
  if (how.beyond === 'hold') {
    const { possible, unitsPerStep } = axisNamed(how.of.name, protocol);
    const [low, high] = possible.map((step) => (step * unitsPerStep[0]) / unitsPerStep[1]);
    at.unshift([low as number, at[0]?.[1] as number]);
    at.push([high as number, at.at(-1)?.[1] as number]);
  }
  const points = along === 0 ? at : at.map(([x, y]): [number, number] => [y, x]);
  return [{ kind: 'curve', measure: name, title, pieces: [points] }];
}

const distinct = (all: readonly Exact[]): Exact[] => [
  ...new Map(all.map((each) => [`${each.n}/${each.d}`, each])).values(),
];
