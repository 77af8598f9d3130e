import type { Path } from '../problems/place.ts';
import type { Report } from '../problems/problem.ts';
import { parseQuantity, type Quantity, type QuantityProblem } from '../vocabulary/quantity.ts';

/** A number with or without its unit; null, and reported, when it cannot be read. */
export function readQuantity(written: number | string, path: Path, report: Report): Quantity | null {
  const read = parseQuantity(written);
  if (!('problem' in read)) return read;
  reportQuantity(read.problem, path, report);
  return null;
}

function reportQuantity(problem: QuantityProblem, path: Path, report: Report): void {
  const { nearMiss } = problem;
  switch (problem.code) {
    case 'not_a_quantity':
      return report(problem.code, path, problem.facts, { nearMiss });
    case 'too_many_digits':
      return report(problem.code, path, problem.facts);
    case 'unknown_unit':
      return report(problem.code, path, problem.facts, { nearMiss });
  }
}
