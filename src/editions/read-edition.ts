import type { Problem } from '../problems/problem.ts';
import type { EditionFile } from '../shape/generated/types.ts';
import type { Asked } from './cases-to-answers.ts';
import { beginEdition } from './text-to-edition.ts';

/** What came of reading a sealed edition. */
interface Read {
  readonly reader: Asked | null;
  /** All that was sealed; null together with the reader. */
  readonly file: EditionFile | null;
  readonly problems: readonly Problem[];
}

/**
 * Reads a sealed edition of a protocol or of a ward policy. Null when it is not as it was sealed, or this kit reads it otherwise.
 *
 * `readEdition('1.yaml', text).reader` is what its protocol, or its ward policy, is asked with.
 */
export function readEdition(file: string, text: string): Read {
  return beginReadEdition(file, text).finish();
}

/**
 * The same in two steps. What the first gives shows what is to be entered, and answers nothing about a patient; `finish` runs its cases
 * and gives what may.
 */
export function beginReadEdition(
  file: string,
  text: string,
): Omit<Read, 'file'> & { readonly finish: () => Read } {
  const { asked, problems, finish } = beginEdition(file, text, null);
  return {
    reader: asked,
    problems,
    finish: () => {
      const { edition, problems: all } = finish();
      return { reader: edition?.asked ?? null, file: edition?.file ?? null, problems: all };
    },
  };
}
