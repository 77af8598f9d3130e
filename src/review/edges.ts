import Fraction from 'fraction.js';
import type { Document } from '../document/document.ts';
import { exactly } from '../outcome/amounts.ts';
import type { Compiled } from '../outcome/compile.ts';
import { absolute, compare, isNever, minus } from '../outcome/exact.ts';
import type { View } from '../outcome/view.ts';
import type { Path } from '../problems/place.ts';
import type { NumberComparison, NumberOperand, Operand, Protocol } from '../protocol/protocol.ts';
import { comparisonsIn, conditionsOf } from '../protocol/walk.ts';
import { placeWords } from './changes/making.ts';
import { stepOf } from './changes/steps.ts';

/** The edge of a comparison of numbers, or of a band: where it turns from holding to not holding. */
export interface Edge {
  /** In the words of the file: `rule systolic_too_low, when systolic at_most`. */
  readonly name: string;
  /**
   * On which side of it a view lies, within one step; null further away, and where the value is not known. On the side that the number
   * itself belongs to, less than a step; on the other, at most one.
   */
  readonly side: (view: View) => 'holds' | 'fails' | null;
}

/** Every edge that a set can lie on. Conditions inside a look back read sets one by one, and are left out. */
export function edgesOf(compiled: Compiled, document: Document): Edge[] {
  const { protocol } = compiled;
  const comparisons = conditionsOf(protocol).flatMap((condition) =>
    [...comparisonsIn(condition)].filter(
      (each): each is NumberComparison => each.kind === 'compare' && !inLookBack(each.path, protocol),
    ),
  );
  return [...comparisons, ...bandEnds(protocol)].map((each) => ({
    name: placeWords(each.path, document),
    side: sideOf(each, compiled),
  }));
}

function inLookBack([first, name]: Path, { measures }: Protocol): boolean {
  const how = first === 'measures' ? measures.get(String(name))?.how : undefined;
  return how !== undefined && 'over' in how;
}

type Compared = Pick<NumberComparison, 'how' | 'to' | 'path'> & { readonly subject: Operand };

/** A band reaches up to its end: it is one comparison. */
function bandEnds({ measures }: Protocol): Compared[] {
  return [...measures.values()].flatMap(({ how }) =>
    (how.kind === 'score' ? how.parts : []).flatMap((part) =>
      part.kind === 'bands'
        ? part.bands.flatMap(({ to, included }, index): Compared[] => {
            const key = included ? 'at_most' : 'below';
            return to ? [{ subject: part.of, how: key, to, path: [...part.path, index, key] }] : [];
          })
        : [],
    ),
  );
}

function sideOf({ subject, how, to }: Compared, compiled: Compiled): Edge['side'] {
  const { amounts, protocol } = compiled;
  const quantified = amounts.of(subject);
  const other = amounts.inUnitOf(to, quantified);
  const step = exactly(stepOf(subject, inOwnUnit(to, protocol), protocol));
  const sure = subject.kind === 'measure' ? amounts.sure(subject.name) : null;
  const included = how === 'at_most' || how === 'at_least';
  const upwards = how === 'above' || how === 'at_least';
  return (view) => {
    const [value, against] = [quantified.amount(view), other(view)];
    if (value.low !== value.high && compare(value.low, value.high) !== 0) return null;
    if (isNever(value.low) || isNever(against.low) || (sure && sure(view.result) === 0)) return null;
    const distance = minus(value.low, against.low);
    const sign = Math.sign(Number(distance.n));
    const holds = sign === 0 ? included : upwards === sign > 0;
    const steps = compare(absolute(distance), step);
    return steps < 0 || (steps === 0 && holds !== included) ? (holds ? 'holds' : 'fails') : null;
  };
}

/** What is compared with, as a number whose last place says what a step is. */
function inOwnUnit(to: Operand, { limits }: Protocol): NumberOperand {
  if (to.kind === 'number') return { ...to, unit: null };
  const limit = to.kind === 'limit' ? limits.get(to.name) : undefined;
  const value = limit ? new Fraction(limit.value).div(limit.stepsPerUnit) : new Fraction(1);
  return { kind: 'number', value, unit: null };
}
