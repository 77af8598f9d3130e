import { appliesFrom, levelFrom, stateFrom } from '../../outcome/answers.ts';
import type { Compiled } from '../../outcome/compile.ts';
import type { Series } from '../../series/series.ts';
import { axisNamed } from './axes-of.ts';
import { columnsToCells, type Run } from './columns-to-cells.ts';
import { Ground, type Stretch } from './ground.ts';
import { heldInWords } from './held-in-words.ts';
import type { Axis, Plane, PlaneAnswer } from './plane.ts';
import { movingPlaces } from './moving-places.ts';
import { Tracer } from './tracer.ts';
import { wantedOf } from './wanted.ts';

/** What is on the axes, and what is held. */
export interface PlaneAsked {
  /** Two observations that are numbers: along the bottom, and up the side. */
  readonly axes: readonly [string, string];
  /** One set, standing facts and limits; what it says of the axes is left out. What it does not say is missing. */
  readonly held: Series;
}

/**
 * The exact partition of a plane: every point of the two axes, as the evaluator would answer it with everything else held.
 *
 * A column of points is walked by jumps. At one point logic is worked out once, together with how many steps every comparison in it
 * keeps its truth; the walk goes on at the next edge. Columns that no comparison couples with the other axis are jumped over alike.
 */
export function planeOf(compiled: Compiled, { axes, held }: PlaneAsked): Plane {
  const [x, y] = axes.map((name) => axisNamed(name, compiled.protocol)) as [Axis, Axis];
  if (x.name === y.name) throw new RangeError('a plane has two axes');
  // The finer axis is the one that is walked by jumps.
  const isTurned = stepsOf(x) > stepsOf(y);
  const [across, along] = isTurned ? [y, x] : [x, y];
  const ground = new Ground(compiled, held, [across.name, along.name]);
  const walk = new Walk(compiled, ground, across, along);
  const cells = columnsToCells(walk.columns());
  const { protocol } = compiled;
  return {
    protocol: {
      name: protocol.name,
      title: protocol.title,
      edition: protocol.edition,
      digest: protocol.digest,
    },
    levels: protocol.ladder.levels.map(({ name, title }) => ({ name, title })),
    rules: protocol.rules.map(({ name, title }) => ({ name, title })),
    x,
    y,
    held: heldInWords(compiled, ground.heldBounds(), axes),
    answers: walk.answers.map((each) => ({
      ...each,
      refused: axes.filter((name) => each.refused.includes(name)),
    })),
    cells: cells.map(({ across: columns, along: steps, answer }) =>
      isTurned ? { x: steps, y: columns, answer } : { x: columns, y: steps, answer },
    ),
  };
}

const stepsOf = ({ possible: [low, high] }: Axis): number => high - low;

/** Everything that is walked with, from column to column. */
class Walk {
  readonly answers: PlaneAnswer[] = [];
  readonly #known = new Map<string, number>();
  readonly #compiled: Compiled;
  readonly #ground: Ground;
  readonly #across: Axis;
  readonly #along: Axis;
  readonly #narrow: Tracer;
  readonly #wide: Tracer;
  readonly #steps: { readonly moving: readonly number[]; readonly still: readonly number[] };
  /** Where the readers of a protocol look for each step; and what they read, narrow and wide. */
  readonly #places: readonly number[];
  readonly #results: readonly [Float64Array, Float64Array];
  /** Whether every column may differ from the next. */
  readonly #coupled: boolean;

