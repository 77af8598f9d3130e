import type { Path } from '../problems/place.ts';
import type { Document, Node } from '../document/document.ts';
import { partAt } from '../document/document.ts';
import type { Failure } from './validator.ts';

/** A failure with the part of the file that it is about. */
export interface PlacedFailure {
  readonly failure: Failure;
  readonly path: Path;
  readonly part: 'key' | 'value';
  /** Where the part begins in the text. */
  readonly start: number;
}

/** Of several failures about one part, the first of these says most; the others follow from it. */
const order = ['type', 'enum', 'const', 'pattern', 'minLength', 'maxLength'];

/**
 * So many failures are looked at: several times as many as are told at once, each mistake making a few at most. A file with more
 * is not the file that was meant, and the last problem told says that there are more.
 */
const mostPlaced = 2000;

/** Where each failure stands, in the order of the text, with one failure for each mistake. */
export function placedFailures(document: Document, failures: readonly Failure[]): PlacedFailure[] {
  const byPart = new Map<string, PlacedFailure>();
  for (const failure of failures.slice(0, mostPlaced)) {
    const placed = placedFailure(document, failure);
    if (isAboutLettersOfAMap(document, placed)) continue;
    const missing = failure.keyword === 'required' ? String(failure.params['missingProperty']) : '';
    const part = JSON.stringify([placed.part, missing, ...placed.path]);
    const known = byPart.get(part);
    if (!known || rank(failure) < rank(known.failure)) byPart.set(part, placed);
  }
  return [...byPart.values()].sort((left, right) => left.start - right.start);
}

/** A map has no letters: this is about one of its keys, and the failure `propertyNames` tells about which. */
function isAboutLettersOfAMap(document: Document, { failure, path, part }: PlacedFailure): boolean {
  return part === 'value' && letters.has(failure.keyword) && partAt(document, path).node.kind === 'map';
}

const letters: ReadonlySet<string> = new Set(['pattern', 'minLength', 'maxLength']);

const rank = ({ keyword }: Failure): number => {
  const at = order.indexOf(keyword);
  return at === -1 ? order.length : at;
};

function placedFailure(document: Document, failure: Failure): PlacedFailure {
  const key = failure.params['additionalProperty'] ?? failure.params['propertyName'];
  const above = pathOf(document, failure.instancePath);
  const path = typeof key === 'string' ? [...above, key] : above;
  const { node, keySpan } = partAt(document, path);
  const isKey = typeof key === 'string' || (isAboutTheWhole(failure, node) && keySpan !== null);
  return {
    failure,
    path,
    part: isKey ? 'key' : 'value',
    start: (isKey && keySpan ? keySpan : node.span).start,
  };
}

/** Whether what is wrong is not in any one line below the key, or nothing stands below it. */
function isAboutTheWhole({ keyword }: Failure, node: Node): boolean {
  if (keyword === 'required' || keyword.endsWith('Items') || keyword.endsWith('Properties')) return true;
  return node.kind === 'scalar' && node.value === null;
}

/** A JSON Pointer as a path; positions in lists are numbers. */
function pathOf(document: Document, pointer: string): Path {
  const path: (string | number)[] = [];
  let node: Node | undefined = document.root;
  for (const part of pointer.split('/').slice(1)) {
    const step = part.replaceAll('~1', '/').replaceAll('~0', '~');
    path.push(node?.kind === 'list' ? Number(step) : step);
    node = partAt({ ...document, root: node ?? document.root }, path.slice(-1)).node;
  }
  return path;
}
