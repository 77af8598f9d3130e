import type { Compiled } from '../../outcome/compile.ts';
import { requirementKey, type Requirement } from '../../protocol/requirements/requirement.ts';
import type { Ward } from '../../ward/ward.ts';
import { readsOf, type Reads } from './asked.ts';
import type { Box } from './box.ts';
import { breaking } from './confirm.ts';
import { exampleOf } from './example.ts';
import { impossibleOf } from './impossible.ts';
import type { Because, Example, Excepted, Proof } from './proof.ts';
import type { Question, Setting } from './question.ts';
import { blankOf, hiding, questionOf } from './questions-of.ts';
import { search, type Searched } from './search.ts';
import { seriesOf } from './series.ts';
import { subjectOfProtocol, subjectOfWard, type Subject } from './subject.ts';
import { noneBreaks } from './whole/none-breaks.ts';
import { givensOf } from './witness.ts';

/** So many groups of sets are looked into for one requirement, and no more. */
export const mostGroups = 20_000;

/** After so many groups the question is asked of all sets at once, which shows no example; where that settles nothing, groups are looked into again. */
const fewGroups = 400;

export interface Watching {
  /** Told now and then: which requirement is asked, of how many, and how many groups of sets were looked into. */
  readonly progress?: (at: {
    readonly requirement: string;
    readonly done: number;
    readonly of: number;
    readonly looked: number;
  }) => void;
  readonly cancelled?: () => boolean;
  readonly most?: number;
}

/**
 * Answers every safety requirement of a protocol or a ward policy: proven, refuted with the plainest example, or not settled. What is
 * proven is true of the rules as written, not of patients. `watching` is told of progress, and can end it.
 *
 * `proveRequirements(protocol).every(({ verdict }) => verdict === 'proven')` when all hold.
 */
export const proveRequirements = (asked: Compiled | Ward, watching: Watching = {}): readonly Proof[] => [
  ...proofsOf(asked, watching),
];

/** The same, one after the other: each is answered when it is asked for. */
export function* proofsOf(asked: Compiled | Ward, watching: Watching = {}): Generator<Proof> {
  const reads = readsOf(asked);
  const subjects = new Map<Requirement['limits'], Subject>();
  const subjectFor = (limits: Requirement['limits']): Subject => {
    const known =
      subjects.get(limits) ??
      ('members' in asked ? subjectOfWard(asked, limits) : subjectOfProtocol(asked.protocol, limits));
    subjects.set(limits, known);
    return known;
  };
  for (const [done, requirement] of reads.requirements.entries()) {
    const progress = (looked: number): void =>
      watching.progress?.({
        requirement: requirementKey(requirement),
        done,
        of: reads.requirements.length,
        looked,
      });
    const watch: Watch = {
      progress,
      cancelled: watching.cancelled ?? (() => false),
      most: watching.most ?? mostGroups,
    };
    yield prove(requirement, reads, subjectFor(requirement.limits), watch);
  }
}

interface Watch {
  readonly progress: (looked: number) => void;
  readonly cancelled: () => boolean;
  readonly most: number;
}

function prove(requirement: Requirement, reads: Reads, subject: Subject, watch: Watch): Proof {
  const unknown = (because: Because, looked: number): Proof => ({
    requirement,
    looked,
    verdict: 'not_settled',
    because,
  });
  if (subject.tooLarge) return unknown('numbers_too_large', 0);
  const setting = { subject, requirement };
  const question = questionOf(setting);
  const some = search(aboutAny(question), impossibleOf(subject, question.space, question.seconds), {
    ...watch,
    wanted: 'any',
    accept: () => true,
  });
  const isSure = !looksAtAnAverage(subject);
  if (some.kind === 'none') return unknown(isSure ? 'about_no_set' : 'average', some.looked);
  const settle = (most: number): ReturnType<typeof searchFor> =>
    searchFor(requirement, question, reads, subject, { ...watch, most });
  const begun = settle(Math.min(watch.most, fewGroups));
  if (begun.searched.kind === 'too_large' && isSure && noneBreaks(setting))
    return proven(setting, reads, watch, some.looked + begun.searched.looked);
  const goesOn = begun.searched.kind === 'too_large' && watch.most > fewGroups;
  const { searched, example } = goesOn ? settle(watch.most) : begun;
  const looked = some.looked + searched.looked;
  switch (searched.kind) {
    case 'none':
      return isSure ? proven(setting, reads, watch, looked) : unknown('average', looked);
    case 'found':
      return example ? { requirement, looked, verdict: 'refuted', example } : unknown('earlier_sets', looked);
    case 'open':
      return unknown('earlier_sets', looked);
    default:
      return unknown(searched.kind, looked);
  }
}

const proven = ({ requirement, subject }: Setting, reads: Reads, watch: Watch, looked: number): Proof => ({
  requirement,
  looked,
  verdict: 'proven',
  excepted: exceptedOf(requirement, reads, subject, watch),
});

/** An average may lie between two steps, and only whole steps are looked at: so a set that is found is one, and that there is none is not known. */
const looksAtAnAverage = ({ parts }: Subject): boolean =>
  parts.some(({ protocol }) =>
    [...protocol.measures.values()].some(({ how }) => 'over' in how && how.kind === 'average'),
  );

/** Whether there is a set at all that the requirement is about. */
const aboutAny = (question: Question): Question => ({
  ...question,
  breaks: { kind: 'set', node: question.about.first },
});

function searchFor(
  requirement: Requirement,
  question: Question,
  reads: Reads,
  subject: Subject,
  watch: Watch,
): { searched: Searched; example: Example | null } {
  let example: Example | null = null;
  const accept = (box: Box): boolean => {
    const alone = givensOf(box, question, subject);
    for (const givens of [alone, ...seriesOf(box, question, subject, alone)]) {
      const found = breaking(requirement, reads, givens);
      if (!found) continue;
      example = exampleOf(requirement, reads, givens, found);
      return true;
    }
    return false;
  };
  const searched = search(question, impossibleOf(subject, question.space, question.seconds), {
    ...watch,
    wanted: 'plainest',
    accept,
  });
  return { searched, example };
}

/** What is excepted by name is left blank by itself, to show the worst that may hide behind it. */
function exceptedOf(
  requirement: Requirement,
  reads: Reads,
  subject: Subject,
  watch: Watch,
): readonly Excepted[] {
  const { asks } = requirement;
  if (asks.kind !== 'nothing_hides') return [];
  return asks.except.map((observation) => {
    const alone = { ...requirement, asks: { ...asks, blank: [observation], except: [] } };
    const question = hiding({ subject, requirement: alone }, blankOf(subject, alone.asks));
    return { observation, worst: searchFor(alone, question, reads, subject, watch).example };
  });
}
