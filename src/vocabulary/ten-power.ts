/** The smallest power of ten that a decimal's denominator divides: 100n for 3/20. At most 10^15, for what is no decimal. */
export function tenPower(denominator: bigint): bigint {
  let power = 1n;
  while (power % denominator !== 0n && power < 10n ** 15n) power *= 10n;
  return power;
}
