/** A number or a truth that is known. */
export type Value = number | boolean;

/** An answer by where a whole number lies: `values[0]` below `cuts[0]`, then `values[i]` from `cuts[i - 1]` to below `cuts[i]`. */
export interface Cases {
  /** Rising. */
  readonly cuts: readonly number[];
  /** One more than cuts; neighbours differ. */
  readonly values: readonly Value[];
}

/**
 * Several such answers of one number made into one.
 *
 * Whether 50 is below 90, and whether it is from 40 on, joined by *and*, hold from 40 to below 90.
 */
export function mergeCases(all: readonly Cases[], answer: (values: readonly Value[]) => Value): Cases {
  const edges = [...new Set(all.flatMap(({ cuts }) => cuts))].sort((a, b) => a - b);
  const cuts: number[] = [];
  const values = [answer(all.map((each) => each.values[0] as Value))];
  for (const edge of edges) {
    const value = answer(all.map((each) => valueAt(each, edge)));
    if (value === values.at(-1)) continue;
    cuts.push(edge);
    values.push(value);
  }
  return { cuts, values };
}

function valueAt({ cuts, values }: Cases, at: number): Value {
  let index = 0;
  while (index < cuts.length && (cuts[index] as number) <= at) index += 1;
  return values[index] as Value;
}

/** The same answers by x, where the cases are by `by × x + constant`. */
export function scaledCases({ cuts, values }: Cases, by: number, constant: number): Cases {
  // Below zero all is turned round: by × x + constant < cut where x is above (cut − constant) / by.
  const moved = cuts.map((cut) =>
    by > 0 ? Math.ceil((cut - constant) / by) : Math.floor((cut - constant) / by) + 1,
  );
  const turned: Cases =
    by > 0 ? { cuts: moved, values } : { cuts: moved.reverse(), values: [...values].reverse() };
  const rising = [...new Set(turned.cuts)];
  return mergeCases([{ cuts: rising, values: valuesAt(rising, turned) }], ([value]) => value as Value);
}

/** Where cuts fell together, the values between them are never reached. */
function valuesAt(cuts: readonly number[], { cuts: all, values }: Cases): readonly Value[] {
  return [values[0] as Value, ...cuts.map((cut) => values[all.lastIndexOf(cut) + 1] as Value)];
}
