import type { Document } from '../../document/document.ts';
import { caution } from '../../outcome/caution.ts';
import { askingOf, type Asking } from './asking.ts';
import { caseChanges } from './case-changes.ts';
import { changedLevels } from './changed-levels.ts';
import { changedRules } from './changed-rules.ts';
import type { ComparedSide, Comparison, OtherLevels } from './comparison.ts';
import { EverySet } from './every-set.ts';
import { builtAlike, declaredOtherwise, gapsOf, looksAtAnAverage, overWords } from './gaps.ts';
import { incompleteAlike } from './incomplete.ts';
import { otherLevels } from './other-levels.ts';
import { limitChanges } from './limit-changes.ts';
import { Partitioner } from './partitioner.ts';
import { sideOf, type Compared, type Side } from './side.ts';
import { wordChanges } from './word-changes.ts';
import type { Working } from './working.ts';

/**
 * What changes from one protocol, or ward policy, to another: exactly which sets get another level or other rules.
 *
 *     two sides ─► the comparisons of both, as atoms ─► all complete sets, parted by what happens to them ─► words
 *
 * `cases`: a case file whose stories are read by both. It is exact about what `over` names, and says what it does not answer.
 */
export function compareSides(before: Compared, after: Compared, cases: Document | null): Comparison {
  const working = workingOf([sideOf(before), sideOf(after)]);
  const { asking, sides, all, alike, canAsk } = working;
  const levels = alike || !canAsk ? { changed: [], tooLarge: false } : changedLevels(working);
  const rules = alike || !canAsk ? { changed: [], tooLarge: false } : changedRules(working);
  const others = alike || !canAsk ? null : otherLevels(working, levels.changed);
  const changes =
    levels.changed.length > 0 ||
    (others?.incomplete.length ?? 0) > 0 ||
    rules.changed.some(({ stands }) => stands.length > 0);
  const withMissing = !alike && canAsk && !changes && incompleteAlike(asking);
  const gaps = alike
    ? []
    : gapsOf(asking, sides, levels.tooLarge || rules.tooLarge, missingIs(withMissing, others));
  const verdict = changes ? 'changes' : gaps.length > 0 ? 'not_settled' : 'nothing_changes';
  const inCases = cases ? caseChanges(cases, [before, after], sides, asking.pairs) : { changed: [], read: 0 };
  return {
    before: told(sides[0]),
    after: told(sides[1]),
    verdict,
    says: verdictWords(verdict, alike),
    over: alike ? [everything] : [...overWords(asking, sides), ...(withMissing ? [missingToo] : [])],
    not_settled: gaps,
    all_sets: all === null ? null : String(all),
    levels: levels.changed,
    levels_whole: !levels.tooLarge && (alike || !looksAtAnAverage(asking)),
    other_levels: others,
    by_protocol: 'members' in before && !alike && canAsk ? byProtocol(asking) : [],
    rules: rules.changed,
    renamed: renamedIn(asking),
    limits: limitChanges(asking.members),
    words: wordChanges(asking, sides),
    cases: inCases.changed,
    cases_read: inCases.read,
    caution,
  };
}

const missingIs = (alike: boolean, others: OtherLevels | null): 'alike' | 'levels_told' | 'open' =>
  alike ? 'alike' : others?.whole === true ? 'levels_told' : 'open';

const everything =
  'every set and series, whatever is known or missing, whatever earlier sets there are and whatever limit is changed for a patient: both sides are built alike';

const missingToo =
  'every set in which some observations are missing or could not be obtained, in every combination';

function workingOf(sides: readonly [Side, Side]): Working {
  const asking = askingOf(...sides);
  const partitioner = new Partitioner(asking);
  const over = new Set(asking.space.dimensions.flatMap(({ lookBack }, place) => (lookBack ? [] : [place])));
  const alike = builtAlike(asking, sides);
  const canAsk = declaredOtherwise(sides).length === 0;
  const every = sides[1].kind === 'protocol' && !alike && canAsk ? new EverySet(asking) : null;
  return { asking, partitioner, alike, canAsk, every, sides, over, all: countAll(asking, partitioner, over) };
}

function countAll(
  { space, atoms }: Asking,
  partitioner: Partitioner,
  over: ReadonlySet<number>,
): bigint | null {
  return space.sections.reduce<bigint | null>((total, section) => {
    const empty = new Uint8Array(atoms.all.length);
    const count = partitioner.count({ ...section, stands: empty, seen: empty.slice() }, over);
    return total === null || count === null ? null : total + count;
  }, 0n);
}

const told = ({ kind, name, edition, title, digest, logicDigest }: Side): ComparedSide => ({
  kind,
  name,
  edition,
  title,
  digest,
  logic_digest: logicDigest,
});

const truth = 'This is true of the rules as written, not of patients.';

function verdictWords(verdict: Comparison['verdict'], alike: boolean): string {
  if (verdict === 'nothing_changes')
    return `No set gets another level or other rules${alike ? '' : ', of all that were looked at'}; that is proven. ${truth}`;
  if (verdict === 'changes') return `Some sets get another level or other rules. ${truth}`;
  return `No complete set gets another level or other rules, but not everything is settled. ${truth}`;
}

/** Each protocol of a ward by itself, as the ward reads with it; those that are on one side alone are told among the rules. */
function byProtocol({ members }: Asking): Comparison['by_protocol'] {
  return members.flatMap(({ before, after }) => {
    if (!before || !after) return [];
    const working = workingOf([sideOf(before), sideOf(after)]);
    if (working.alike) return [];
    const { changed, tooLarge } = changedLevels(working);
    const others = otherLevels(working, changed);
    return [
      { protocol: after.protocol.name, levels: changed, levels_whole: !tooLarge, other_levels: others },
    ];
  });
}

const renamedIn = ({ pairs }: Asking): Comparison['renamed'] =>
  pairs.flatMap(({ before, after, renamed }) =>
    before && after && renamed
      ? [{ protocol: after.member.protocol.name, from: before.rule.name, to: after.rule.name }]
      : [],
  );
