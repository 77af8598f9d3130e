import type { Document } from '../document/document.ts';
import { isWard, type Asked } from '../editions/cases-to-answers.ts';
import { compareSides } from '../review/compare/compare.ts';
import type { Comparison } from '../review/compare/comparison.ts';
import { editionPath, loadEdition } from './edition-files.ts';
import { exists } from './files.ts';

/**
 * What changes since the last edition that was sealed before: of a draft that says what its own sealed edition says, and of that edition
 * itself, the one with the next lower number. Null where there is none, or none that can be read.
 */
export async function changesSinceLast(
  folder: string,
  reads: Asked,
  cases: Document | null,
): Promise<Comparison | null> {
  const { edition, digest } = isWard(reads) ? reads : reads.protocol;
  for (let number = edition; number >= 1; number -= 1) {
    const path = editionPath(folder, number);
    if (!(await exists(path))) continue;
    const before = (await loadEdition(path)).edition;
    if (!before || isWard(before.asked) !== isWard(reads)) return null;
    if (before.file.digest !== digest) return compareSides(before.asked, reads, cases);
  }
  return null;
}
