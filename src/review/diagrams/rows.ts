import type { Logic } from '../../logic/logic.ts';
import type { Logical } from '../../logic/operators.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import { Tracer } from '../cells/tracer.ts';
import { inputsBehind } from '../observations-behind.ts';
import { TooManyPieces, type Diagram } from './diagrams.ts';
import { emptyInputs, type Space } from './space.ts';
import { piecesOf, type Variable } from './variables.ts';

/** A logic, and the protocol whose limits it reads. */
export interface Reckons {
  readonly logic: Logic;
  readonly protocol: Protocol;
}

/** So many rows are walked along for one comparison. */
const mostRows = 60_000;

/**
 * A comparison of numbers that are reckoned with, as a function of the set: it is walked along the last of them, from one turn of
 * the truth to the next, once for each value of the others.
 */
export function rowsOf(comparison: Logical, { logic, protocol }: Reckons, space: Space): Diagram {
  const owners = new Set(inputsBehind(logic, [comparison]).map(({ owner }) => owner));
  const asked = space.variables.flatMap(({ observation }, place) =>
    owners.has(observation.name) ? [place] : [],
  );
  const reckoned = asked.filter((place) => isReckoned(space, place));
  const others = asked.filter((place) => !isReckoned(space, place));
  const along = reckoned.at(-1) as number;
  const across = reckoned.slice(0, -1);
  const rows = [...across, ...others].reduce((all, place) => all * piecesOf(variableAt(space, place)), 1);
  const isSeveral = others.some((place) => variableAt(space, place).observation.kind === 'several');
  if (rows > mostRows || isSeveral) throw new TooManyPieces();
  const walk = new Walk(comparison, { logic, protocol }, space, along);
  const { store } = space;
  const below = (places: readonly number[]): Diagram => {
    const [place, ...rest] = places;
    if (place === undefined) return walk.row();
    const pieces = [...Array(piecesOf(variableAt(space, place))).keys()];
    const kids = pieces.map((piece) => {
      walk.put(place, piece);
      return below(rest);
    });
    return store.node(place, pieces, kids);
  };
  return eachOf(others, space, walk, () => below(across));
}

const variableAt = ({ variables }: Space, place: number): Variable => variables[place] as Variable;

const isReckoned = (space: Space, place: number): boolean =>
  space.isStepwise(variableAt(space, place).observation.name);

/** One function for each combination of pieces of some variables, put together. */
function eachOf(places: readonly number[], space: Space, walk: Walk, make: () => Diagram): Diagram {
  const [place, ...rest] = places;
  if (place === undefined) return make();
  const { store } = space;
  const count = piecesOf(variableAt(space, place));
  let all = store.no;
  for (let piece = 0; piece < count; piece += 1) {
    walk.put(place, piece);
    const is = eachOf(rest, space, walk, make);
    const here = store.node(
      place,
      [...Array(count).keys()],
      [...Array(count).keys()].map((each) => (each === piece ? store.yes : store.no)),
    );
    all = store.or(all, store.and(here, is));
  }
  return all;
}

/** A walk along one variable while the others stand still. */
class Walk {
  readonly #space: Space;
  readonly #tracer: Tracer;
  readonly #ask: () => readonly [number, number];
  readonly #inputs: Float64Array;
  readonly #slopes: Float64Array;
  readonly #along: number;
  readonly #logic: Logic;

  constructor(comparison: Logical, { logic, protocol }: Reckons, space: Space, along: number) {
    [this.#space, this.#along, this.#logic] = [space, along, logic];
    this.#tracer = new Tracer(logic, [comparison]);
    this.#ask = this.#tracer.asker(comparison);
    this.#inputs = emptyInputs(logic, protocol);
    const { name } = variableAt(space, along).observation;
    this.#slopes = Float64Array.from(logic.inputs, ({ owner, part }) =>
      owner === name && (part === 'low' || part === 'high') ? 1 : 0,
    );
  }

  put(place: number, piece: number): void {
    this.#space.write(this.#inputs, this.#logic, place, piece);
  }

  row(): Diagram {
    const { store } = this.#space;
    const { values, lacks } = variableAt(this.#space, this.#along);
    const [ends, kids] = [[] as number[], [] as Diagram[]];
    this.#begin(0, this.#slopes);
    let reach = this.#tracer.run(this.#tracer.steps, 0);
    for (let at = 0; at < values;) {
      const end = Math.min(at + reach, values) - 1;
      kids.push(store.leaf(this.#ask()[0]));
      ends.push(end);
      if (end + 1 < values) reach = this.#tracer.run(this.#tracer.steps, end + 1 - at);
      at = end + 1;
    }
    lacks.forEach((_, index) => {
      this.#begin(values + index, new Float64Array(this.#slopes.length));
      this.#tracer.run(this.#tracer.steps, 0);
      kids.push(store.leaf(this.#ask()[0]));
      ends.push(values + index);
    });
    return store.node(this.#along, ends, kids);
  }

  #begin(piece: number, slopes: Float64Array): void {
    this.put(this.#along, piece);
    this.#tracer.load(this.#inputs, slopes);
  }
}
