import { toPlain } from '../../document/document.ts';
import { yamlToDocument } from '../../document/yaml-to-document.ts';
import type { Parents } from './basis.ts';

/** How many protocols may stand one on the other: a protocol, its parent, and that one's parent. */
export const mostInLine = 3;

/** The names from a protocol to what it is based on, and on; and whether they come round to the first one. */
export interface Lineage {
  readonly names: readonly string[];
  readonly isCircle: boolean;
}

/**
 * The line from a protocol up. It ends with the first name that no text has, with the first that comes again, or one after the most
 * that may be.
 */
export function lineage(name: string, basedOn: string, parents: Parents): Lineage {
  const names = [name];
  for (let next: string | null = basedOn; next !== null && names.length <= mostInLine;) {
    if (next === name) return { names: [...names, name], isCircle: true };
    // A circle further up is a mistake of that file.
    if (names.includes(next)) break;
    names.push(next);
    next = namedParent(next, parents);
  }
  return { names, isCircle: false };
}

function namedParent(name: string, parents: Parents): string | null {
  const found = parents.get(name);
  const root = found && yamlToDocument(found.file, found.text).document?.root;
  const basedOn = root && (toPlain(root) as { based_on?: { protocol?: unknown } | null }).based_on;
  return typeof basedOn?.protocol === 'string' ? basedOn.protocol : null;
}
