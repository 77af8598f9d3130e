/** An error must be mended; a warning must be looked at. */
export type Severity = 'error' | 'warning';

/** The wording of one problem: what is wrong, from the facts of the place, and what was expected. */
export interface Entry<F> {
  readonly severity: Severity;
  readonly says: (facts: F) => string;
  readonly expected: ((facts: F) => string) | null;
}

/** Something that must be mended. */
export function error<F>(
  says: (facts: F) => string,
  expected: ((facts: F) => string) | null = null,
): Entry<F> {
  return { severity: 'error', says, expected };
}

/** Something that must be looked at: it can be answered in the file by `accepted`. */
export function warning<F>(
  says: (facts: F) => string,
  expected: ((facts: F) => string) | null = null,
): Entry<F> {
  return { severity: 'warning', says, expected };
}
