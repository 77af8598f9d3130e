import type * as File from '../../shape/generated/types.ts';
import { checkShape } from '../../shape/check-shape.ts';
import { partAt, toPlain, type Document, type MapNode } from '../../document/document.ts';
import { withoutPart } from '../../document/edit.ts';
import { findingsToProblems } from '../../document/finding-to-problem.ts';
import type { Span } from '../../problems/place.ts';
import { reporter, type Finding, type Problem, type Report } from '../../problems/problem.ts';
import type { Ladder, Protocol } from '../protocol.ts';
import { isWhole, type Basis, type Parents, type WholeDocument } from './basis.ts';
import { otherValues, withdrawnRules } from './changes.ts';
import { clashes } from './clashes.ts';
import { mergedRoot } from './merge.ts';
import { readParent, type Based, type CheckAlone, type ReadParent } from './read-parent.ts';
import type { WholeFile } from './whole-file.ts';

/** What a protocol that is based on another is looked up and read with. */
interface Beside {
  readonly ladder: Ladder | null;
  readonly parents?: Parents;
}

/**
 * Works what a protocol is based on into its document. Null, with the problems, when there is nothing to build on.
 *
 *     document ─► parent, checked by itself ─► names that clash, limits, rules withdrawn ─► one document
 */
export function documentToWhole(
  document: Document,
  { ladder, parents = new Map() }: Beside,
  checkAlone: CheckAlone,
): { whole: WholeDocument | null; problems: readonly Problem[] } {
  if (isWhole(document)) return { whole: document, problems: [] };
  if (!partAt(document, ['based_on']).keySpan) return { whole: { ...document, basis: null }, problems: [] };
  const { value: file, problems } = checkShape('protocol', document);
  if (!file || !isBased(file)) return { whole: null, problems };
  const findings: Finding[] = [];
  const report = reporter(findings);
  const parent = readParent(file, { parents, ladder }, report, checkAlone);
  const whole = parent && workedIn(document, file, parent, report);
  return { whole, problems: findingsToProblems(document, findings) };
}

const isBased = (file: File.ProtocolFile): file is Based => file.based_on !== undefined;

function workedIn(document: Document, file: Based, parent: ReadParent, report: Report): WholeDocument {
  const parentFile = toPlain(parent.document.root) as WholeFile;
  const found = clashes(file, parent.protocol, parentFile);
  for (const { name, as, path, part } of found)
    report('name_of_parent', path, { name, as, parent: parent.protocol.name }, { part });
  // From the last to the first, so that leaving one out does not move the others.
  const rest = found.reduceRight((each: Document, { owner }) => withoutPart(each, owner), document);
  const basis = basisOf(file.based_on, parent, report);
  const places = {
    parent: spanAt(document, ['based_on', 'protocol']),
    nearer: changedPlaces(document, file),
  };
  const root = mergedRoot(parent.document.root as MapNode, rest.root as MapNode, places);
  return { ...document, root, basis };
}

function basisOf(file: File.BasedOn, { protocol, document, warnings }: ReadParent, report: Report): Basis {
  const { name, edition, title, digest, basedOn } = protocol;
  const withdrawn = withdrawnRules(file, protocol, report);
  const gone = [...withdrawn, ...(document.basis?.withdrawn.values() ?? [])];
  return {
    parent: { name, edition, title, digest, withdrawn },
    otherValues: otherValues(file, protocol, report),
    further: basedOn,
    from: originsOf(protocol),
    withdrawn: new Map(gone.map((each) => [each.name, each])),
    warned: new Set([...(document.basis?.warned ?? []), ...warnings.map(({ says }) => says)]),
  };
}

const originsOf = ({ name, edition, rules }: Protocol): Basis['from'] =>
  new Map(rules.map((rule) => [rule.name, rule.from ?? { name, edition }]));

/** Where the file changes what the parent's parts name. */
function changedPlaces(
  document: Document,
  { based_on: { limits, withdraws } }: Based,
): ReadonlyMap<string, Span> {
  const values = Object.keys(limits ?? {}).map((name): [string, Span] => [
    name,
    spanAt(document, ['based_on', 'limits', name, 'value']),
  ]);
  const rules = (withdraws ?? []).map(({ rule }, index): [string, Span] => [
    rule,
    spanAt(document, ['based_on', 'withdraws', index, 'rule']),
  ]);
  return new Map([...values, ...rules]);
}

const spanAt = (document: Document, path: (string | number)[]): Span => partAt(document, path).node.span;
