import type { Case } from '../../cases/case.ts';
import { documentToCases } from '../../cases/document-to-cases.ts';
import { runCase } from '../../cases/run-case.ts';
import type { Document } from '../../document/document.ts';
import { compile, type Compiled } from '../../outcome/compile.ts';
import type { Problem } from '../../problems/problem.ts';
import { documentToProtocol, type Surroundings } from '../../protocol/document-to-protocol.ts';
import type { Protocol } from '../../protocol/protocol.ts';
import type { Change } from '../changes/change.ts';
import { changesOf } from '../changes/changes-of.ts';
import { documentToChecked } from '../document-to-checked.ts';
import { findExample, type Example } from './find-example.ts';

/** What notices a change: a case, by its name; or the check, which refuses it. Else an example of what would. */
export type Guard = { readonly change: Change } & (
  | { readonly kind: 'noticed'; readonly by: string }
  | { readonly kind: 'refused'; readonly says: string }
  | { readonly kind: 'changes_nothing' }
  | { readonly kind: 'unguarded'; readonly example: Exclude<Example, { kind: 'changes_nothing' }> }
);

/** A protocol of which every case comes out as expected. */
export interface Guarded {
  readonly document: Document;
  readonly compiled: Compiled;
  readonly cases: Document;
  readonly surroundings: Surroundings;
}

/**
 * Makes every small change of a protocol in turn, and asks what notices it. A change that nothing notices is unguarded: somebody could
 * make it by mistake and see every case pass.
 *
 * Cases are read once: no change touches what a set may say. The cases that name the changed rule are tried first, and the first one
 * that no longer comes out as expected is enough.
 */
export function* guardsOf(guarded: Guarded): Generator<Guard> {
  const { document, compiled, cases } = guarded;
  const read = documentToCases(cases, compiled.protocol).cases;
  for (const change of changesOf(document, compiled.protocol)) yield guardOf(change, read, guarded);
}

function guardOf(change: Change, read: readonly Case[], guarded: Guarded): Guard {
  const { compiled, cases, surroundings } = guarded;
  const { protocol: changed, problems } = documentToProtocol(change.document, surroundings);
  if (!changed) return { change, kind: 'refused', says: firstError(problems) };
  const after = compile(changed);
  // A limit brings its own step: what a case states of it must be read anew.
  const own = change.path[0] === 'limits' ? documentToCases(cases, changed).cases : read;
  const by = nearestFirst(own, change).find((each) => runCase(after, each).differences.length > 0);
  if (by) return { change, kind: 'noticed', by: by.name };
  const { compiled: checked, problems: found } = documentToChecked(change.document, surroundings);
  if (!checked) return { change, kind: 'refused', says: firstError(found) };
  const example = findExample(change, compiled, after, cases);
  return example.kind === 'changes_nothing'
    ? { change, kind: 'changes_nothing' }
    : { change, kind: 'unguarded', example };
}

const firstError = (problems: readonly Problem[]): string =>
  problems.find(({ severity }) => severity === 'error')?.says ?? '';

/** The cases that expect something of the changed rule or measure, then the others, each in the order of the file. */
function nearestFirst(cases: readonly Case[], { owner }: Change): Case[] {
  const names = ({ expect }: Case): boolean =>
    owner !== null &&
    (expect.measures.has(owner) ||
      [...expect.met, ...expect.notMet, ...expect.undecided].some((name) => name === owner));
  return [...cases.filter(names), ...cases.filter((each) => !names(each))];
}

/** The names of the cases that do not come out as expected. */
export function redCases(protocol: Protocol, document: Document): string[] {
  const compiled = compile(protocol);
  const results = documentToCases(document, protocol).cases.map((each) => runCase(compiled, each));
  return results.filter(({ differences }) => differences.length > 0).map(({ name }) => name);
}
