import { toPlain, type Document } from '../document/document.ts';
import { findingsToProblems } from '../document/finding-to-problem.ts';
import { limits } from '../document/limits.ts';
import type { Problem } from '../problems/problem.ts';
import { placedFailures } from './failure-place.ts';
import { failureToFinding } from './failure-to-finding.ts';
import type { Failure } from './validator.ts';
import { validatorOf, type Files, type Kind } from './files.ts';

/** A file of which the shape is known to be right, or null with what is wrong. */
export interface CheckedShape<K extends Kind> {
  readonly value: Files[K] | null;
  readonly problems: Problem[];
}

/**
 * Whether a document has the shape that its kind of file has: the keys, the kinds of values, how many of them. What the names in it
 * mean is looked at later; where a condition can speak of anything, any name is well here.
 *
 *     document ─► plain value ─► generated validator ─► failures, one for each mistake ─► problems at their places
 */
export function checkShape<K extends Kind>(kind: K, document: Document): CheckedShape<K> {
  const plain = toPlain(document.root);
  const validator = validatorOf[kind];
  const found = [...(validator(plain) ? [] : (validator.errors ?? [])), ...lacking(kind, plain)];
  if (found.length === 0) return { value: plain as Files[K], problems: [] };
  const failures = placedFailures(document, found);
  // One more than is told, so that the last problem can say that there are more.
  const told = failures.slice(0, limits.problems + 1);
  const findings = told.map((placed) => failureToFinding(kind, document, placed));
  return { value: null, problems: findingsToProblems(document, findings) };
}

/** What a protocol must have of its own when it is based on no other: the subset of JSON Schema that we use cannot say so. */
function lacking(kind: Kind, plain: unknown): Failure[] {
  if (kind !== 'protocol' || typeof plain !== 'object' || plain === null || 'based_on' in plain) return [];
  return ['observations', 'rules']
    .filter((key) => !(key in plain))
    .map((key) => ({ instancePath: '', keyword: 'required', params: { missingProperty: key } }));
}
