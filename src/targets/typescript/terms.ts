import type { Part } from './part.ts';

/** A part and what it is multiplied by. */
export type Term = readonly [part: Part, by: number];

/** A sum as its terms, each part once, and what is added to them. */
export function termsOf(of: readonly Term[]): {
  readonly terms: ReadonlyMap<Part, number>;
  readonly constant: number;
} {
  const terms = new Map<Part, number>();
  let constant = 0;
  const open = [...of].reverse();
  for (let term = open.pop(); term; term = open.pop()) {
    const [part, by] = term;
    const { is } = part;
    if (is.kind === 'constant') constant += by * (is.value as number);
    else if (is.kind === 'operation' && is.operator === '+')
      open.push(...[...is.of].reverse().map((each): Term => [each, by]));
    else if (is.kind === 'operation' && is.operator === '*' && is.of[0]?.is.kind === 'constant')
      open.push([is.of[1] as Part, by * (is.of[0].is.value as number)]);
    else {
      const total = (terms.get(part) ?? 0) + by;
      if (total === 0) terms.delete(part);
      else terms.set(part, total);
    }
  }
  return { terms, constant };
}

/** What all terms are multiples of, with the sign of the first: 1 for none. */
export function commonFactor(terms: ReadonlyMap<Part, number>): number {
  const [first = 1] = terms.values();
  let factor = 0;
  for (const by of terms.values()) {
    let [a, b] = [factor, Math.abs(by)];
    while (b !== 0) [a, b] = [b, a % b];
    factor = a;
  }
  return factor === 0 ? 1 : Math.sign(first) * factor;
}
