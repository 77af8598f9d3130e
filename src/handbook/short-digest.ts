/** The short form of a digest that stands on every page: `digest 3fd5a1c4b29e`. */
export const shortDigest = (digest: string): string =>
  `digest ${digest.replace(/^sha256:/, '').slice(0, 12)}`;
