import type { Operand } from '../protocol.ts';
import { quantitiesOf, reportMismatch } from '../measure-quantities.ts';
import { sameDimension } from '../../vocabulary/units.ts';
import { isMismatch, together } from '../quantities.ts';
import { comparisonsIn, everyConditionOf } from '../walk.ts';
import type { Path } from '../../problems/place.ts';
import type { Check } from './check.ts';

/** Both sides of a comparison, and the ends of a band, are measured in the same as what they meet. */
export const unitMismatch: Check = ({ protocol }, report) => {
  const of = quantitiesOf(protocol);
  const check = (subject: Operand, to: Operand, path: Path): void => {
    const [left, right] = [of(subject), of(to)];
    // A number as written is converted whole, so that degrees of another scale may stand here.
    const isConverted = to.kind === 'number' && left && left !== 'plain' && right && right !== 'plain';
    if (isConverted && sameDimension(left.dimension, right.dimension)) return;
    const met = left && right && together(left, right);
    if (isMismatch(met)) reportMismatch(met, path, report);
  };
  for (const condition of everyConditionOf(protocol)) {
    for (const each of comparisonsIn(condition))
      if (each.kind === 'compare') check(each.subject, each.to, each.path);
  }
  for (const { how } of protocol.measures.values()) {
    if (how.kind !== 'score') continue;
    for (const part of how.parts) {
      if (part.kind !== 'bands') continue;
      part.bands.forEach(({ to, included }, index) => {
        if (to) check(part.of, to, [...part.path, index, included ? 'at_most' : 'below']);
      });
    }
  }
};
