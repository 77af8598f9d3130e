import type { Document, Node } from '../document/document.ts';
import { valueIn } from '../document/document.ts';
import { Lines } from '../document/lines.ts';
import type { Path } from '../problems/place.ts';

/** Where a part of a file stands. Lines are numbered from 1, both ends included; offsets are in UTF-16 units. */
export interface PartLines {
  /** The name of a rule, case, measure, limit or fault. */
  readonly name: string;
  /** From the root of the document. */
  readonly path: Path;
  readonly firstLine: number;
  readonly lastLine: number;
  readonly from: number;
  readonly to: number;
}

/** Where the named parts of a file stand, each sort in the order of the file; none of those that its kind does not have. */
export interface FileLines {
  readonly rules: readonly PartLines[];
  readonly cases: readonly PartLines[];
  readonly measures: readonly PartLines[];
  readonly limits: readonly PartLines[];
  readonly faults: readonly PartLines[];
}

/**
 * Where each rule, case, measure, limit and fault stands in a file, so that lines can be marked and gone to.
 *
 * `linesOf(document).rules[0]?.firstLine` is the line on which the first rule begins.
 */
export function linesOf(document: Document): FileLines {
  const lines = new Lines(document.text);
  return {
    rules: items(document, lines, 'rules', 'rule'),
    cases: items(document, lines, 'cases', 'case'),
    measures: entries(document, lines, 'measures'),
    limits: entries(document, lines, 'limits'),
    faults: items(document, lines, 'faults', 'fault'),
  };
}

function items(document: Document, lines: Lines, section: string, named: string): PartLines[] {
  const list = valueIn(document.root, section);
  if (list?.kind !== 'list') return [];
  return list.items.flatMap((item, index): PartLines[] => {
    const name = valueIn(item, named);
    if (name?.kind !== 'scalar' || item.inherited) return [];
    return [placed(String(name.value), [section, index], item, item.span.start, lines)];
  });
}

function entries(document: Document, lines: Lines, section: string): PartLines[] {
  const map = valueIn(document.root, section);
  if (map?.kind !== 'map') return [];
  return map.entries
    .filter(({ value }) => !value.inherited)
    .map(({ key, keySpan, value }) => placed(key, [section, key], value, keySpan.start, lines));
}

function placed(name: string, path: Path, { span }: Node, from: number, lines: Lines): PartLines {
  const to = Math.max(span.end, from);
  const firstLine = lines.at(from).index + 1;
  return { name, path, firstLine, lastLine: lines.at(Math.max(from, to - 1)).index + 1, from, to };
}
