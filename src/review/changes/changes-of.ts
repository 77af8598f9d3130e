import { partAt, type Document } from '../../document/document.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import type { Change } from './change.ts';
import { clauseChanges, exceptionChanges } from './clauses.ts';
import { flipChanges } from './flips.ts';
import { levelChanges } from './levels.ts';
import type { Original } from './making.ts';
import { pointChanges } from './points.ts';
import { thresholdChanges } from './thresholds.ts';

/** Every kind of change. To add one: a file here, and a line in this list. */
const kinds: readonly ((original: Original) => Iterable<Change>)[] = [
  thresholdChanges,
  flipChanges,
  clauseChanges,
  exceptionChanges,
  levelChanges,
  pointChanges,
];

/**
 * Every small change of a protocol that a case should notice, each once, in the order of the kinds. What a protocol inherits is
 * changed in its parent's file, not here.
 */
export function changesOf(document: Document, protocol: Protocol): Change[] {
  const original = { document, protocol };
  const changes = new Map<string, Change>();
  for (const kind of kinds)
    for (const change of kind(original))
      if (!partAt(document, change.path).node.inherited) changes.set(change.name, change);
  return [...changes.values()];
}
