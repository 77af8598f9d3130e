import type { Problem } from '../problems/problem.ts';
import type { Document, Node } from './document.ts';
import { TextFaults } from './text-faults.ts';
import { checkCharacters } from './checks/characters.ts';
import { checkSize } from './checks/size.ts';

/** What came of reading a text. */
export interface ReadText {
  /** Null when anything at all is wrong in the text. */
  readonly document: Document | null;
  readonly problems: Problem[];
  /**
   * What could be read all the same, to look for more problems in; the first of two equal keys stands. Null when what was meant
   * cannot be known. A draft with problems is never to be used for a patient.
   */
  readonly draft: Document | null;
}

/** Turns a text whose characters are in order into a tree, or adds to the faults and returns null. */
export type ToTree = (text: string, faults: TextFaults) => Node | null;

/**
 * Reads a text; the first steps are the same for every form:
 *
 *     text ─► not too big ─► every character can be seen ─► tree ─► document
 */
export function readText(file: string, given: string, toTree: ToTree): ReadText {
  const text = given.startsWith('\uFEFF') ? given.slice(1) : given;
  const faults = new TextFaults(file, text);
  const root = checkSize(text, faults) && checkCharacters(text, faults) ? toTree(text, faults) : null;
  if (root && root.kind !== 'map') {
    const is = root.kind === 'list' ? 'a list' : 'a single value';
    faults.add('top_not_a_map', root.span, { is });
  }
  const problems = faults.problems();
  const draft = root?.kind === 'map' && faults.onlyMild ? { file, text, root } : null;
  return { document: problems.length === 0 ? draft : null, problems, draft };
}
