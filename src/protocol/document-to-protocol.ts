import type * as File from '../shape/generated/types.ts';
import { checkShape } from '../shape/check-shape.ts';
import type { Document } from '../document/document.ts';
import { findingsToProblems } from '../document/finding-to-problem.ts';
import type { Dictionary } from '../vocabulary/dictionary.ts';
import { hasErrors, reporter, type Finding, type Problem, type Report } from '../problems/problem.ts';
import { checks } from './checks/index.ts';
import { gatherNames } from './gather-names.ts';
import { readCondition, readConditions } from './read-condition.ts';
import type { Reading } from './reading.ts';
import { inOrder } from './in-order.ts';
import { readFault } from './read-fault.ts';
import { readLadder } from './read-ladder.ts';
import { readMeasure } from './read-measure.ts';
import { checkSources, readRule } from './read-rule.ts';
import { withQuantities } from './measure-quantities.ts';
import { digestOf } from './digest.ts';
import { operandsOfMeasure, operandsOfCondition, rulesNamed } from './walk.ts';
import type { Ladder, Measure, Partition, Protocol, Rule } from './protocol.ts';
import type { Names } from './names.ts';

/** What stands beside a protocol's own text. */
export interface Surroundings {
  readonly dictionary: Dictionary;
  /** Null when the ladder's file is missing or has problems of its own. */
  readonly ladder: Ladder | null;
  /** Year-month-day; null when nobody asks whether the review is overdue. */
  readonly today: string | null;
}

/** A checked protocol, or null with the errors that stand in the way. Warnings can come with a protocol. */
export interface ReadProtocol {
  readonly protocol: Protocol | null;
  readonly problems: readonly Problem[];
}

/**
 * Reads a protocol: shape, names, parts, order, quantities, then every check; all problems at once.
 *
 *     document ─► shape ─► names ─► measures, rules ─► in order ─► quantities ─► checks ─► protocol
 */
export function documentToProtocol(document: Document, surroundings: Surroundings): ReadProtocol {
  const { value: file, problems } = checkShape('protocol', document);
  if (!file) return { protocol: null, problems };
  const findings: Finding[] = [];
  const report = reporter(findings);
  const names = gatherNames(file, surroundings, report);
  const draft = readParts(file, names, report);
  const protocol = withQuantities({ ...draft, ...digestOf(file, draft) }, report);
  for (const check of checks) check({ protocol, file, today: surroundings.today }, report);
  const found = [...problems, ...findingsToProblems(document, findings)];
  return { protocol: hasErrors(found) ? null : protocol, problems: found };
}

/** A ladder, or null with its problems. */
export function documentToLadder(document: Document): {
  ladder: Ladder | null;
  problems: readonly Problem[];
} {
  const { value: file, problems } = checkShape('ladder', document);
  if (!file) return { ladder: null, problems };
  const findings: Finding[] = [];
  const ladder = readLadder(file, reporter(findings));
  const found = [...problems, ...findingsToProblems(document, findings)];
  return { ladder: hasErrors(found) ? null : ladder, problems: found };
}

type Draft = Omit<Protocol, 'digest' | 'logicDigest'>;

function readParts(file: File.ProtocolFile, names: Names, report: Report): Draft {
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
  return {
    name: file.protocol,
    edition: file.edition,
    title: file.title,
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
    faults: faults.filter((fault) => fault !== null),
    measures: measuresInOrder(
      measures.filter((measure) => measure !== null),
      report,
    ),
    rules: readRules,
    rulesInOrder: rulesInOrder(readRules, report),
    partitions: new Map(partitions.map((each) => [each.name, each])),
  };
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
