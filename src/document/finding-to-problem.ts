import type { Finding, Problem } from '../problems/problem.ts';
import { partAt, type Document } from './document.ts';
import { Places, type Fault } from './placed.ts';

const placesOf = new WeakMap<Document, Places>();

function places(document: Document): Places {
  const known = placesOf.get(document);
  if (known) return known;
  const made = new Places(document.file, document.text);
  placesOf.set(document, made);
  return made;
}

function fault(document: Document, finding: Finding): Fault {
  const { node, keySpan } = partAt(document, finding.path);
  const span = finding.part === 'key' && keySpan ? keySpan : node.span;
  return { code: finding.code, span, facts: finding.facts, nearMiss: finding.nearMiss };
}

/** Gives a finding its place in a document. */
export function findingToProblem(document: Document, finding: Finding): Problem {
  return places(document).problem(fault(document, finding));
}

/** Gives findings their places, in the order of the text; a last problem says when there are more than are told at once. */
export function findingsToProblems(document: Document, findings: readonly Finding[]): Problem[] {
  return places(document).problems(findings.map((finding) => fault(document, finding)));
}
