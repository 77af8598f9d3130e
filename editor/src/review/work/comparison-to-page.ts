import {
  groundInWords,
  notWhole,
  othersInWords,
  regionParts,
  ruleIsWords,
  type ChangedLevel,
  type ChangedRule,
  type ChangedStand,
  type Comparison,
  type OtherLevels,
} from '../../../../src/index.ts';
import type {
  ChangesHere,
  LevelByExample,
  LevelChange,
  Others,
  RuleChange,
} from '../changes/changes-here.ts';

/** A set of the comparison, and which change it shows. */
export interface ShownSet {
  readonly of: string;
  readonly witness: ChangedLevel['witness'];
}

/** The levels of both sides by name, lowest first. */
export type Ladders = readonly [readonly string[], readonly string[]];

/** A comparison as the page shows it, and the sets that can be walked through, in the order in which they are named there. */
export function comparisonToPage(
  comparison: Comparison,
  ladders: Ladders,
): { readonly page: ChangesHere; readonly sets: readonly ShownSet[] } {
  const sets: ShownSet[] = [];
  const told = (of: string, change: Pick<ChangedLevel, 'witness'>): LevelChange['witness'] =>
    sets.push({ of, witness: change.witness }) - 1;
  const levelsOf = (each: Pick<Comparison, 'levels'>, by: string): LevelChange[] =>
    each.levels.map((level) => levelToPage(level, ladders, told(`${by}${levelWords(level)}`, level)));
  const levels = levelsOf(comparison, '');
  const othersOf = ({ other_levels: others }: Pick<Comparison, 'other_levels'>, by: string): Others | null =>
    others && othersToPage(others, (change) => told(`${by}${levelWords(change)}`, change));
  const others = othersOf(comparison, '');
  const byProtocol = comparison.by_protocol.map((each) => ({
    protocol: each.protocol,
    levels: levelsOf(each, `${each.protocol} by itself: `),
    others: othersOf(each, `${each.protocol} by itself: `),
    notWhole: each.levels_whole ? null : notWhole,
  }));
  const rules = comparison.rules.map((rule) => ruleToPage(rule, told));
  const page: ChangesHere = {
    verdict: comparison.verdict,
    says: comparison.says,
    over: comparison.over,
    notSettled: comparison.not_settled,
    levels,
    notWhole: comparison.levels_whole ? null : notWhole,
    byProtocol,
    others,
    rules,
    renamed: comparison.renamed.map(({ protocol, from, to }) => `${protocol}: ${from} is now ${to}`),
    limits: comparison.limits.map(
      ({ limit, before, after }) => `${limit}: ${before ?? 'not there'} before; ${after ?? 'gone'} now`,
    ),
    words: comparison.words,
    cases: comparison.cases.map(({ case: name, before, after, rules: states }) => ({
      name,
      before,
      after,
      rules: states,
    })),
    casesRead: comparison.cases_read,
    witnesses: sets.map(({ of }) => ({ of })),
    caution: comparison.caution,
  };
  return { page, sets };
}

const levelWords = ({ before, after }: Pick<ChangedLevel, 'before' | 'after'>): string =>
  `“${before}” becomes “${after}”`;

function levelToPage(level: ChangedLevel, [was, is]: Ladders, witness: number): LevelChange {
  const { before, after, direction, because, course, from, to } = level;
  const isSame = was.length === is.length && was.every((name, index) => name === is[index]);
  const rungs =
    isSame && from !== null && to !== null
      ? { of: is.length, from: was.indexOf(from), to: is.indexOf(to) }
      : null;
  return { before, after, direction, because, course, rungs, ...region(level), witness };
}

type ByExample = OtherLevels['complete'][number];

function othersToPage(
  { complete, incomplete, whole }: OtherLevels,
  told: (change: ByExample) => number,
): Others {
  const each = (change: ByExample): LevelByExample => ({
    before: change.before,
    after: change.after,
    direction: change.direction,
    witness: told(change),
  });
  return {
    complete: complete.map(each),
    incomplete: incomplete.map(each),
    whole: whole ? othersInWords.whole : null,
    says: othersInWords,
  };
}

function ruleToPage(rule: ChangedRule, told: (of: string, change: ChangedStand) => number): RuleChange {
  const { title, rule: name, protocol, differences, stands } = rule;
  return {
    title,
    rule: name,
    protocol,
    is: ruleIsWords(rule),
    differences,
    stands: stands.map((stand) => ({
      before: stand.before,
      after: stand.after,
      ...region(stand),
      witness: told(`Rule “${title}”: ${stand.before} before, ${stand.after} now`, stand),
    })),
  };
}

const region = (of: ChangedLevel | ChangedStand): Pick<LevelChange, 'ground' | 'sets'> => ({
  ground: groundInWords(of.ground),
  sets: regionParts(of),
});
