import { checkShape } from '../shape/check-shape.ts';
import { partAt, type Document } from '../document/document.ts';
import { findingsToProblems } from '../document/finding-to-problem.ts';
import type { Dictionary } from '../vocabulary/dictionary.ts';
import { hasErrors, reporter, type Finding, type Problem, type Report } from '../problems/problem.ts';
import { notToldBefore, parentsOf, type Parents, type WholeDocument } from './based-on/basis.ts';
import { documentToWhole } from './based-on/document-to-whole.ts';
import type { WholeFile } from './based-on/whole-file.ts';
import { withoutUnread } from './based-on/without-unread.ts';
import { checks } from './checks/index.ts';
import { checkWheres } from './requirements/check-wheres.ts';
import { gatherNames } from './gather-names.ts';
import { readCondition, readConditions } from './read-condition.ts';
import type { Reading } from './reading.ts';
import { inOrder } from './in-order.ts';
import { readFault } from './read-fault.ts';
import { readLadder } from './read-ladder.ts';
import { readMeasure } from './read-measure.ts';
import { checkSources, readRule } from './read-rule.ts';
import { readRequirements } from './requirements/read-requirements.ts';
import {
  readStates,
  requirementsOfLadder,
  withThoseOfLadder,
} from './requirements/requirements-of-ladder.ts';
import { withQuantities } from './measure-quantities.ts';
import { digestOf } from './digest.ts';
import { observationsRead, operandsOfMeasure, operandsOfCondition, rulesNamed } from './walk.ts';
import type { Ladder, Measure, Partition, Protocol, Rule } from './protocol.ts';
import type { Names } from './names.ts';

/** What stands beside a protocol's own text. */
export interface Surroundings {
  readonly dictionary: Dictionary;
  /** Null when the ladder's file is missing or has problems of its own. */
  readonly ladder: Ladder | null;
  /** Year-month-day; null when nobody asks whether the review is overdue. */
  readonly today: string | null;
  /** The protocols that this one may be based on; none unless told otherwise. */
  readonly parents?: Parents;
}

/** A checked protocol, or null with the errors that stand in the way. Warnings can come with a protocol. */
export interface ReadProtocol {
  /** With what the protocol is based on worked in; as it was given, when that could not be done. */
  readonly document: Document;
  readonly protocol: Protocol | null;
  readonly problems: readonly Problem[];
}

/**
 * Reads a protocol: what it is based on, shape, names, parts, order, quantities, then every check; all problems at once. `checkAlone` is
 * how a protocol that it is based on is checked by itself.
 *
 *     document ─► parent worked in ─► shape ─► names ─► measures, rules ─► in order ─► quantities ─► checks ─► protocol
 */
export function documentToProtocol(
  document: Document,
  surroundings: Surroundings,
  checkAlone: (document: Document, surroundings: Surroundings) => ReadProtocol = documentToProtocol,
): ReadProtocol {
  const alone = { ...surroundings, today: null };
  const { whole, problems } = documentToWhole(document, surroundings, (parent) => checkAlone(parent, alone));
  if (!whole) return { protocol: null, problems, document };
  const read = readWhole(whole, surroundings);
  const found = [...problems, ...notToldBefore(read.problems, whole)];
  return { ...read, protocol: hasErrors(found) ? null : read.protocol, problems: found };
}

function readWhole(document: WholeDocument, surroundings: Surroundings): ReadProtocol {
  const { value: file, problems } = checkShape('protocol', document);
  if (!file) return { protocol: null, problems, document };
  const findings: Finding[] = [];
  const report = reporter(findings);
  const whole = file as WholeFile;
  const names = gatherNames(whole, { ...surroundings, basis: document.basis }, report);
  const draft = readParts(whole, names, report);
  if (findings.length === 0) {
    const rest = withoutUnread(document, observationsRead(draft));
    if (rest !== document) return readWhole(rest, surroundings);
  }
  const protocol = withQuantities({ ...draft, ...digestOf(whole, draft) }, report);
  const checked = { protocol, file: whole, today: surroundings.today };
  for (const check of checks) check(checked, report);
  checkWheres(checked, report);
  const found = [...problems, ...findingsToProblems(document, findings.filter(isOwnMatter(document)))];
  return { protocol: hasErrors(found) ? null : protocol, problems: found, document };
}

/** While something else is wrong, the parent's observations that nothing reads are still listed; that is no mistake of this file. */
const isOwnMatter =
  (document: Document) =>
  ({ code, path }: Finding): boolean =>
    code !== 'observation_unused' || partAt(document, path).node.inherited !== true;

