import type { Compiled } from '../../outcome/compile.ts';
import type { Bounds, SeriesFacts } from '../../series/bounds.ts';
import { readerOf } from '../../series/protocol-to-reader.ts';
import type { Pair } from '../../series/reader.ts';
import { seriesToBounds } from '../../series/series-to-bounds.ts';
import type { Given, GivenSet, Observed, Series } from '../../series/series.ts';
import { axisNamed } from './axes-of.ts';
import { axisCuts, lowestClash, lowestHigher } from './axis-cuts.ts';
import type { Axis } from './plane.ts';

/** A stretch of one column in which all numbers that logic reads are constant or move by step. Both ends included. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
  /** What stretches of other columns have, too, whose numbers move alike. */
  readonly key: string;
}

/** The numbers that logic reads at the start of a stretch, and how they change from step to step along it. */
export interface Inputs {
  readonly start: Float64Array;
  readonly slopes: Float64Array;
}

export interface StretchInputs {
  readonly narrow: Inputs;
  /** The very same where nothing is in doubt. */
  readonly wide: Inputs;
  readonly refused: readonly string[];
}

/** What was found out about the stretches of one key. */
interface Form {
  readonly column: number;
  readonly from: number;
  readonly bounds: Bounds;
  readonly refused: readonly string[];
  along: readonly Float64Array[] | null;
  across: readonly Float64Array[] | null;
}

const given: Given = { text: '', moved: false };

/**
 * The plane as sets are read, before any logic: columns of one axis, cut along the other. A few sets are read in each part of it,
 * and the rest is known from them, because nothing bends inside a part.
 */
export class Ground {
  readonly columnCuts: readonly number[];
  readonly #compiled: Compiled;
  readonly #held: Series;
  readonly #set: GivenSet;
  readonly #names: readonly [string, string];
  readonly #alongCuts: readonly number[];
  readonly #pairs: readonly Pair[];
  readonly #forms = new Map<string, Form>();

  /** `names`: the observation of the columns, and the one along them. */
  constructor(compiled: Compiled, held: Series, names: readonly [string, string]) {
    this.#compiled = compiled;
    this.#names = names;
    this.#set = withoutAxes(held, names);
    const standing = new Map([...held.standing].filter(([name]) => !names.includes(name)));
    this.#held = { ...held, standing };
    const { facts } = this.#boundsOf(this.#set);
    const asked = {
      protocol: compiled.protocol,
      axes: names,
      held: this.#set,
      facts,
      probes: this.#probes(),
    };
    const cuts = names.map((name) => axisCuts(name, asked));
    [this.columnCuts, this.#alongCuts] = cuts as [number[], number[]];
    this.#pairs = readerOf(compiled.protocol).contradictions.filter(
      ({ lower, higher }) => names.includes(lower.name) && names.includes(higher.name),
    );
  }

  /** Whether the two axes can contradict each other: the edge of that then runs askew. */
  get askew(): boolean {
    return this.#pairs.length > 0;
  }

  /** With everything held, and nothing on the axes. */
  heldBounds(): Bounds {
    return this.#boundsOf(this.#set);
  }

  stretches(column: number, low: number, high: number): Stretch[] {
    const edges = this.#pairs.map((pair) =>
      pair.lower.name === this.#names[0] ? lowestHigher(pair, column) : lowestClash(pair, column),
    );
    const cuts = [...this.#alongCuts, ...edges].filter((at) => at > low && at <= high);
    const starts = [low, ...new Set(cuts.sort((left, right) => left - right))];
    const columnPart = this.columnCuts.filter((at) => at <= column).length;
    return starts.map((from, index) => {
      const part = this.#alongCuts.filter((at) => at <= from).length;
      const sides = edges.map((edge) => (from >= edge ? 1 : 0)).join('');
      return { from, to: (starts[index + 1] ?? high + 1) - 1, key: `${columnPart} ${part} ${sides}` };
    });
  }

