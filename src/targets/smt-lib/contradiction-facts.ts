import type { Protocol } from '../../protocol/protocol.ts';
import { wholePair } from '../../vocabulary/whole-pair.ts';
import { smt, type Smt } from './smt.ts';

/** What is known of two observations never contradicts: some pair of values inside their ranges can be right. */
export function contradictionFacts(protocol: Protocol): Smt[] {
  return protocol.contradictions.flatMap(({ lower, higher, mayBeEqual }) => {
    const [below, above] = [protocol.observations.get(lower), protocol.observations.get(higher)];
    // Values of one set are held against each other when they are given; a standing fact may be older than that.
    if (!below || !above || below.standing || above.standing) return [];
    const { scale, factor, shift } = wholePair(below, above);
    const left = times(scale, `${lower}:low`);
    const right = times(factor, `${higher}:high`);
    const apart = shift === 0 ? right : smt`(+ ${right} ${shift})`;
    const order = mayBeEqual ? smt`(<= ${left} ${apart})` : smt`(< ${left} ${apart})`;
    return [smt`(=> (and ${`${lower}:known`} ${`${higher}:known`}) ${order})`];
  });
}

const times = (factor: number, name: string): Smt =>
  factor === 1 ? smt`${name}` : smt`(* ${factor} ${name})`;
