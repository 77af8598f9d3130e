/** Enough of a digest to tell two editions apart. */
export const shortDigest = (digest: string): string => digest.slice(0, 'sha256:'.length + 12);
