import type * as File from '../../shape/generated/types.ts';
import { toPlain, type Document } from '../../document/document.ts';
import { yamlToDocument } from '../../document/yaml-to-document.ts';
import type { Problem, Report } from '../../problems/problem.ts';
import { nearestOf } from '../names.ts';
import type { Ladder, Protocol } from '../protocol.ts';
import { isWhole, type Parents, type ParentText, type WholeDocument } from './basis.ts';
import { lineage, mostInLine } from './lineage.ts';

/** A protocol that another one is based on, checked by itself. */
export interface ReadParent {
  readonly document: WholeDocument;
  readonly protocol: Protocol;
  readonly warnings: readonly Problem[];
}

/** Checks one protocol by itself. */
export type CheckAlone = (document: Document) => {
  readonly document: Document;
  readonly protocol: Protocol | null;
  readonly problems: readonly Problem[];
};

/** What a parent is looked for among, and read with. */
interface Beside {
  readonly parents: Parents;
  readonly ladder: Ladder | null;
}

/** A file that is based on another. */
export type Based = File.ProtocolFile & { readonly based_on: File.BasedOn };

/** Reads the parent of a protocol; null, and reported in the words of the protocol, when it cannot be built on. */
export function readParent(
  file: Based,
  { parents, ladder }: Beside,
  report: Report,
  checkAlone: CheckAlone,
): ReadParent | null {
  const { protocol: name } = file.based_on;
  const { names, isCircle } = lineage(file.protocol, name, parents);
  const text = parents.get(name);
  if (isCircle) report('based_on_circle', at, { names });
  else if (names.length > mostInLine) report('based_on_too_deep', at, { names });
  else if (!text)
    report('parent_not_found', at, { name }, { nearMiss: () => nearestOf(name, parents.keys()) });
  else return readAgreed(file, text, ladder, report, checkAlone);
  return null;
}

const at = ['based_on', 'protocol'];

/** Reads the text of the parent, when it is the one that was agreed. */
function readAgreed(
  file: Based,
  { file: where, text }: ParentText,
  ladder: Ladder | null,
  report: Report,
  checkAlone: CheckAlone,
): ReadParent | null {
  const { protocol: name, edition } = file.based_on;
  const read = yamlToDocument(where, text);
  const plain = (read.document ? toPlain(read.document.root) : {}) as Partial<File.ProtocolFile>;
  if (read.document && plain.protocol !== name) {
    report('parent_not_found', at, { name });
    return null;
  }
  const isOther = typeof plain.edition === 'number' && plain.edition !== edition;
  if (isOther) report('parent_of_other_edition', ['based_on', 'edition'], { name, edition: plain.edition });
  const hasOtherLadder = typeof plain.ladder === 'string' && plain.ladder !== file.ladder;
  if (hasOtherLadder) report('ladder_of_parent', ['ladder'], { name, ladder: plain.ladder });
  // Without its ladder the parent cannot be read either.
  if (!hasOtherLadder && !ladder) report('ladder_not_found', ['ladder'], { name: file.ladder });
  if (isOther || hasOtherLadder || !ladder) return null;
  const checked = read.document && checkAlone(read.document);
  const problems = checked?.problems ?? read.problems;
  const first = problems.find(({ severity }) => severity === 'error');
  if (first) {
    const place = `${first.file}:${first.line}:${first.column}`;
    report('parent_has_errors', at, { name, place, says: first.says });
  }
  if (!checked?.protocol || !isWhole(checked.document)) return null;
  return { document: checked.document, protocol: checked.protocol, warnings: problems };
}
