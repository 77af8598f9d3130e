import type { Requirement } from '../../protocol/requirements/requirement.ts';
import { readAsks, sayAsks } from './asks.ts';
import { readCondition, sayCondition } from './conditions.ts';
import { same, wordForWord } from './same.ts';
import { clauseAfter, plain, whole, type Sentence } from './sentence.ts';
import type { Speaker } from './speaker.ts';
import { unplaced } from './unplaced.ts';

/** All that is asked by a requirement, and of which sets; without its words and its place in a file. */
export type RequirementLogic = Pick<Requirement, 'asks' | 'where' | 'limits'>;

const always = 'This must hold in every possible set of a patient whom this is for.';
const whenever = 'This must hold for a patient whom this is for in every possible set in which ';
const ofAnybody = 'This must hold for any patient in every possible set in which ';
const asWritten = 'Each limit has the value that is written.';

const startOf = ({ kind }: Requirement['asks']): string => (kind === 'no_level' ? ofAnybody : whenever);

/** What must hold, in which sets, and at which limits. */
export const sayRequirement = (
  { asks, where, limits }: RequirementLogic,
  speaker: Speaker,
): readonly Sentence[] => [
  sayAsks(asks, speaker),
  where ? whole(startOf(asks), sayCondition(where, speaker)) : plain(always),
  ...(limits === 'as_written' ? [plain(asWritten)] : []),
];

/** The same back, without places; null for sentences that are not as a requirement is said. */
export const readRequirement = (sentences: readonly Sentence[], speaker: Speaker): RequirementLogic | null =>
  wordForWord(readParts(sentences, speaker), sentences, (read) => sayRequirement(read, speaker));

function readParts([what, scope, limits]: readonly Sentence[], speaker: Speaker): RequirementLogic | null {
  const asks = what ? readAsks(what, speaker) : null;
  if (!asks || !scope) return null;
  const at = limits ? 'as_written' : 'within_bounds';
  if (scope.text === always) return { asks, where: null, limits: at };
  const clause = clauseAfter(startOf(asks), scope);
  const where = clause && readCondition(clause, speaker);
  return where && { asks, where, limits: at };
}

/** A requirement in sentences, once they were read back to what is asked; it throws, as a fault of the kit, when they are not. */
export function speakRequirement(requirement: Requirement, speaker: Speaker): readonly Sentence[] {
  const { name, asks, where, limits } = requirement;
  const said = sayRequirement({ asks, where, limits }, speaker);
  const meant = { asks, where: where && unplaced(where, speaker), limits };
  if (!same(meant, readRequirement(said, speaker)))
    throw new Error(`the sentences of the requirement "${name}" do not read back to what it asks`);
  return said;
}
