import type { Problem } from '../problems/problem.ts';
import type { Asked } from './cases-to-answers.ts';
import { textToEdition } from './text-to-edition.ts';

/**
 * Reads a sealed edition of a protocol or of a ward policy. Null when it is not as it was sealed, or this kit reads it otherwise.
 *
 * `readEdition('1.yaml', text).reader` is what its protocol, or its ward policy, is asked with.
 */
export function readEdition(
  file: string,
  text: string,
): { readonly reader: Asked | null; readonly problems: readonly Problem[] } {
  const { edition, problems } = textToEdition(file, text, null);
  return { reader: edition?.asked ?? null, problems };
}