  inputs(column: number, { from, to, key }: Stretch): StretchInputs {
    const form = this.#forms.get(key) ?? this.#newForm(column, from, key);
    if (!form.along && to > from)
      form.along = perStep(this.#bounds(column, to), this.#bounds(column, from), to - from);
    const [narrow, wide] = this.#starts(form, column, from);
    const still = new Float64Array(narrow.length);
    const [first, second] = form.along ?? [still, still];
    const one = { start: narrow, slopes: first as Float64Array };
    return {
      narrow: one,
      wide: wide === narrow ? one : { start: wide, slopes: second as Float64Array },
      refused: form.refused,
    };
  }

  /** How the numbers of a stretch change from its column to the next, where that is of the same part. */
  across(column: number, { from, key }: Stretch): readonly Float64Array[] {
    const form = this.#forms.get(key) as Form;
    form.across ??= perStep(this.#bounds(column + 1, from), this.#bounds(column, from), 1);
    return form.across;
  }

  #starts(form: Form, column: number, from: number): readonly [Float64Array, Float64Array] {
    const [right, up] = [column - form.column, from - form.from];
    if (right === 0 && up === 0) return pairOf(form.bounds);
    if ((right === 0 || form.across) && (up === 0 || form.along)) return moved(form, right, up);
    const bounds = this.#bounds(column, from);
    const starts = pairOf(bounds);
    if (right !== 0 && (up === 0 || form.along)) {
      const beside = moved({ ...form, across: null }, 0, up);
      form.across = starts.map((start, index) =>
        start.map((value, at) => (value - (beside[index]?.[at] as number)) / right),
      );
    }
    return starts;
  }

  /** Each axis low against the other high, and both in the middle. */
  #probes(): readonly SeriesFacts[] {
    const [column, along] = this.#names.map((name) => axisNamed(name, this.#compiled.protocol).plausible) as [
      Axis['plausible'],
      Axis['plausible'],
    ];
    const middle = ([low, high]: Axis['plausible']): number => Math.floor((low + high) / 2);
    const points = [
      [column[0], along[1]],
      [column[1], along[0]],
      [middle(column), middle(along)],
    ] as const;
    return points.map(([right, up]) => this.#bounds(right, up).facts);
  }

  #newForm(column: number, from: number, key: string): Form {
    const bounds = this.#bounds(column, from);
    const refused = this.#names.filter((name) => bounds.facts.present.get(name)?.state === 'refused');
    const form: Form = { column, from, bounds, refused, along: null, across: null };
    this.#forms.set(key, form);
    return form;
  }

  #bounds(column: number, along: number): Bounds {
    const at = (value: number): Observed => ({ kind: 'number', low: value, high: value, value, given });
    const observed = new Map(this.#set.observed);
    observed.set(this.#names[0], at(column)).set(this.#names[1], at(along));
    return this.#boundsOf({ ...this.#set, observed });
  }

  #boundsOf(set: GivenSet): Bounds {
    return seriesToBounds(this.#compiled.protocol, { ...this.#held, sets: [set] });
  }
}

const pairOf = ({ narrow, wide }: Bounds): readonly [Float64Array, Float64Array] => [narrow, wide];

/** The change from one set to another so many steps away, at one step. */
function perStep(to: Bounds, from: Bounds, steps: number): readonly Float64Array[] {
  const starts = pairOf(from);
  return pairOf(to).map((end, index) =>
    end.map((value, at) => (value - (starts[index]?.[at] as number)) / steps),
  );
}

function moved(
  { bounds, across, along }: Form,
  right: number,
  up: number,
): readonly [Float64Array, Float64Array] {
  const go = (start: Float64Array, index: number): Float64Array =>
    start.map((value, at) => value + right * (across?.[index]?.[at] ?? 0) + up * (along?.[index]?.[at] ?? 0));
  const narrow = go(bounds.narrow, 0);
  return [narrow, bounds.wide === bounds.narrow ? narrow : go(bounds.wide, 1)];
}

/** The one set that is held, with nothing on the axes. */
function withoutAxes({ sets, at, atText }: Series, names: readonly string[]): GivenSet {
  if (sets.length > 1) throw new RangeError('a plane is drawn of one set; earlier sets cannot be held');
  const set: GivenSet = sets[0] ?? { at, atText, observed: new Map() };
  return { ...set, observed: new Map([...set.observed].filter(([name]) => !names.includes(name))) };
}
