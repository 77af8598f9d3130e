import type * as File from '../shape/generated/types.ts';
import { toPlain, type Document } from '../document/document.ts';
import { findingsToProblems } from '../document/finding-to-problem.ts';
import { compile, type Compiled } from '../outcome/compile.ts';
import { hasErrors, reporter, type Finding, type Problem } from '../problems/problem.ts';
import { documentToProtocol, type Surroundings } from '../protocol/document-to-protocol.ts';
import { protocolToLogic } from '../logic/protocol-to-logic.ts';
import { deepChecks } from './checks/index.ts';

/** A protocol that can be asked, or null with the errors that stand in the way. */
export interface CheckedProtocol {
  readonly compiled: Compiled | null;
  readonly problems: readonly Problem[];
}

/**
 * The whole check of a protocol: what can be seen in the file alone, then what only all possible sets can show.
 */
export function documentToChecked(document: Document, surroundings: Surroundings): CheckedProtocol {
  const { protocol, problems } = documentToProtocol(document, surroundings);
  if (!protocol) return { compiled: null, problems };
  const findings: Finding[] = [];
  const report = reporter(findings);
  const { logic, tooLarge } = protocolToLogic(protocol);
  for (const step of tooLarge)
    report('number_too_large', pathOf(step), { what: step.split('/').slice(0, 2).join(' ') });
  const compiled = compile(protocol, logic);
  if (tooLarge.length === 0) {
    const file = toPlain(document.root) as File.ProtocolFile;
    for (const check of deepChecks) check({ ...compiled, file }, report);
  }
  const found = inOrder([...problems, ...findingsToProblems(document, findings)]);
  return { compiled: hasErrors(found) ? null : compiled, problems: found };
}

const pathOf = (step: string): string[] => step.split('/');

/** Problems in the order in which a person meets them in the file. */
function inOrder(problems: readonly Problem[]): Problem[] {
  return [...problems].sort((left, right) => left.line - right.line || left.column - right.column);
}
