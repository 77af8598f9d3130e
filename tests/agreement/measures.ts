import { drawCondition, observationsOnly, ownQuantity } from './conditions.ts';
import type { Draw } from './draw.ts';
import { decimal, type Subject } from './observations.ts';
import {
  cutOf,
  itself,
  ownDimension,
  summed,
  varied,
  written,
  type Dimension,
  type Quantity,
  type Stock,
} from './quantities.ts';

/** A measure as it stands in the file, and what is known of its number. */
interface Made {
  readonly measure: Record<string, unknown>;
  readonly quantity: Quantity;
}
type Maker = (draw: Draw, stock: Stock, name: string) => Made | null;

const unitOf = (stock: Stock, dimension: Dimension): Record<string, string> =>
  dimension === 'minutes' ? { unit: 'min' } : dimension === 'own' && stock.unit ? { unit: stock.unit } : {};

/** Sums: of observations, limits and measures, each as often as it likes, so that some of them cancel. */
const sum: Maker = (draw, stock, name) => {
  const dimension = ownDimension(stock);
  const [first, second] = [draw.one(varied(stock, dimension)), draw.one(varied(stock, dimension))];
  const [a, b] = [first.name, second.name];
  const shapes = [
    [`${a} - ${b}`, 1, -1, 0],
    [`${a} + ${b}`, 1, 1, 0],
    [`(${a} + 2 * ${b}) / 3`, 1 / 3, 2 / 3, 0],
    [`-${a} + ${b} * 2 + 1`, -1, 2, 1],
    [`0.5 * (${a} - (${b} - 3))`, 0.5, -0.5, 1.5],
    [`${a} * 3 - ${b} / 4`, 3, -0.25, 0],
  ] as const;
  const [formula, times, others, constant] = draw.one(shapes);
  const quantity = summed(
    stock,
    name,
    dimension,
    [
      [times, first],
      [others, second],
    ],
    constant,
  );
  return { measure: { formula, ...unitOf(stock, dimension) }, quantity };
};

/** Quotients: the divisor is always above zero. */
const quotient: Maker = (draw, stock, name) => {
  const own = varied(stock, ownDimension(stock));
  const divisors = own.filter(({ low }) => low > 0.01);
  if (!divisors.length) return null;
  const [above, below] = [draw.one(own), draw.one(divisors)];
  const formula = draw.one([
    `${above.name} / ${below.name}`,
    `100 * ${above.name} / ${below.name}`,
    `${above.name} / (2 * ${below.name})`,
  ]);
  const factor = formula.startsWith('100') ? 100 : formula.endsWith(')') ? 0.5 : 1;
  const ends = [above.low, above.high]
    .flatMap((one) => [one / below.low, one / below.high])
    .map((one) => one * factor);
  return { measure: { formula }, quantity: itself(name, 'plain', Math.min(...ends), Math.max(...ends)) };
};

/** Products, where there is no unit. */
const product: Maker = (draw, stock, name) => {
  if (stock.unit) return null;
  const own = varied(stock, 'plain').filter(({ high }) => high < 200);
  const [a, b] = [draw.one(own), draw.one(own)];
  const ends = [a.low, a.high].flatMap((one) => [one * b.low, one * b.high]);
  const formula = `${a.name} * ${b.name} - 1`;
  return {
    measure: { formula },
    quantity: itself(name, 'plain', Math.min(...ends) - 1, Math.max(...ends) - 1),
  };
};

/** Rising places inside the range of a quantity, ends included. */
function places(draw: Draw, of: Quantity, count: number): readonly number[] {
  const { subject } = of;
  const [low, high, grid] = subject
    ? [subject.low, subject.high, subject.perUnit]
    : [Math.ceil(of.low * 2), Math.min(Math.floor(of.high * 2), Math.ceil(of.low * 2) + 30), 2];
  const all = Array.from({ length: Math.max(0, high - low + 1) }, (_, index) => low + index);
  return draw.some(all, count, count).map((place) => Number((place / grid).toFixed(2)));
}

const curve: Maker = (draw, stock, name) => {
  // Over a measure only where it is surely no quotient: there a curve would be refused.
  const of = ownQuantity(stock, draw);
  if (!of?.subject) return null;
  const at = places(draw, of, draw.whole(2, 4));
  if (at.length < 2) return null;
  const points = at.map((place) => [place, draw.whole(0, 24) / 2]);
  const covers = of.subject && at[0] === of.low && at.at(-1) === of.high;
  const beyond = covers && draw.chance(60) ? {} : { beyond: draw.one(['missing', 'hold']) };
  const values = points.map(([, value = 0]) => value);
  const dimension = draw.chance(70) ? ownDimension(stock) : 'plain';
  const quantity = itself(name, dimension, Math.min(...values), Math.max(...values));
  return { measure: { curve: { of: of.name, points, ...beyond }, ...unitOf(stock, dimension) }, quantity };
};

function bandsOf(draw: Draw, stock: Stock, of: Quantity): Record<string, unknown>[] {
  const upper = draw.chance(50);
  const cuts = [...new Set(Array.from({ length: draw.whole(1, 3) }, () => cutOf(draw, of, upper)))].sort(
    (a, b) => a - b,
  );
  const bands = cuts.map((cut) => ({
    [upper ? 'at_most' : 'below']: written(draw, stock, of.dimension, cut),
    points: draw.whole(-1, 4),
  }));
  return [...bands, { points: draw.whole(0, 5) }];
}

function pointsOf(draw: Draw, { choices }: Subject): Record<string, number> {
  const listed = draw.some(choices, 1, choices.length);
  return Object.fromEntries(listed.map((choice) => [choice, draw.whole(0, 4)]));
}

