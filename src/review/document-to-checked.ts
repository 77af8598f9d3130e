import { toPlain, type Document } from '../document/document.ts';
import { findingsToProblems } from '../document/finding-to-problem.ts';
import { compile, type Compiled } from '../outcome/compile.ts';
import { hasErrors, reporter, type Finding, type Problem } from '../problems/problem.ts';
import {
  documentToProtocol,
  type ReadProtocol,
  type Surroundings,
} from '../protocol/document-to-protocol.ts';
import { isWhole, notToldBefore } from '../protocol/based-on/basis.ts';
import type { WholeFile } from '../protocol/based-on/whole-file.ts';
import { protocolToLogic } from '../logic/protocol-to-logic.ts';
import { deepChecks } from './checks/index.ts';

/** A protocol that can be asked, or null with the errors that stand in the way. */
export interface CheckedProtocol {
  readonly compiled: Compiled | null;
  readonly problems: readonly Problem[];
  /** With what the protocol is based on worked in; as it was given, when that could not be done. */
  readonly document: Document;
}

/**
 * The whole check of a protocol: what can be seen in the file alone, then what only all possible sets can show.
 */
export function documentToChecked(given: Document, surroundings: Surroundings): CheckedProtocol {
  const { protocol, problems, document } = documentToProtocol(given, surroundings, checkAlone);
  if (!protocol) return { compiled: null, problems, document };
  const findings: Finding[] = [];
  const report = reporter(findings);
  const { logic, tooLarge } = protocolToLogic(protocol);
  for (const step of tooLarge)
    report('number_too_large', pathOf(step), { what: step.split('/').slice(0, 2).join(' ') });
  const compiled = compile(protocol, logic);
  if (tooLarge.length === 0) {
    const file = toPlain(document.root) as WholeFile;
    for (const check of deepChecks) check({ ...compiled, file }, report);
  }
  const deep = findingsToProblems(document, findings);
  const found = inOrder([...problems, ...(isWhole(document) ? notToldBefore(deep, document) : deep)]);
  return { compiled: hasErrors(found) ? null : compiled, problems: found, document };
}

function checkAlone(parent: Document, surroundings: Surroundings): ReadProtocol {
  const { compiled, problems, document } = documentToChecked(parent, surroundings);
  return { protocol: compiled?.protocol ?? null, problems, document };
}

const pathOf = (step: string): string[] => step.split('/');

/** Problems in the order in which a person meets them in the file. */
function inOrder(problems: readonly Problem[]): Problem[] {
  return [...problems].sort((left, right) => left.line - right.line || left.column - right.column);
}
