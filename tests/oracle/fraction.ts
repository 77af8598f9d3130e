/** An exact number: n over d, d above zero. Only `never` has 0 for d: it is above every number. */
export type Fraction = { readonly n: bigint; readonly d: bigint };
export const never: Fraction = { n: 1n, d: 0n };

const numbers = new Map<unknown, Fraction>();
/** The number at the start of a text: `read('36.5 °C')` is 365/10. Throws where there is none. */
export function read(text: unknown): Fraction {
  const [whole = 'none', decimals = ''] = numbers.has(text) ? [] : String(text).replace(/ .*/, '').split('.');
  const number = numbers.get(text) ?? { n: BigInt(whole + decimals), d: 10n ** BigInt(decimals.length) };
  return numbers.set(text, number) && number;
}
export const plus = (a: Fraction, b: Fraction): Fraction => ({ n: a.n * b.d + b.n * a.d, d: a.d * b.d });
export const minus = (a: Fraction, b: Fraction): Fraction => plus(a, { n: -b.n, d: b.d });
export const times = (a: Fraction, b: Fraction): Fraction => ({ n: a.n * b.n, d: a.d * b.d });
/** The divisor is above zero. */
export const over = (a: Fraction, b: Fraction): Fraction => ({ n: a.n * b.d, d: a.d * b.n });
/** Below zero when a is lower than b, zero when they are equal, else above zero. */
export const compare = (a: Fraction, b: Fraction): number =>
  Number(a.d === b.d ? a.n - b.n : a.n * b.d - b.n * a.d);
/** The nearest whole number, halves away from zero. */
export const nearest = ({ n, d }: Fraction): number => Number((2n * n + (n < 0n ? -d : d)) / (2n * d));

const divisor = (a: bigint, b: bigint): bigint => (b ? divisor(b, a % b) : a < 0n ? -a : a);
/** In lowest terms: `5`, `-7/2` or `never`. */
export const show = ({ n, d }: Fraction, by = divisor(n, d)): string =>
  d === 0n ? 'never' : d === by ? `${n / by}` : `${n / by}/${d / by}`;

const signs = new Map(Object.entries({ '+': plus, '-': minus, '*': times, '/': over }));
/** What a formula comes to, given what each name is worth; null when one of its names has no value. */
export function work(formula: string, worth: (name: string) => Fraction | null): Fraction | null {
  const parts = formula.match(/[a-z]\w*|[\d.]+|\S/g) ?? [];
  const chain = (those: string, next: () => Fraction | null, first = next()): Fraction | null => {
    const sign = those.includes(parts[0] ?? 'end') ? signs.get(parts.shift() ?? '') : undefined;
    const second = sign ? next() : null;
    return sign ? chain(those, next, first && second && sign(first, second)) : first;
  };
  const sum = (): Fraction | null => chain('+-', () => chain('*/', part));
  const part = (): Fraction | null => {
    const one = parts.shift() ?? '';
    const inside = one === '(' ? sum() : one === '-' ? part() : /^[a-z]/.test(one) ? worth(one) : read(one);
    if (one === '(') parts.shift();
    return one === '-' && inside ? minus(read(0), inside) : inside;
  };
  return sum();
}
