import type { Input } from '../../logic/inputs.ts';
import type { Diagram, Diagrams } from './diagrams.ts';
import { stepsOf, type Lack, type Variable } from './variables.ts';

/** The variables of a protocol, with their places in the order. */
export interface Ordered {
  readonly variables: readonly Variable[];
  /** By observation; of one choice of a several by `name:choice`. */
  readonly placeOf: ReadonlyMap<string, number>;
}

/** One input of logic as a function of the set; null for what is no part of a single set. */
export function inputDiagram(input: Input, { variables, placeOf }: Ordered, store: Diagrams): Diagram | null {
  const place = placeOf.get(input.owner);
  const variable = place === undefined ? undefined : variables[place];
  if (input.of !== 'observation' || place === undefined || !variable) return null;
  const own = asksNumber(input)
    ? eachPiece(place, variable, (value, lack) => store.leaf(partOf(input, variable, value, lack)), store)
    : eachLack(place, variable, (lack) => store.leaf(partOf(input, variable, 0, lack)), store);
  if (variable.observation.kind !== 'several' || (input.part !== 'may' && input.part !== 'sure')) return own;
  const member = placeOf.get(`${input.owner}:${input.choice ?? ''}`) as number;
  const isIn = store.node(member, [0, 1], [store.no, store.yes]);
  return eachPiece(
    place,
    variable,
    (_, lack) => (lack ? store.leaf(partOf(input, variable, 0, lack)) : isIn),
    store,
  );
}

/** Whether an input depends on which value it is, not only on whether there is one. */
const asksNumber = ({ part, choice }: Input): boolean => part === 'low' || part === 'high' || choice !== null;

/** A function of one variable: what it is for each value, and for each lack. */
export function eachPiece(
  place: number,
  { values, lacks }: Variable,
  of: (value: number, lack: Lack | null) => Diagram,
  store: Diagrams,
): Diagram {
  const kids = [...Array(values).keys()].map((value) => of(value, null));
  kids.push(...lacks.map((lack) => of(-1, lack)));
  return store.node(place, [...kids.keys()], kids);
}

/** The same where all values are alike. */
function eachLack(
  place: number,
  { values, lacks }: Variable,
  of: (lack: Lack | null) => Diagram,
  store: Diagrams,
): Diagram {
  return store.node(
    place,
    [values - 1, ...lacks.map((_, index) => values + index)],
    [of(null), ...lacks.map(of)],
  );
}

/** What an input is for one piece. */
export function partOf(
  { part, choice }: Input,
  variable: Variable,
  value: number,
  lack: Lack | null,
): number {
  switch (part) {
    case 'low':
      return lack ? lack.range.low : stepsOf(variable, value).low;
    case 'high':
      return lack ? lack.range.high : stepsOf(variable, value).low;
    case 'known':
      return lack ? 0 : 1;
    case 'unobtainable':
      return lack?.unobtainable === true ? 1 : 0;
    case 'missing':
      return lack && !lack.assumed ? 1 : 0;
    case 'may':
      if (lack) return lack.choice === null || lack.choice === choice ? 1 : 0;
      return variable.observation.choices[value]?.choice === choice ? 1 : 0;
    default:
      return lack?.choice === choice && choice !== null ? 1 : 0;
  }
}
