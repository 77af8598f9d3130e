import type { Report } from '../problems/problem.ts';
import { unitByWord, type Unit } from '../vocabulary/units.ts';
import type { Measure, Operand, Protocol } from './protocol.ts';
import {
  isMismatch,
  noDimension,
  quantityInWords,
  quantityOf,
  quantityOfExpression,
  together,
  unitOfQuantity,
  type Mismatch,
  type QuantityOrPlain,
} from './quantities.ts';

/** What an operand is measured in, given what each measure is; null when that is not known. */
export type QuantityOfOperand = (operand: Operand) => QuantityOrPlain | null;

export function quantitiesOf(
  protocol: Pick<Protocol, 'observations' | 'limits' | 'measures'>,
): QuantityOfOperand {
  return (operand) => {
    switch (operand.kind) {
      case 'number':
        return operand.unit ? quantityOf(operand.unit) : 'plain';
      case 'observation': {
        const observation = protocol.observations.get(operand.name);
        return observation ? quantityOf(observation.unit) : null;
      }
      case 'limit': {
        const limit = protocol.limits.get(operand.name);
        if (!limit) return null;
        return limit.unit ? quantityOf(limit.unit) : 'plain';
      }
      case 'measure':
        return protocol.measures.get(operand.name)?.quantity ?? null;
    }
  };
}

/** The same protocol with the quantity of each measure worked out, and mismatches reported. */
export function withQuantities(protocol: Protocol, report: Report): Protocol {
  const measures = new Map<string, Measure>();
  const of = quantitiesOf({ ...protocol, measures });
  for (const measure of protocol.measures.values())
    measures.set(measure.name, withQuantity(measure, protocol, of, report));
  return { ...protocol, measures };
}

function withQuantity(measure: Measure, protocol: Protocol, of: QuantityOfOperand, report: Report): Measure {
  const natural = naturalQuantity(measure, protocol, of);
  const path = [...measure.path, measure.how.kind];
  if (isMismatch(natural)) {
    reportMismatch(natural, path, report);
    return measure;
  }
  if (!measure.unit) {
    const quantity = natural === 'plain' || natural === null ? noDimension : natural;
    return { ...measure, quantity, unit: unitOfQuantity(quantity) };
  }
  const quantity = quantityOf(measure.unit);
  const met = natural === null ? quantity : together(natural, quantity);
  if (isMismatch(met)) {
    const facts = { name: measure.name, found: quantityInWords(met.left), unit: measure.unit.word };
    report('measure_in_wrong_unit', [...measure.path, 'unit'], facts);
  }
  return { ...measure, quantity };
}

function naturalQuantity(
  { how }: Measure,
  { observations }: Protocol,
  of: QuantityOfOperand,
): QuantityOrPlain | Mismatch | null {
  switch (how.kind) {
    case 'formula':
      return quantityOfExpression(how.formula, of);
    case 'curve':
      return 'plain';
    case 'score':
    case 'count':
      return noDimension;
    case 'choose':
      return allTogether(how.entries.map(({ use }) => of(use)));
    case 'first_known':
      return allTogether(how.of.map(of));
    case 'minutes_since':
    case 'held':
      return quantityOf(unitByWord('min') as Unit);
    default:
      return quantityOf(observations.get(how.observation ?? '')?.unit ?? null);
  }
}

function allTogether(quantities: readonly (QuantityOrPlain | null)[]): QuantityOrPlain | Mismatch | null {
  let met: QuantityOrPlain | Mismatch = 'plain';
  for (const each of quantities) {
    if (each === null) return null;
    met = together(met, each);
    if (isMismatch(met)) return met;
  }
  return met;
}

/** Reports two numbers that are not measured in the same. */
export function reportMismatch({ left, right }: Mismatch, path: Measure['path'], report: Report): void {
  report('unit_mismatch', path, { left: quantityInWords(left), right: quantityInWords(right) });
}