const score: Maker = (draw, stock, name) => {
  const numbers = [...varied(stock, 'own'), ...varied(stock, 'plain'), ...varied(stock, 'minutes')].filter(
    (each) => !(each.name in stock.limits),
  );
  const choices = stock.subjects.filter(({ kind }) => kind === 'choice' || kind === 'yes_no');
  const parts = draw.some<Quantity | Subject>([...numbers, ...choices], 1, 3);
  const scored = parts.map(
    (part) => [part.name, 'kind' in part ? pointsOf(draw, part) : bandsOf(draw, stock, part)] as const,
  );
  const bounds = scored.map(([, points]) =>
    Array.isArray(points) ? points.map((band) => Number(band.points)) : [0, ...Object.values(points)],
  );
  const [low, high] = [bounds.map((each) => Math.min(...each)), bounds.map((each) => Math.max(...each))].map(
    (each) => each.reduce((a, b) => a + b, 0),
  );
  return {
    measure: { score: Object.fromEntries(scored) },
    quantity: itself(name, 'plain', low ?? 0, high ?? 0),
  };
};

/** The hull of several quantities. */
const hull = (name: string, dimension: Dimension, parts: readonly Quantity[]): Quantity =>
  itself(
    name,
    dimension,
    Math.min(...parts.map(({ low }) => low)),
    Math.max(...parts.map(({ high }) => high)),
  );

const choose: Maker = (draw, stock, name) => {
  const dimension = draw.chance(60) ? ownDimension(stock) : draw.one<Dimension>(['plain', 'minutes']);
  const usable = stock.quantities.filter((each) => each.dimension === dimension);
  if (!usable.length) return null;
  const uses = Array.from({ length: draw.whole(2, 3) }, () => draw.one(usable));
  const entries = uses.map((use, index) =>
    index === uses.length - 1
      ? { use: use.name }
      : {
          when: drawCondition(draw, stock, { ...observationsOnly, measures: draw.chance(25) }, 1),
          use: use.name,
        },
  );
  return { measure: { choose: entries, ...unitOf(stock, dimension) }, quantity: hull(name, dimension, uses) };
};

const firstKnown: Maker = (draw, stock, name) => {
  const dimension = draw.chance(60) ? ownDimension(stock) : draw.one<Dimension>(['plain', 'minutes']);
  const usable = stock.quantities.filter(
    (each) => each.dimension === dimension && !(each.name in stock.limits),
  );
  if (usable.length < 2) return null;
  const parts = draw.some(usable, 2, 3);
  const names = parts.map((part) => part.name);
  return {
    measure: { first_known: draw.chance(50) ? names : names.toReversed(), ...unitOf(stock, dimension) },
    quantity: hull(name, dimension, parts),
  };
};

const lookBackKinds = [
  'highest',
  'lowest',
  'average',
  'earliest',
  'latest',
  'change',
  'count',
  'minutes_since',
  'held',
] as const;

/** How a look back's number can lie, from the observation that it looks at. */
function reachOf(kind: string, stock: Stock, name: string, subject: Subject | null): Quantity {
  if (kind === 'count') return itself(name, 'plain', 0, 4);
  if (!subject || kind === 'minutes_since' || kind === 'held') return itself(name, 'minutes', 0, 480);
  const [low, high] = [decimal(subject, subject.low), decimal(subject, subject.high)];
  return kind === 'change'
    ? itself(name, ownDimension(stock), low - high, high - low)
    : itself(name, ownDimension(stock), low, high);
}

const lookBack: Maker = (draw, stock, name) => {
  const kind = draw.chance(12) ? 'held' : draw.one(lookBackKinds);
  const any = kind === 'count' || kind === 'minutes_since';
  const subjects = stock.subjects.filter(
    (each) => (any || each.kind === 'number') && each.role !== 'standing',
  );
  const subject = subjects.length ? draw.one(subjects) : null;
  if (!subject) return null;
  const over = { over: draw.one(['30 min', '1 h', '2 h', '240 min', '8 h']) };
  const set = draw.chance(25) ? { present_set: draw.one(['left_out', 'included']) } : {};
  const where = draw.chance(30)
    ? { where: drawCondition(draw, stock, observationsOnly, draw.whole(0, 1)) }
    : {};
  const quantity = reachOf(kind, stock, name, kind === 'held' ? null : subject);
  if (kind !== 'held')
    return {
      measure: { [kind]: subject.name, ...over, ...set, ...where, ...unitOf(stock, quantity.dimension) },
      quantity,
    };
  const held = drawCondition(draw, stock, observationsOnly, draw.whole(0, 1));
  const gap = draw.chance(60) ? { longest_gap: draw.one(['30 min', '1 h', '90 min']) } : {};
  return { measure: { held, ...over, ...gap, ...unitOf(stock, 'minutes') }, quantity };
};

const makers: readonly Maker[] = [
  sum,
  sum,
  quotient,
  product,
  curve,
  curve,
  score,
  score,
  choose,
  firstKnown,
];

/** Adds one measure to the stock, unless nothing fits. */
export function drawMeasure(draw: Draw, stock: Stock): void {
  const name = `m_${Object.keys(stock.measures).length + 1}`;
  const made = (stock.series && draw.chance(55) ? lookBack : draw.one(makers))(draw, stock, name);
  if (!made) return;
  const blind = draw.chance(12) ? { not_reliable_when: drawCondition(draw, stock, observationsOnly, 0) } : {};
  stock.measures[name] = { ...made.measure, ...blind };
  stock.quantities.push(made.quantity);
}
