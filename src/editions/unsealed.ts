import type { EditionFile } from '../shape/generated/types.ts';

/** An edition before its seal is on it. */
export type Unsealed = Omit<EditionFile, 'seal'>;
