import { documentToCases } from '../cases/document-to-cases.ts';
import { runCase } from '../cases/run-case.ts';
import type { Document } from '../document/document.ts';
import { compile } from '../outcome/compile.ts';
import { documentToProtocol, type Surroundings } from '../protocol/document-to-protocol.ts';
import type { Protocol } from '../protocol/protocol.ts';
import { changesOf, type Change } from './changes.ts';
import { withoutUnreadNames } from './unread-names.ts';

/** What notices a change: cases, or the check itself; nothing, when both lists are empty. */
export interface Guarded {
  readonly change: Change;
  /** The cases that no longer come out as expected. */
  readonly cases: readonly string[];
  /** What the check says of the changed protocol, when it refuses it. */
  readonly refused: readonly string[];
}

/**
 * Makes every small change of a protocol in turn, and asks which of its cases notice.
 *
 * A change that nothing notices is unguarded: somebody could make it by mistake and see every case pass.
 */
export function* guardsOf(
  document: Document,
  protocol: Protocol,
  cases: Document,
  surroundings: Surroundings,
): Generator<Guarded> {
  for (const change of changesOf(document, protocol)) {
    const whole = change.kind === 'threshold' ? change.document : withoutUnreadNames(change.document);
    const { protocol: changed, problems } = documentToProtocol(whole, surroundings);
    if (changed) yield { change, cases: redCases(changed, cases), refused: [] };
    else {
      const errors = problems.filter(({ severity }) => severity === 'error');
      yield { change, cases: [], refused: errors.map(({ says }) => says) };
    }
  }
}

/** The names of the cases that do not come out as expected. */
export function redCases(protocol: Protocol, document: Document): string[] {
  const compiled = compile(protocol);
  const results = documentToCases(document, protocol).cases.map((each) => runCase(compiled, each));
  return results.filter(({ differences }) => differences.length > 0).map(({ name }) => name);
}