/** A ladder, or null with its problems. */
export function documentToLadder(document: Document): {
  ladder: Ladder | null;
  problems: readonly Problem[];
} {
  const { value: file, problems } = checkShape('ladder', document);
  if (!file) return { ladder: null, problems };
  const findings: Finding[] = [];
  const ladder = readLadder(file, reporter(findings));
  readStates(ladder, reporter(findings));
  const found = [...problems, ...findingsToProblems(document, findings)];
  return { ladder: hasErrors(found) ? null : ladder, problems: found };
}

type Draft = Omit<Protocol, 'digest' | 'logicDigest'>;

function readParts(file: WholeFile, names: Names, report: Report): Draft {
  const reading: Reading = { names, report };
  const applies = file.applies_when ? readCondition(file.applies_when, ['applies_when'], reading) : null;
  for (const [name, { source = [] }] of Object.entries(file.limits ?? {})) {
    checkSources(source, ['limits', name, 'source'], reading);
  }
  const measures = Object.entries(file.measures ?? {}).map(([name, each]) => {
    checkSources(each.source ?? [], ['measures', name, 'source'], reading);
    return readMeasure(name, each, ['measures', name], reading);
  });
  const faults = (file.faults ?? []).map((each, index) => readFault(each, ['faults', index], reading));
  const rules = file.rules.map((each, index) => readRule(each, ['rules', index], reading));
  const partitions = Object.entries(file.exactly_one_of ?? {}).map(([name, of]): Partition => {
    const path = ['exactly_one_of', name];
    return { name, of: readConditions(of, path, reading), path };
  });
  const readRules = rules.filter((rule) => rule !== null);
  const readFaults = faults.filter((fault) => fault !== null);
  return {
    name: file.protocol,
    edition: file.edition,
    title: file.title,
    basedOn: parentsOf(names.basis, names.limits),
    about: file.about ?? null,
    otherwise: file.otherwise ?? null,
    reviewBy: file.review_by ?? null,
    owners: file.owners ?? [],
    sources: new Map(
      Object.entries(file.sources ?? {}).map(([name, { cite, link, from_memory: memory }]) => [
        name,
        { cite, link: link ?? null, fromMemory: memory === 'yes' || memory === true },
      ]),
    ),
    ladder: names.ladder ?? { name: file.ladder, edition: 1, title: file.ladder, levels: [] },
    applies,
    observations: names.observations,
    vocabulary: names.declared,
    contradictions: names.contradictions.filter(
      ({ lower, higher }) => names.observations.has(lower) && names.observations.has(higher),
    ),
    limits: names.limits,
    faults: readFaults,
    measures: measuresInOrder(
      measures.filter((measure) => measure !== null),
      report,
    ),
    rules: readRules,
    rulesInOrder: rulesInOrder(readRules, report),
    partitions: new Map(partitions.map((each) => [each.name, each])),
    ordinary: file.ordinary ? readCondition(file.ordinary, ['ordinary'], reading) : null,
    mustSay: readMustSay(file, reading),
    ...withThoseOfLadder(
      readRequirements(file, reading),
      names.ladder
        ? requirementsOfLadder(names.ladder, names.observations, readFaults)
        : { hazards: new Map(), requirements: [] },
    ),
  };
}

function readMustSay({ must_say: parts = {} }: WholeFile, reading: Reading): Protocol['mustSay'] {
  return new Map(
    Object.entries(parts).flatMap(([name, file]) => {
      const condition = readCondition(file, ['must_say', name], reading);
      return condition ? [[name, condition] as const] : [];
    }),
  );
}

function measuresInOrder(measures: readonly Measure[], report: Report): Map<string, Measure> {
  const byName = new Map(measures.map((measure) => [measure.name, measure]));
  const reads = (name: string): string[] => {
    const { how, notReliableWhen } = byName.get(name) as Measure;
    return [...operandsOfMeasure(how), ...operandsOfCondition(notReliableWhen)].flatMap((operand) =>
      operand.kind === 'measure' ? [operand.name] : [],
    );
  };
  const { order, circles } = inOrder([...byName.keys()], reads);
  for (const circle of circles)
    report('circle', (byName.get(circle[0] as string) as Measure).path, { names: circle }, { part: 'key' });
  return new Map(order.map((name) => [name, byName.get(name) as Measure]));
}

function rulesInOrder(rules: readonly Rule[], report: Report): Rule[] {
  const byName = new Map(rules.map((rule) => [rule.name, rule]));
  const reads = (name: string): string[] => {
    const { when, unless, explainedBy, notReliableWhen } = byName.get(name) as Rule;
    return [when, unless?.when ?? null, explainedBy?.when ?? null, notReliableWhen].flatMap(rulesNamed);
  };
  const { order, circles } = inOrder([...byName.keys()], reads);
  for (const circle of circles) {
    const { path } = byName.get(circle[0] as string) as Rule;
    report('circle', [...path, 'rule'], { names: circle });
  }
  return order.map((name) => byName.get(name) as Rule);
}
