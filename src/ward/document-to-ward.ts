import type * as File from '../shape/generated/types.ts';
import type { Document } from '../document/document.ts';
import { findingsToProblems } from '../document/finding-to-problem.ts';
import { compile, type Compiled } from '../outcome/compile.ts';
import type { Path } from '../problems/place.ts';
import { hasErrors, reporter, type Finding, type Problem, type Report } from '../problems/problem.ts';
import { reportReviewDate } from '../protocol/checks/review-date.ts';
import { digestOfLogicParts, digestOfParts, withoutStates } from '../protocol/digest.ts';
import { nearestOf, type Names } from '../protocol/names.ts';
import { namesOfWard } from './names-of-ward.ts';
import type { Condition, Ladder, Protocol, Source } from '../protocol/protocol.ts';
import { actionsOf } from '../protocol/walk.ts';
import { readCondition } from '../protocol/read-condition.ts';
import { checkShape } from '../shape/check-shape.ts';
import { asReadByWard } from './as-read-by-ward.ts';
import { gatherVocabulary } from './gather-vocabulary.ts';
import { ownProtocol } from './own-protocol.ts';
import { readPlans } from './read-plans.ts';
import { readWardRequirements } from './read-ward-requirements.ts';
import { checkTimeZone } from './time-of-day.ts';
import type { Ward } from './ward.ts';

/** What stands beside a ward's own text. */
export interface WardSurroundings {
  /** Null when the ladder's file is missing or has problems of its own. */
  readonly ladder: Ladder | null;
  /** By name: every protocol that there is; null for one that has errors of its own. */
  readonly protocols: ReadonlyMap<string, Compiled | null>;
  /** Year-month-day, to be told of an overdue review; null asks nothing. */
  readonly today: string | null;
}

/** A protocol of the ward, found, with its place in the ward's file. */
interface Member {
  readonly protocol: Protocol;
  readonly file: File.ReadsWith;
  readonly path: Path;
}

/** Reads and checks a ward policy; null when it has errors. All problems come at once. */
export function documentToWard(
  document: Document,
  surroundings: WardSurroundings,
): { ward: Ward | null; problems: readonly Problem[] } {
  const { value: file, problems } = checkShape('ward', document);
  if (!file) return { ward: null, problems };
  const findings: Finding[] = [];
  const ward = readWard(file, surroundings, reporter(findings));
  const found = [...problems, ...findingsToProblems(document, findings)];
  return { ward: hasErrors(found) ? null : ward, problems: found };
}

function readWard(file: File.WardFile, { ladder, protocols, today }: WardSurroundings, report: Report): Ward {
  if (!ladder) report('ladder_not_found', ['ladder'], { name: file.ladder });
  reportReviewDate(file.review_by, today, report);
  if (file.time_zone !== undefined) checkTimeZone(file.time_zone, ['time_zone'], report);
  const members = findMembers(file, protocols, report);
  const vocabulary = gatherVocabulary(members, report);
  const faults = gatherFaults(members, report);
  const sources = new Map(Object.entries(file.sources ?? {}).map(([name, each]) => [name, sourceOf(each)]));
  const around = { vocabulary: vocabulary.observations, faults };
  const read = members.map(({ protocol, file: { when }, path }) => {
    const condition = when ? readWhen(when, [...path, 'when'], vocabulary.observations, report) : null;
    return asReadByWard(protocol, condition, around);
  });
  const known: Ladder = ladder ?? { name: file.ladder, edition: 1, title: file.ladder, levels: [] };
  return {
    name: file.ward,
    edition: file.edition,
    title: file.title,
    about: file.about ?? null,
    ladder: known,
    timeZone: file.time_zone ?? null,
    owners: file.owners ?? [],
    sources,
    members: read.map((protocol) => compile(protocol)),
    plans: readPlans(file.plans ?? {}, {
      ladder: known,
      sources,
      vocabulary: vocabulary.observations,
      report,
    }),
    neverTogether: readPairs(file, members, report),
    ...readWardRequirements(file, known, read, report),
    vocabulary,
    own: ownProtocol(file, known, vocabulary.observations),
    digest: digestOfParts({
      ward: file,
      ladder: withoutStates(known),
      protocols: members.map(({ protocol }) => protocol.digest),
    }),
    logicDigest: digestOfLogicParts({
      ward: file,
      ladder: withoutStates(known),
      protocols: members.map(({ protocol }) => protocol.logicDigest),
    }),
  };
}

const sourceOf = ({ cite, link, from_memory: memory }: File.Source): Source => ({
  cite,
  link: link ?? null,
  fromMemory: memory === 'yes' || memory === true,
});

function findMembers(
  file: File.WardFile,
  protocols: WardSurroundings['protocols'],
  report: Report,
): Member[] {
  const seen = new Set<string>();
  return file.reads_with.flatMap((each, index): Member[] => {
    const path = ['reads_with', index];
    const { protocol: name, edition } = each;
    if (seen.has(name)) report('ward_protocol_twice', [...path, 'protocol'], { name });
    seen.add(name);
    const compiled = protocols.get(name);
    if (!compiled) {
      const nearMiss = compiled === null ? null : nearestOf(name, [...protocols.keys()]);
      report(
        compiled === null ? 'ward_protocol_has_errors' : 'ward_protocol_not_found',
        [...path, 'protocol'],
        { name },
        { nearMiss },
      );
      return [];
    }
    const { protocol } = compiled;
    if (protocol.edition !== edition)
      report('ward_other_edition', [...path, 'edition'], { name, asked: edition, found: protocol.edition });
    if (protocol.ladder.name !== file.ladder)
      report('ward_other_ladder', [...path, 'protocol'], {
        name,
        ladder: protocol.ladder.name,
        own: file.ladder,
      });
    return [{ protocol, file: each, path }];
  });
}

/** Pairs of actions; each is one that a protocol of the ward knows. */
function readPairs(file: File.WardFile, members: readonly Member[], report: Report): Ward['neverTogether'] {
  const known = new Set(members.flatMap(({ protocol }) => actionsOf(protocol).map(({ id }) => id)));
  return (file.never_together ?? []).map((pair, index) => {
    const path = ['never_together', index];
    pair.forEach((name, which) => {
      if (!known.has(name))
        report('unknown_action', [...path, which], { name }, { nearMiss: nearestOf(name, known) });
    });
    return { pair: [pair[0] ?? '', pair[1] ?? ''], path };
  });
}

/** The faults of technique of all protocols: each applies to what all of them read. */
function gatherFaults(members: readonly Member[], report: Report): Protocol['faults'] {
  const first = new Map<string, string>();
  return members.flatMap(({ protocol, path }) => {
    for (const { name } of protocol.faults) {
      const before = first.get(name);
      if (before !== undefined)
        report('ward_name_means_two_things', [...path, 'protocol'], {
          name,
          first: before,
          second: protocol.name,
        });
      first.set(name, protocol.name);
    }
    return protocol.faults;
  });
}

/** A ward's condition reads what the patient is, not what protocols work out. */
function readWhen(
  when: File.Condition,
  path: Path,
  vocabulary: Names['declared'],
  report: Report,
): Condition | null {
  const observations = new Map(
    [...vocabulary].map(([name, entry]) => [name, { ...entry, role: 'scope' as const }]),
  );
  const names = namesOfWard(vocabulary, observations, null, new Set());
  return readCondition(when, path, { names, report });
}
