import type { Logic } from '../../logic/logic.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import { SameLogic } from '../guards/same-logic.ts';
import { clustersOf } from './clusters.ts';
import { couplingsOf } from './couplings.ts';
import { Diagrams, type Diagram } from './diagrams.ts';
import { partOf } from './input-diagrams.ts';
import { validSets } from './valid-sets.ts';
import { variablesOf, type Variable } from './variables.ts';

/**
 * Every set in which each observation has one value, or none; and the functions of it that were made so far. Of one protocol, or of several that
 * are asked about the same sets: then `protocol` holds what all of them read.
 */
export class Space {
  readonly protocol: Protocol;
  readonly store = new Diagrams();
  readonly same = new SameLogic();
  readonly variables: readonly Variable[];
  /** By observation; of one choice of a several by `name:choice`. */
  readonly placeOf: ReadonlyMap<string, number>;
  /** What was worked out, by how it is built. */
  readonly known = new Map<number, Diagram>();
  /** What must all hold for a set to be one: nothing contradicts, and every value is possible at the age. */
  readonly valid: readonly Diagram[];
  /** The place of the number that most of the last cluster is reckoned from; −1 where nothing is reckoned with. */
  readonly lastHub: number;
  readonly #free = new Map<string, Diagram>();

  constructor(protocol: Protocol, asked: readonly Protocol[] = [protocol]) {
    this.protocol = protocol;
    this.variables = variablesOf(asked);
    this.placeOf = new Map(
      this.variables.map(({ observation: { name }, member }, place) => [
        member === null ? name : `${name}:${member}`,
        place,
      ]),
    );
    this.valid = validSets(this);
    this.lastHub = lastHubOf(asked, this.variables);
  }

  /** Whether each step of an observation is a piece of its own. */
  isStepwise(name: string): boolean {
    const variable = this.variables[this.placeOf.get(name) ?? -1];
    return variable?.observation.kind === 'number' && variable.starts === null;
  }

  /** A truth that no single set decides: a question of its own, asked after all others. */
  free(of: string): Diagram {
    const known = this.#free.get(of);
    if (known !== undefined) return known;
    const { no, yes } = this.store;
    const made = this.store.node(this.variables.length + this.#free.size, [0, 1], [no, yes]);
    this.#free.set(of, made);
    return made;
  }

  /** Puts one piece of a variable among the numbers that a logic reads. A several is not reckoned with, and has none. */
  write(into: Float64Array, { inputs }: Logic, place: number, piece: number): void {
    const variable = this.variables[place] as Variable;
    const lack = variable.lacks[piece - variable.values] ?? null;
    inputs.forEach((input, at) => {
      if (input.owner === variable.observation.name) into[at] = partOf(input, variable, piece, lack);
    });
  }
}

/** The numbers that the logic of a protocol reads, with nothing of any set in them yet. */
export const emptyInputs = ({ inputs }: Logic, { limits }: Protocol): Float64Array =>
  Float64Array.from(inputs, ({ of, owner }) => (of === 'limit' ? (limits.get(owner)?.value ?? 0) : 0));

function lastHubOf(protocols: readonly Protocol[], variables: readonly Variable[]): number {
  const clusters = clustersOf(protocols, [...couplingsOf(protocols).keys()]);
  const of = variables.map(({ observation }) => clusters.get(observation.name));
  const last = of.findLast((cluster) => cluster !== undefined);
  return last === undefined ? -1 : of.indexOf(last);
}
