import Fraction from 'fraction.js';
import type { Measure, MeasureHow } from '../../protocol/protocol.ts';
import { floor, ofNode, over1, scaled, wholeTerms, type Linear, type Node } from '../linear.ts';
import { and, either, highest, less, lessOrSame, lowest, sum, times, type Logical } from '../operators.ts';
import { commonScale, truth, wholeOf } from '../arithmetic.ts';
import { type NumberForm } from '../number-form.ts';
import type { Context } from '../context.ts';
import { stepName } from '../logic.ts';

type Curve = Extract<MeasureHow, { kind: 'curve' }>;
type Point = Curve['points'][number];

/** A curve: straight lines between points, in whole numbers by the common denominator of its slopes. */
export function curveForm(curve: Curve, measure: Measure, context: Context): NumberForm {
  const owner = stepName(measure.path);
  const { writer, arithmetic } = context;
  const of = context.form(curve.of);
  const linear = scaled(of.ratio.top, of.ratio.bottom.constant.inverse());
  const scale = scaleOf(linear);
  const at = arithmetic.wholeNode(linear, scale, `${owner}/at`, owner);
  const lines = linesOf(curve.points, scale);
  const ends = {
    low: writer.define(`${owner}/at:low`, at.low),
    high: writer.define(`${owner}/at:high`, at.high),
  };
  const value = valueNode(curve.points, lines, { ...at, ...ends });
  const low = writer.define(`${owner}:low`, value.low);
  const high = writer.define(`${owner}:high`, value.high);
  const result = writer.node({ ...value, name: owner, low, high }, owner, [at]);
  writer.reach(reachOf(lines, at), owner, [at]);
  return {
    ratio: over1(ofNode(result, new Fraction(lines.scale))),
    quantity: 'plain',
    presence: { ...of.presence, ...within(curve, scale, at, of) },
  };
}

function scaleOf(linear: Linear): bigint {
  const { factor } = wholeTerms(linear);
  return linear.terms.size === 0 ? linear.constant.d : commonScale([factor, linear.constant]);
}

/** Where the curve has a value: everywhere, or from its first point to its last. */
function within(
  { points, beyond }: Curve,
  scale: bigint,
  at: Node,
  of: NumberForm,
): Partial<NumberForm['presence']> {
  if (beyond === 'hold') return {};
  const first = -floor((points[0] as Point).at.mul(new Fraction(scale)).neg());
  const last = floor((points.at(-1) as Point).at.mul(new Fraction(scale)));
  const inside = (low: Logical, high: Logical): Logical =>
    and(
      first <= at.least ? truth(true).certain : lessOrSame(Number(first), low),
      last >= at.most ? truth(true).certain : lessOrSame(high, Number(last)),
    );
  const sure = and(of.presence.sure, inside(at.low, at.high));
  return {
    sure,
    maybe: and(of.presence.maybe, inside(at.high, at.low)),
    known: and(of.presence.known, sure),
  };
}

interface Lines {
  readonly scale: bigint;
  /** `value × scale = start + slope × at`, up to and including `until`. */
  readonly parts: readonly { readonly start: bigint; readonly slope: bigint; readonly until: bigint }[];
  readonly values: readonly bigint[];
  readonly first: bigint;
}

function linesOf(points: readonly Point[], atScale: bigint): Lines {
  const wide = new Fraction(atScale);
  const parts = points.slice(1).map((to, index) => {
    const from = points[index] as Point;
    const slope = to.value.sub(from.value).div(to.at.sub(from.at)).div(wide);
    return { start: from.value.sub(slope.mul(from.at).mul(wide)), slope, until: floor(to.at.mul(wide)) };
  });
  const scale = commonScale([
    ...parts.flatMap(({ start, slope }) => [start, slope]),
    ...points.map(({ value }) => value),
  ]);
  return {
    scale,
    parts: parts.map(({ start, slope, until }) => ({
      start: wholeOf(start, scale),
      slope: wholeOf(slope, scale),
      until,
    })),
    values: points.map(({ value }) => wholeOf(value, scale)),
    first: floor((points[0] as Point).at.mul(wide)),
  };
}

/** The value at one place; beyond the ends that of the nearest point. */
function valueAt(at: Logical, { parts, values, first }: Lines): Logical {
  const branches: Logical[] = [lessOrSame(at, Number(first)), Number(values[0])];
  for (const { start, slope, until } of parts) {
    branches.push(lessOrSame(at, Number(until)), sum([times(Number(slope), at), Number(start)]));
  }
  return { if: [...branches, Number(values.at(-1))] };
}

function valueNode(
  points: readonly Point[],
  lines: Lines,
  at: Node,
): Pick<Node, 'low' | 'high' | 'least' | 'most'> {
  const { values } = lines;
  const least = values.reduce((a, b) => (b < a ? b : a));
  const most = values.reduce((a, b) => (b > a ? b : a));
  const rising = points.every(
    ({ value }, index) => index === 0 || value.compare((points[index - 1] as Point).value) >= 0,
  );
  const falling = points.every(
    ({ value }, index) => index === 0 || value.compare((points[index - 1] as Point).value) <= 0,
  );
  const [start, end] = [valueAt(at.low, lines), valueAt(at.high, lines)];
  if (rising) return { low: start, high: end, least, most };
  if (falling) return { low: end, high: start, least, most };
  const between = lines.parts.slice(0, -1).map(({ until }, index) => {
    // Strictly below the high end: at the end itself the value there is read anyway, exactly.
    const touched = and(lessOrSame(at.low, Number(until)), less(Number(until), at.high));
    return { touched, value: Number(values[index + 1]) };
  });
  const side = (join: typeof lowest, otherwise: bigint): Logical =>
    join([start, end, ...between.map(({ touched, value }) => either(touched, value, Number(otherwise)))]);
  return { low: side(lowest, most), high: side(highest, least), least, most };
}

function reachOf({ parts }: Lines, at: Node): bigint {
  const far = -at.least > at.most ? -at.least : at.most;
  const most = (a: bigint, b: bigint): bigint => (b > a ? b : a);
  return parts.reduce(
    (reach, { start, slope }) =>
      most(reach, (slope < 0n ? -slope : slope) * far + (start < 0n ? -start : start)),
    0n,
  );
}
