import type { LevelAnswer } from '../../outcome/answers.ts';
import type { ChangedLevel } from './comparison.ts';
import { courseOf } from './course.ts';
import { levelQuestion, type LevelChange } from './level-question.ts';
import { levelInWords } from './levels-in-words.ts';
import type { Region } from './partitioner.ts';
import { ruleInWords } from './rule-differences.ts';
import { ruleQuestion } from './rule-question.ts';
import { callAlike } from './asked-alike.ts';
import type { Asking } from './asking.ts';
import { pointNode, type Node } from './node.ts';
import type { RulePair } from './rule-pairs.ts';
import type { Side } from './side.ts';
import { groundOf, regionsTold, witnessOf } from './told.ts';
import type { Working } from './working.ts';

/** Sets that get another level, by where they come from and where they go to; the largest falls first. */
export function changedLevels(working: Working): {
  readonly changed: readonly ChangedLevel[];
  readonly tooLarge: boolean;
} {
  const question = levelQuestion(working.asking);
  const { regions, unsettled } = working.partitioner.part(
    question,
    working.every?.whereLevelsChange() ?? null,
  );
  const groups = new Map<string, Region<LevelChange>[]>();
  for (const region of regions) {
    const key = JSON.stringify(region.change);
    groups.set(key, [...(groups.get(key) ?? []), region]);
  }
  const changed = [...groups.values()].map((each) => toldOf(each, question, working, unsettled.length === 0));
  return { changed: changed.sort(inOrder), tooLarge: unsettled.length > 0 };
}

function toldOf(
  regions: readonly Region<LevelChange>[],
  question: ReturnType<typeof levelQuestion>,
  working: Working,
  whole: boolean,
): ChangedLevel {
  const { asking, partitioner, sides, over, all } = working;
  const [{ change }] = regions as [Region<LevelChange>];
  const [before, after] = sides;
  const words = [levelInWords(change.from, before.ladder), levelInWords(change.to, after.ladder)] as const;
  const regionsSaid = regionsTold(regions, question, asking, partitioner, whole);
  const { witness } = regionsSaid;
  return {
    from: nameOf(change.from, before),
    to: nameOf(change.to, after),
    before: words[0],
    after: words[1],
    direction: directionOf(change, sides),
    ...regionsSaid.words,
    ground: groundOf(regions, partitioner, all, over),
    witness: witnessOf(
      witness,
      asking,
      sides,
      ([was, is]) =>
        levelInWords(was.level, before.ladder) === words[0] &&
        levelInWords(is.level, after.ladder) === words[1],
    ),
    because: becauseOf(regions, working),
    course: courseOf(change, witness, asking.space, sides),
  };
}

const nameOf = (level: LevelAnswer | null, { ladder }: Side): string | null =>
  level?.atLeast === null || level === null ? null : (ladder.levels[level.atLeast]?.name ?? null);

/** Whether what is called for at least, and what it could be, both stay or go one way. */
export function directionOf(
  { from, to }: LevelChange,
  [before, after]: readonly [Side, Side],
): ChangedLevel['direction'] {
  const isSame =
    before.ladder.levels.map(({ name }) => name).join() ===
    after.ladder.levels.map(({ name }) => name).join();
  if (!isSame || !from || !to) return 'otherwise';
  const moves = [(to.atLeast ?? 0) - (from.atLeast ?? 0), to.couldBe - from.couldBe];
  if (moves.every((each) => each === 0) || (Math.min(...moves) < 0 && Math.max(...moves) > 0))
    return 'otherwise';
  return Math.max(...moves) > 0 ? 'higher' : 'lower';
}

const ranks = { lower: 0, otherwise: 1, higher: 2 } as const;
type Placed = Pick<ChangedLevel, 'direction' | 'before' | 'after'>;

/** What falls first; then by the words. */
export const inOrder = (left: Placed, right: Placed): number =>
  ranks[left.direction] - ranks[right.direction] ||
  left.before.localeCompare(right.before) ||
  left.after.localeCompare(right.after);

/** The most regions that are asked what made their change. */
const mostAsked = 200;

/** The rules that come out otherwise, or call for another level, in some of the regions. */
function becauseOf(regions: readonly Region<LevelChange>[], { asking }: Working): string[] {
  const rules = asking.rules.filter((pair) =>
    [pair.before?.rule, pair.after?.rule].some(
      (rule) => (rule?.level ?? 0) > 0 || (rule?.explainedBy?.level ?? 0) > 0,
    ),
  );
  const made = rules.filter((pair) => {
    const question = ruleQuestion(pair, asking);
    return regions.slice(0, mostAsked).some(({ node, witness }) => {
      const at = pointNode({ ...node, stands: new Uint8Array(node.stands.length) }, witness);
      return question(at, () => witness).kind === 'other' || callsOtherwise(pair, at, asking);
    });
  });
  const applies = asking.members
    .filter(({ differs }) => differs)
    .map(({ before, after }) => {
      const name = (after ?? before)?.protocol.name ?? '';
      if (!before) return `the policy reads with ${name} too`;
      return after ? `${name} is for other patients than before` : `the policy no longer reads with ${name}`;
    });
  const ladder = asking.sameLadder ? [] : ['the ladder has other levels'];
  return [...made.map((pair) => ruleInWords(pair, asking)), ...applies, ...ladder];
}

/** Whether a rule that is there, and met, on both sides calls for another level. */
function callsOtherwise({ before, after }: RulePair, at: Node, { tightened }: Asking): boolean {
  if (!before || !after || callAlike({ before, after })) return false;
  const asked = tightened.get(after.member);
  return asked !== undefined && asked.rules.get(after.rule.name)?.certain(asked.run(at)) === 1;
}
