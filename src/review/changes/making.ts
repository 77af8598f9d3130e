import type { Document } from '../../document/document.ts';
import { partAt } from '../../document/document.ts';
import type { Path } from '../../problems/place.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import type { Change, ChangeKind, Within } from './change.ts';

/** A protocol that changes are made of: as it is written, and as it was read. */
export interface Original {
  readonly document: Document;
  readonly protocol: Protocol;
}

/** A change without what follows from its place. */
interface Made {
  readonly kind: ChangeKind;
  readonly path: Path;
  /** `90 to 91`, or `left out`. */
  readonly what: string;
  readonly document: Document;
  readonly after?: Path;
  readonly within?: Within | null;
}

/** One change, named by its place and by what is done. */
export function made({ document }: Original, { kind, path, what, ...rest }: Made): Change {
  return {
    kind,
    name: `${placeWords(path, document)}: ${what}`,
    path,
    after: rest.after ?? path,
    owner: ownerOf(path, document),
    within: rest.within ?? null,
    document: rest.document,
  };
}

const kinds: Readonly<Record<string, string>> = { limits: 'limit', measures: 'measure', rules: 'rule' };

/** A place in the words of the file, items of a list counted from 1: `rule low_and_not_coping, when all 2 at_least_of count`. */
export function placeWords(path: Path, document: Document): string {
  const [first, , ...rest] = path;
  const kind = kinds[String(first)];
  const inside = (kind === undefined ? path : rest).map((step) =>
    typeof step === 'number' ? step + 1 : step,
  );
  return kind === undefined
    ? inside.join(' ')
    : `${kind} ${ownerOf(path, document) ?? ''}, ${inside.join(' ')}`;
}

function ownerOf([first, second]: Path, document: Document): string | null {
  if (kinds[String(first)] === undefined || second === undefined) return null;
  if (first !== 'rules') return String(second);
  const { node } = partAt(document, [first, second, 'rule']);
  return node.kind === 'scalar' ? String(node.value) : null;
}