  constructor(compiled: Compiled, ground: Ground, across: Axis, along: Axis) {
    [this.#compiled, this.#ground, this.#across, this.#along] = [compiled, ground, across, along];
    const wanted = wantedOf(compiled);
    const { logic, evaluator } = compiled;
    this.#places = logic.steps.map(({ name }) => evaluator.slotOf(name));
    this.#results = [new Float64Array(evaluator.size), new Float64Array(evaluator.size)];
    this.#narrow = new Tracer(logic, wanted);
    this.#wide = new Tracer(logic, wanted);
    const [columns, rows] = [across, along].map(({ name }) => movingPlaces(name, compiled)) as [
      Set<number>,
      Set<number>,
    ];
    this.#steps = this.#narrow.changingWith(rows);
    this.#coupled = ground.askew || this.#narrow.couples(columns, rows);
  }

  /** Each column that may differ from the one before, with the last column that is like it. */
  *columns(): Generator<{ readonly from: number; readonly to: number; readonly runs: readonly Run[] }> {
    const [low, high] = this.#across.possible;
    const [bottom, top] = this.#along.possible;
    const cuts = [...this.#ground.columnCuts, high + 1];
    for (let column = low; column <= high;) {
      const end = (cuts.find((at) => at > column) as number) - column;
      const walked = { runs: [] as Run[], alike: this.#coupled ? 1 : end };
      for (const stretch of this.#ground.stretches(column, bottom, top)) this.#walk(column, stretch, walked);
      const to = column + Math.min(end, walked.alike) - 1;
      yield { from: column, to, runs: walked.runs };
      column = to + 1;
    }
  }

  #walk(column: number, stretch: Stretch, walked: { runs: Run[]; alike: number }): void {
    const { narrow, wide, refused } = this.#ground.inputs(column, stretch);
    const isOne = narrow === wide;
    const both = isOne
      ? ([[this.#narrow, narrow]] as const)
      : ([
          [this.#narrow, narrow],
          [this.#wide, wide],
        ] as const);
    for (const [tracer, { start, slopes }] of both) {
      tracer.load(start, slopes);
      tracer.run(this.#steps.still, 0);
    }
    let by = 0;
    let answer = -1;
    for (let from = stretch.from; from <= stretch.to;) {
      let reach = stretch.to - from + 1;
      for (const [tracer] of both) reach = Math.min(reach, tracer.run(this.#steps.moving, by));
      const second = isOne ? this.#narrow : this.#wide;
      const turned = both.filter(([tracer]) => tracer.hasTurned()).length > 0;
      if (turned || from === stretch.from) answer = this.#answer(this.#narrow, second, refused);
      push(walked.runs, from, from + reach - 1, answer);
      if (walked.alike > 1)
        walked.alike = Math.min(walked.alike, this.#alike(column, { ...stretch, from }, both));
      from += reach;
      by = reach;
    }
  }

  /** For how many columns, this one included, what was just asked is answered alike. */
  #alike(
    column: number,
    stretch: Stretch,
    both: readonly (readonly [Tracer, { readonly slopes: Float64Array }])[],
  ): number {
    const across = this.#ground.across(column, stretch);
    return both.reduce((least, [tracer, { slopes }], index) => {
      const inputs = tracer.values.slice(0, slopes.length);
      tracer.load(inputs, across[index] as Float64Array);
      const reach = tracer.run(tracer.steps, 0);
      tracer.load(inputs, slopes);
      tracer.run(this.#steps.still, 0);
      return Math.min(least, reach);
    }, Infinity);
  }

  #answer(first: Tracer, second: Tracer, refused: readonly string[]): number {
    const narrow = first.copyTo(this.#results[0], this.#places);
    const wide = second === first ? narrow : second.copyTo(this.#results[1], this.#places);
    const applies = appliesFrom(this.#compiled, narrow, wide);
    const level = applies === 'no' ? null : levelFrom(this.#compiled, narrow, wide);
    const readers = applies === 'no' ? [] : [...this.#compiled.rules.values()];
    const states = readers.map((each) => stateFrom(each, narrow, wide));
    const key = `${refused.join()} ${applies} ${level?.atLeast} ${level?.couldBe} ${level?.settled} ${states.join()}`;
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    this.#known.set(key, this.answers.length);
    return this.answers.push({ refused, applies, level, states }) - 1;
  }
}

function push(runs: Run[], from: number, to: number, answer: number): void {
  const last = runs.at(-1);
  if (last?.answer === answer) runs[runs.length - 1] = { ...last, to };
  else runs.push({ from, to, answer });
}
